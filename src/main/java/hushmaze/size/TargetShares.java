package hushmaze.size;

import hushmaze.quantity.Energy;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Splits the allowed sound energy over several paths so that all their boxes together cost least.
 *
 * <p>Formula: a box of margin m dB at the share a keeps n dB in hand at the share a 10^((n - m)/10), since a share moves what
 * the path is allowed by 10 lg of it in every band. Of each path one box is taken; the shares they need add up to no more than there is.
 * What is left over is given to all in proportion, so that all have the same more in hand.
 *
 * <p>Source: energies add; worked out here. All combinations of the cheapest boxes for their margin are looked at.
 */
final class TargetShares {
    private static final double LEAST = 0.001;

    private TargetShares() {}

    /**
     * A box that may be taken.
     *
     * @param cost of it
     * @param share it needs
     */
    record Offer(double cost, double share) {}

    /** The share that a box needs, from its margin at another one; dB. */
    static double needed(double share, double margin, double inHand) {
        return share * Energy.ratio(inHand - margin);
    }

    /**
     * The shares.
     *
     * @param offers of each path
     * @param whole what all together may have
     * @return one share per path, adding up to the whole; nothing if no combination does
     */
    static Optional<double[]> of(List<List<Offer>> offers, double whole) {
        List<List<Offer>> fronts = offers.stream().map(TargetShares::front).toList();
        Best best = new Best();
        choose(fronts, new ArrayList<>(), whole, best);
        if (best.offers == null) {
            return Optional.empty();
        }
        double[] shares = best.offers.stream().mapToDouble(Offer::share).toArray();
        double sum = best.sum();
        for (int i = 0; i < shares.length; i++) {
            shares[i] = Math.max(LEAST, shares[i] * whole / sum);
        }
        return Optional.of(shares);
    }

    /** Those that need less than every cheaper one, the cheapest first. */
    private static List<Offer> front(List<Offer> offers) {
        List<Offer> sorted = offers.stream()
                .sorted(Comparator.comparingDouble(Offer::cost).thenComparingDouble(Offer::share))
                .toList();
        List<Offer> front = new ArrayList<>();
        for (Offer offer : sorted) {
            if (front.isEmpty() || offer.share() < front.get(front.size() - 1).share()) {
                front.add(offer);
            }
        }
        return front;
    }

    /** The cheapest combination so far; of equally cheap ones that which needs least. */
    private static final class Best {
        private List<Offer> offers;

        double cost() {
            return offers == null
                    ? Double.POSITIVE_INFINITY
                    : offers.stream().mapToDouble(Offer::cost).sum();
        }

        double sum() {
            return offers.stream().mapToDouble(Offer::share).sum();
        }

        void take(List<Offer> others) {
            double cost = others.stream().mapToDouble(Offer::cost).sum();
            double sum = others.stream().mapToDouble(Offer::share).sum();
            if (cost < cost() || (cost == cost() && sum < sum())) {
                offers = List.copyOf(others);
            }
        }
    }

    private static void choose(List<List<Offer>> fronts, List<Offer> chosen, double left, Best best) {
        if (chosen.stream().mapToDouble(Offer::cost).sum() > best.cost()) {
            return;
        }
        if (chosen.size() == fronts.size()) {
            best.take(chosen);
            return;
        }
        for (Offer offer : fronts.get(chosen.size())) {
            if (offer.share() <= left) {
                chosen.add(offer);
                choose(fronts, chosen, left - offer.share(), best);
                chosen.remove(chosen.size() - 1);
            }
        }
    }
}
