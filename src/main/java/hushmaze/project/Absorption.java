package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.List;

/** The check of absorption areas that records here share. */
final class Absorption {
    private static final int OCTAVES = 8;
    /** Least and most one octave may have, m². */
    private static final double LEAST = 0.05;

    private static final double MOST = 5000;

    private Absorption() {}

    /** The areas, copied; one per octave 63 Hz to 8 kHz, m². */
    static List<Double> checked(String field, List<Double> areas) {
        List<Double> copy = List.copyOf(InvalidValue.present(field, areas));
        if (copy.size() != OCTAVES) {
            throw new InvalidValue(field, copy.size() + " values", OCTAVES + " values, 63 Hz to 8 kHz", "");
        }
        for (double area : copy) {
            InvalidValue.within(field, area, LEAST, MOST, Unit.SQUARE_METRE);
        }
        return copy;
    }
}
