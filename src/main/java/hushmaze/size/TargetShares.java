package hushmaze.size;

import hushmaze.quantity.Energy;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Splits the allowed sound energy over several paths so that all their boxes together cost least.
 *
 * <p>Formula: a box of margin m dB at the share a keeps n dB in hand at the share a 10^((n - m)/10), since a share moves what
 * the path is allowed by 10 lg of it in every band. Of each path one box is taken; the shares they need add up to no more than there is.
 * What is left over is given to all in proportion, so that all have the same more in hand.
 *
 * <p>Source: energies add; worked out here. All combinations of the boxes that alone are the cheapest for their margin are
 * looked at, with what they cost together: a sheet may serve several.
 */
final class TargetShares {
    private static final double LEAST = 0.001;

    private TargetShares() {}

    /**
     * A box that may be taken.
     *
     * @param box itself
     * @param cost of it alone
     * @param share it needs
     * @param <B> what boxes are
     */
    record Offer<B>(B box, double cost, double share) {}

    /** The share that a box needs, from its margin at another one; dB. */
    static double needed(double share, double margin, double inHand) {
        return share * Energy.ratio(inHand - margin);
    }

    /**
     * The shares.
     *
     * @param offers of each path
     * @param whole what all together may have
     * @param together what boxes of the first paths, one of each, cost together: no more with one box fewer
     * @return one share per path, adding up to the whole; nothing if no combination does
     */
    static <B> Optional<double[]> of(List<List<Offer<B>>> offers, double whole, ToDoubleFunction<List<B>> together) {
        Choice<B> choice = new Choice<>(offers.stream().map(TargetShares::front).toList(), together);
        choice.choose(new ArrayList<>(), whole);
        if (choice.best == null) {
            return Optional.empty();
        }
        double[] shares = choice.best.stream().mapToDouble(Offer::share).toArray();
        double sum = choice.leastSum;
        for (int i = 0; i < shares.length; i++) {
            shares[i] = Math.max(LEAST, shares[i] * whole / sum);
        }
        return Optional.of(shares);
    }

    /** Those that need less than every cheaper one, the cheapest first. */
    private static <B> List<Offer<B>> front(List<Offer<B>> offers) {
        List<Offer<B>> sorted = offers.stream()
                .sorted(Comparator.comparingDouble((Offer<B> o) -> o.cost()).thenComparingDouble(Offer::share))
                .toList();
        List<Offer<B>> front = new ArrayList<>();
        for (Offer<B> offer : sorted) {
            if (front.isEmpty() || offer.share() < front.get(front.size() - 1).share()) {
                front.add(offer);
            }
        }
        return front;
    }

    /**
     * The cheapest combination so far; of equally cheap ones that which needs no offcuts to be so, for what these are may change,
     * then that which needs least of the target.
     */
    private static final class Choice<B> {
        private final List<List<Offer<B>>> fronts;
        private final ToDoubleFunction<List<B>> together;
        private List<Offer<B>> best;
        private double leastCost = Double.POSITIVE_INFINITY;
        private double leastAlone = Double.POSITIVE_INFINITY;
        private double leastSum = Double.POSITIVE_INFINITY;

        Choice(List<List<Offer<B>>> fronts, ToDoubleFunction<List<B>> together) {
            this.fronts = fronts;
            this.together = together;
        }

        void choose(List<Offer<B>> chosen, double left) {
            double cost = together.applyAsDouble(chosen.stream().map(Offer::box).toList());
            double sum = chosen.stream().mapToDouble(Offer::share).sum();
            double alone = chosen.stream().mapToDouble(Offer::cost).sum();
            if (!isBetter(cost, alone, sum)) {
                return;
            }
            if (chosen.size() == fronts.size()) {
                best = List.copyOf(chosen);
                leastCost = cost;
                leastAlone = alone;
                leastSum = sum;
                return;
            }
            for (Offer<B> offer : fronts.get(chosen.size())) {
                if (offer.share() <= left) {
                    chosen.add(offer);
                    choose(chosen, left - offer.share());
                    chosen.remove(chosen.size() - 1);
                }
            }
        }

        private boolean isBetter(double cost, double alone, double sum) {
            if (cost != leastCost) {
                return cost < leastCost;
            }
            return alone != leastAlone ? alone < leastAlone : sum < leastSum;
        }
    }
}
