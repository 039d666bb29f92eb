package hushmaze.mend;

import hushmaze.project.Project;
import hushmaze.quantity.Unit;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;

/**
 * Values of one number to try, the least change first.
 *
 * @param kind what is changed
 * @param unit of the values
 * @param values in SI
 * @param change makes the project with a value
 */
record Ladder(Mend.Kind kind, Unit unit, List<Double> values, DoubleFunction<UnaryOperator<Project>> change) {
    Ladder {
        values = List.copyOf(values);
    }

    /** One change without a number. */
    static Ladder single(Mend.Kind kind, UnaryOperator<Project> change) {
        return new Ladder(kind, Unit.NUMBER, List.of(Double.NaN), value -> change);
    }

    Mend mend(double value, boolean enough, double gain) {
        return new Mend(kind, value, unit, enough, gain, change.apply(value));
    }
}
