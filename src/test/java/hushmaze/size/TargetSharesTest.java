package hushmaze.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Validation: halves of the energy are 3.0103 dB apart (10 lg 2), worked by hand. Property: on random offers no choice of
 * one offer per path that keeps to the whole costs less, by trying all of them.
 */
class TargetSharesTest {
    @Test
    void halfTheEnergyIsThreeDecibels() {
        assertThat(TargetShares.needed(0.5, 3.0103, 0)).isCloseTo(0.25, within(1e-5));
        assertThat(TargetShares.needed(0.5, 0, 3.0103)).isCloseTo(1, within(1e-4));
        assertThat(TargetShares.needed(0.5, 2, 2)).isEqualTo(0.5);
    }

    private record Box(double cost, double share) {}

    private static double sum(List<Box> boxes) {
        return boxes.stream().mapToDouble(Box::cost).sum();
    }

    private static TargetShares.Offer<Box> offer(double cost, double share) {
        return new TargetShares.Offer<>(new Box(cost, share), cost, share);
    }

    private static Optional<double[]> shares(List<List<TargetShares.Offer<Box>>> offers) {
        return TargetShares.of(offers, 1, TargetSharesTest::sum);
    }

    /** The first path needs 0.8 with its cheap box and 0.2 with its dear one; the second 0.3 and 0.1. Both cheap ones are too much. */
    @Test
    void theDearBoxIsTakenWhereItCostsLeast() {
        List<TargetShares.Offer<Box>> first = List.of(offer(10, 0.8), offer(25, 0.2));
        List<TargetShares.Offer<Box>> second = List.of(offer(10, 0.3), offer(18, 0.1));
        double[] shares = shares(List.of(first, second)).orElseThrow();
        assertThat(shares[0]).isCloseTo(0.8 / 0.9, within(1e-12));
        assertThat(shares[1]).isCloseTo(0.1 / 0.9, within(1e-12));
    }

    /** The same, but the first path's dear box leaves an offcut that spares the second's cheap one all of its sheets. */
    @Test
    void whatBoxesCostTogetherDecides() {
        List<TargetShares.Offer<Box>> first = List.of(offer(10, 0.8), offer(25, 0.2));
        List<TargetShares.Offer<Box>> second = List.of(offer(10, 0.3), offer(18, 0.1));
        double[] shares = TargetShares.of(List.of(first, second), 1, boxes -> {
                    boolean spared = boxes.size() == 2
                            && boxes.get(0).cost() == 25
                            && boxes.get(1).cost() == 10;
                    return spared ? 25 : sum(boxes);
                })
                .orElseThrow();
        assertThat(shares[0]).isCloseTo(0.2 / 0.5, within(1e-12));
        assertThat(shares[1]).isCloseTo(0.3 / 0.5, within(1e-12));
    }

    /** Two choices cost 30 together, one of them only because of an offcut: that one is not relied on, though it needs less. */
    @Test
    void ofEquallyCheapChoicesTheOneThatNeedsNoOffcutIsTaken() {
        List<TargetShares.Offer<Box>> first = List.of(offer(15, 0.6), offer(25, 0.2));
        List<TargetShares.Offer<Box>> second = List.of(offer(15, 0.3));
        double[] shares = TargetShares.of(
                        List.of(first, second),
                        1,
                        boxes -> boxes.size() == 2 && boxes.get(0).cost() == 25 ? 30 : sum(boxes))
                .orElseThrow();
        assertThat(shares[0]).isCloseTo(0.6 / 0.9, within(1e-12));
    }

    @Test
    void whereNothingKeepsToTheWholeThereIsNoAnswer() {
        List<TargetShares.Offer<Box>> loud = List.of(offer(1, 0.7));
        assertThat(shares(List.of(loud, loud))).isEmpty();
        assertThat(shares(List.of(loud, List.of()))).isEmpty();
    }

    @Test
    void noOtherChoiceCostsLess() {
        Random random = new Random(11);
        int answered = 0;
        for (int n = 0; n < 200; n++) {
            List<List<TargetShares.Offer<Box>>> offers = new ArrayList<>();
            for (int i = 0; i < 2 + random.nextInt(2); i++) {
                List<TargetShares.Offer<Box>> some = new ArrayList<>();
                for (int k = 0; k < 1 + random.nextInt(6); k++) {
                    some.add(offer(random.nextInt(8), 0.05 + random.nextDouble() * 0.9));
                }
                offers.add(some);
            }
            double least = leastCost(offers, 0, 1, 0);
            Optional<double[]> shares = shares(offers);
            assertThat(shares.isPresent()).isEqualTo(Double.isFinite(least));
            if (shares.isPresent()) {
                answered++;
                assertThat(Arrays.stream(shares.get()).sum()).isCloseTo(1, within(1e-9));
                assertThat(cost(offers, shares.get())).isLessThanOrEqualTo(least);
            }
        }
        assertThat(answered).isBetween(50, 190);
    }

    private static double leastCost(List<List<TargetShares.Offer<Box>>> offers, int from, double left, double spent) {
        if (from == offers.size()) {
            return spent;
        }
        double least = Double.POSITIVE_INFINITY;
        for (TargetShares.Offer<Box> offer : offers.get(from)) {
            if (offer.share() <= left) {
                least = Math.min(least, leastCost(offers, from + 1, left - offer.share(), spent + offer.cost()));
            }
        }
        return least;
    }

    /** Of the cheapest box of each path that is content with its share. */
    private static double cost(List<List<TargetShares.Offer<Box>>> offers, double[] shares) {
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            double share = shares[i] + 1e-12;
            sum += offers.get(i).stream()
                    .filter(o -> o.share() <= share)
                    .mapToDouble(TargetShares.Offer::cost)
                    .min()
                    .orElseThrow();
        }
        return sum;
    }
}
