package hushmaze.air.network;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;

/**
 * A rising function that is turned round again and again, each value of it dear. It remembers where it was asked, so that the
 * next search starts between the nearest known places. Not safe for use by several threads.
 */
final class RisingCurve {
    /** Places remembered at most. */
    private static final int MOST = 400;

    private final DoubleUnaryOperator function;
    private final Map<Double, Double> values = new HashMap<>();
    private final TreeMap<Double, Double> places = new TreeMap<>();

    /** @param function rising */
    RisingCurve(DoubleUnaryOperator function) {
        this.function = function;
    }

    /** Its value at a place. */
    double at(double place) {
        Double known = values.get(place);
        if (known != null) {
            return known;
        }
        double value = function.applyAsDouble(place);
        if (values.size() < MOST && Double.isFinite(value)) {
            values.put(place, value);
            places.put(value, place);
        }
        return value;
    }

    /**
     * The place where it has a value, between two places at which it is below and above, or nearer known ones.
     *
     * @param low where it is not above the value
     * @param high where it is not below the value
     */
    double inverse(double value, double low, double high) {
        double from = low;
        double to = high;
        Map.Entry<Double, Double> below = places.floorEntry(value);
        Map.Entry<Double, Double> above = places.ceilingEntry(value);
        if (below != null && below.getValue() > from && below.getValue() < to) {
            from = below.getValue();
        }
        if (above != null && above.getValue() < to && above.getValue() > from) {
            to = above.getValue();
        }
        return Root.between(place -> at(place) - value, from, to);
    }

    /** The nearest place known where it is not below a value; null if there is none yet. */
    Double knownAbove(double value) {
        Map.Entry<Double, Double> above = places.ceilingEntry(value);
        return above == null ? null : above.getValue();
    }
}
