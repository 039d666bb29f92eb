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
    /** Places that were searched for, by the value. */
    private final Map<Double, Double> found = new HashMap<>();

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
     * The place where it has a value, between the nearest known places.
     *
     * @param low where it is not above the value
     * @param beyond a place at which it is not below a value; asked when none is known
     */
    double inverse(double value, double low, DoubleUnaryOperator beyond) {
        Double known = found.get(value);
        if (known != null && known >= low) {
            return known;
        }
        Map.Entry<Double, Double> above = places.ceilingEntry(value);
        double high = above == null ? beyond.applyAsDouble(value) : above.getValue();
        Map.Entry<Double, Double> below = places.floorEntry(value);
        boolean nearer = below != null && below.getValue() > low && below.getValue() < high;
        double place = Root.between(at -> at(at) - value, nearer ? below.getValue() : low, high);
        if (found.size() < MOST) {
            found.put(value, place);
        }
        return place;
    }
}
