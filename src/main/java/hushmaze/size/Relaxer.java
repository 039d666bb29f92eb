package hushmaze.size;

import hushmaze.project.Brief;
import hushmaze.quantity.InvalidValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Finds for each limit of a brief alone the least it must be relaxed by to let something be done.
 *
 * <p>What can be done may come and go with a limit, since sizes go in steps: the range is walked up in steps first, and only the
 * first step that helps is halved.
 */
final class Relaxer {
    /** A limit is relaxed to at most this many times its value. */
    private static final double MOST = 4;

    /** Steps of what is proposed: m, Pa, m/s, m³/s, kg. */
    private static final double LENGTH = 0.001;

    private static final double PRESSURE = 0.1;
    private static final double VELOCITY = 0.01;
    private static final double FLOW = 1e-4;
    private static final double MASS = 0.1;
    private static final double EVEN = 1e-6;

    private final Predicate<Brief> possible;
    private final int steps;
    private final int halvings;

    /**
     * @param possible whether a brief lets it be done
     * @param steps from a limit to its most relaxed value, equal in ratio
     * @param halvings within the first step that helps
     */
    Relaxer(Predicate<Brief> possible, int steps, int halvings) {
        this.possible = possible;
        this.steps = steps;
        this.halvings = halvings;
    }

    /** Every limit that helps alone, with the least that does; those of several numbers where none of one number does. */
    List<Relaxation> relaxations(Brief brief) {
        List<Relaxation> single = relaxations(brief, Relaxation.Limit.single());
        return single.isEmpty() ? relaxations(brief, Relaxation.Limit.several()) : single;
    }

    /** Those of some limits that help alone. */
    List<Relaxation> relaxations(Brief brief, List<Relaxation.Limit> limits) {
        List<Relaxation> found = new ArrayList<>();
        for (Relaxation.Limit limit : limits) {
            double from = BriefLimits.get(brief, limit);
            if (!Double.isNaN(from)) {
                leastFactor(brief, limit, from)
                        .ifPresent(f -> found.add(
                                new Relaxation(limit, from, rounded(brief, limit, from * f), BriefLimits.unit(limit))));
            }
        }
        return found;
    }

    private Optional<Double> leastFactor(Brief brief, Relaxation.Limit limit, double from) {
        // Everything is relaxed upwards but the airflow, which is relaxed downwards.
        double most = limit == Relaxation.Limit.FLOW ? 1 / MOST : MOST;
        double near = 1;
        for (int step = 1; step <= steps; step++) {
            double far = Math.pow(most, (double) step / steps);
            if (helps(brief, limit, from * far)) {
                return Optional.of(halved(brief, limit, from, near, far));
            }
            near = far;
        }
        return Optional.empty();
    }

    private double halved(Brief brief, Relaxation.Limit limit, double from, double impossible, double enough) {
        double near = impossible;
        double far = enough;
        for (int i = 0; i < halvings; i++) {
            double middle = (near + far) / 2;
            if (helps(brief, limit, from * middle)) {
                far = middle;
            } else {
                near = middle;
            }
        }
        return far;
    }

    /** The next value a person would name, if that does as well: sizes go in steps, so what is more generous may not. */
    private double rounded(Brief brief, Relaxation.Limit limit, double value) {
        double step = switch (limit) {
            case SPACE_WIDTH, SPACE_HEIGHT, SPACE_DEPTH, SPACE, DOORWAY_WIDTH, DOORWAY_HEIGHT, DOORWAY, OPENING ->
                LENGTH;
            case PRESSURE_DROP -> PRESSURE;
            case PATH_VELOCITY, OPENING_VELOCITY -> VELOCITY;
            case FLOW -> FLOW;
            case MASS -> MASS;
            case BOARD_SHEETS, LINER_SHEETS ->
                throw new IllegalArgumentException(limit + " is none of a brief's limits");
        };
        double steps = value / step;
        double whole = step * (limit == Relaxation.Limit.FLOW ? Math.floor(steps + EVEN) : Math.ceil(steps - EVEN));
        return whole > 0 && helps(brief, limit, whole) ? whole : value;
    }

    private boolean helps(Brief brief, Relaxation.Limit limit, double value) {
        Brief relaxed;
        try {
            relaxed = BriefLimits.with(brief, limit, value);
        } catch (InvalidValue beyondWhatABriefMaySay) {
            return false;
        }
        return possible.test(relaxed);
    }
}
