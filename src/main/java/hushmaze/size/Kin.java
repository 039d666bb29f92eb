package hushmaze.size;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * What better methods made of the margins, and sheets of the costs, of boxes that differ in sizes only.
 */
final class Kin {
    private final Kin all;
    private final Learned target;
    private final Learned others;
    private final List<Dear> dear = new CopyOnWriteArrayList<>();
    private double bonus;

    /** A box that cost more than was expected. */
    private record Dear(Pattern box, double cost) {}

    /** @param all kinds together; null for that itself */
    Kin(Kin all) {
        this.all = all;
        this.target = new Learned(all == null ? null : all.target);
        this.others = new Learned(all == null ? null : all.others);
    }

    /** What is expected of the steps of the margin to the target. */
    Learned target() {
        return target;
    }

    /** What is expected of the steps of the margin of what others hear. */
    Learned others() {
        return others;
    }

    /** What another share of the target than the one margins were judged at gives, dB. */
    double bonus() {
        return all == null ? bonus : all.bonus;
    }

    void bonus(double decibels) {
        bonus = decibels;
    }

    /**
     * A box costs more than was expected, so larger ones will, too.
     *
     * @param cost infinite if there are too few sheets for it
     */
    void costs(Pattern box, double cost) {
        dear.add(new Dear(box, cost));
    }

    /** What a box costs at the least, because a smaller one does; 0 if nothing is known. */
    double leastCost(Pattern box) {
        double least = 0;
        for (Dear other : dear) {
            if (other.cost > least && box.hasPartsOf(other.box)) {
                least = other.cost;
            }
        }
        return least;
    }

    /** Sheets are others from now on. */
    void forgetCosts() {
        dear.clear();
    }
}
