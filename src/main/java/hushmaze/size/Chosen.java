package hushmaze.size;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** The designs of one path that are worth telling apart, while they are found. */
final class Chosen {
    /** Designs whose cost, depth, mass or resistance differ by less than this share are alike. */
    private static final double ALIKE = 0.04;
    /** Margins closer than this are alike, dB. */
    private static final double ALIKE_DECIBELS = 0.8;

    private final int most;
    private final List<Candidate> kept = new ArrayList<>();
    private final List<List<Kind>> kinds = new ArrayList<>();

    /** @param most designs that are kept */
    Chosen(int most) {
        this.most = most;
    }

    /**
     * Adds the best of a kind: a design of its own if it is clearly better than all others at what it is for. One that would
     * not be is not assessed.
     *
     * @return whether anything is new
     */
    boolean add(Kind kind, BoxSearch search) {
        List<Kind> wanted = List.of(kind);
        Candidate leader = search.settle(wanted, Level.LINERS).get(kind);
        if (leader == null || isAnother(kind, leader)) {
            return leader != null;
        }
        if (kept.size() >= most) {
            return false;
        }
        leader = search.settle(wanted, Level.ASSESSED).get(kind);
        if (kind == Kind.RECOMMENDED && leader != null && !Kind.safe(leader)) {
            search.compareForms(leader);
            leader = search.settle(wanted, Level.ASSESSED).get(kind);
        }
        if (leader == null || isAnother(kind, leader)) {
            return leader != null;
        }
        kept.add(leader);
        kinds.add(new ArrayList<>(wanted));
        return true;
    }

    /**
     * Holds the recommended design, the first there is, against others of the space; a better one takes its place.
     *
     * @return what it was held against; null if there is none, or the space is too large
     */
    HeldAgainst hold(BoxSearch search) {
        if (kept.isEmpty()) {
            return null;
        }
        HeldAgainst held = search.hold(kept.get(0)).orElse(null);
        Candidate now = search.settle(List.of(Kind.RECOMMENDED), Level.ASSESSED).get(Kind.RECOMMENDED);
        kept.set(0, now == null ? kept.get(0) : now);
        return held;
    }

    /** Whether a design that is kept already is as good; then it is the best of that kind, too. */
    private boolean isAnother(Kind kind, Candidate leader) {
        for (int i = 0; i < kept.size(); i++) {
            if (alike(kind, leader, kept.get(i))) {
                kinds.get(i).add(kind);
                return true;
            }
        }
        return false;
    }

    private static boolean alike(Kind kind, Candidate one, Candidate other) {
        if (one == other) {
            return true;
        }
        if (Kind.quiet(one) && !Kind.quiet(other)) {
            return false;
        }
        return switch (kind) {
            case RECOMMENDED -> false;
            case QUIETEST -> figure(kind, other) - figure(kind, one) < ALIKE_DECIBELS;
            case SHALLOWEST, CHEAPEST, LIGHTEST -> figure(kind, other) <= figure(kind, one) * (1 + ALIKE);
            case LEAST_RESISTANCE -> figure(kind, other) <= figure(kind, one) * (1 + 2 * ALIKE);
        };
    }

    /**
     * Gives every name to the design that has the best figure of all that are kept: boxes are alike within some percent while they
     * are looked for, and the one found for one thing may turn out a trifle better at another.
     *
     * @param recommendedToo whether the recommended one may be another, too
     */
    void rename(boolean recommendedToo) {
        for (Kind kind : Kind.values()) {
            int holder = holder(kind);
            if (holder >= 0 && (kind != Kind.RECOMMENDED || recommendedToo)) {
                int best = holder;
                for (int i = 0; i < kept.size(); i++) {
                    best = better(kind, kept.get(i), kept.get(best)) ? i : best;
                }
                kinds.get(holder).remove(kind);
                kinds.get(best).add(kind);
                Collections.sort(kinds.get(best));
            }
        }
        int first = holder(Kind.RECOMMENDED);
        if (first > 0) {
            kept.add(0, kept.remove(first));
            kinds.add(0, kinds.remove(first));
        }
        for (int i = kept.size() - 1; i >= 0; i--) {
            if (kinds.get(i).isEmpty()) {
                kept.remove(i);
                kinds.remove(i);
            }
        }
    }

    private int holder(Kind kind) {
        for (int i = 0; i < kept.size(); i++) {
            if (kinds.get(i).contains(kind)) {
                return i;
            }
        }
        return -1;
    }

    /** Whether a design is better for certain at what a kind is for; those that are quiet enough come before others. */
    private static boolean better(Kind kind, Candidate one, Candidate other) {
        if (kind == Kind.RECOMMENDED) {
            return kind.order().compare(one, other) < 0;
        }
        if (Kind.quiet(one) != Kind.quiet(other)) {
            return Kind.quiet(one);
        }
        return figure(kind, one) < figure(kind, other);
    }

    /** The less, the better. */
    private static double figure(Kind kind, Candidate c) {
        return switch (kind) {
            case RECOMMENDED -> throw new IllegalArgumentException("no single figure makes a box the recommended one");
            case QUIETEST -> -c.margin();
            case SHALLOWEST -> c.sizes().depth();
            case CHEAPEST -> c.cost();
            case LEAST_RESISTANCE -> c.sizes().drop();
            case LIGHTEST -> c.sizes().mass();
        };
    }

    /** Those kept so far. */
    List<Design> designs() {
        List<Design> designs = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            Candidate c = kept.get(i);
            designs.add(new Design(kinds.get(i), c.box(), c.result(), c.cost()));
        }
        return designs;
    }

    /** The one with the most margin. */
    Candidate quietest() {
        return kept.stream().max(Comparator.comparingDouble(Candidate::margin)).orElseThrow();
    }
}
