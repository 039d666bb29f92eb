package hushmaze.mend;

import hushmaze.project.Brief;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.Unit;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;

/**
 * Values of one number to try, the least change first.
 *
 * @param kind what is changed
 * @param unit of the values
 * @param values in SI
 * @param change makes the project with a value
 */
record Ladder(Mend.Kind kind, Unit unit, List<Double> values, DoubleFunction<UnaryOperator<Project>> change) {
    /** A value this near to a step is on it. */
    static final double EVEN = 1e-9;

    Ladder {
        values = List.copyOf(values);
    }

    /** One change without a number. */
    static Ladder single(Mend.Kind kind, UnaryOperator<Project> change) {
        return new Ladder(kind, Unit.NUMBER, List.of(Double.NaN), value -> change);
    }

    /**
     * Whole multiples of a step beyond a value, the nearest first; none at or below zero.
     *
     * @param direction 1 for more, -1 for less
     * @param count most of them
     */
    static List<Double> steps(double now, double step, int direction, int count) {
        double whole = direction > 0 ? Math.floor(now / step + EVEN) : Math.ceil(now / step - EVEN);
        return DoubleStream.iterate(whole + direction, n -> n + direction)
                .limit(count)
                .map(n -> n * step)
                .filter(v -> v > 0)
                .boxed()
                .toList();
    }

    /** A project with the brief of one path changed. */
    static UnaryOperator<Project> ofBrief(int path, UnaryOperator<Brief> change) {
        return p -> {
            VentPath old = p.paths().get(path);
            return p.withPath(path, old.withBrief(change.apply(old.brief())));
        };
    }

    Mend mend(double value, boolean enough, double gain) {
        return new Mend(kind, value, unit, enough, gain, change.apply(value));
    }
}
