package hushmaze.build.split;

import hushmaze.project.Seam;
import hushmaze.solid.SeamPlaces;

/**
 * A part that seams may shorten, and how long its pieces may be.
 *
 * @param from where it begins, from the outer face of the near end, m
 * @param to where it ends, m
 * @param staggered whether a glued seam parts it further on than the innermost layer
 * @param gap between two of its pieces where the box comes apart, m
 * @param longest piece, m
 */
record Stretch(double from, double to, boolean staggered, double gap, double longest) {
    /** How much is between the plane of the seam and the end of the piece before it, m; negative if the piece is longer. */
    private double offset(Seam.Kind kind) {
        return kind == Seam.Kind.PARTING ? gap / 2 : staggered ? -SeamPlaces.STAGGER : 0;
    }

    /** Where its piece beyond a plane begins, m. */
    private double begin(Seam.Kind kind, double position) {
        if (kind == null) {
            return from;
        }
        double begin = kind == Seam.Kind.PARTING ? position + gap / 2 : position - offset(kind);
        return Math.max(from, begin);
    }

    /** The furthest a seam may be from the one before so that the piece between is not too long, m. */
    double reach(Seam.Kind before, double position, Seam.Kind next) {
        double furthest = begin(before, position) + longest;
        return to <= furthest ? Double.POSITIVE_INFINITY : furthest + offset(next);
    }

    /** Whether the last piece, beyond a seam, is short enough. */
    boolean ends(Seam.Kind before, double position) {
        return to - begin(before, position) <= longest + 1e-9;
    }

    double length() {
        return to - from;
    }
}
