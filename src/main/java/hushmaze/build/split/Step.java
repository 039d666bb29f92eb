package hushmaze.build.split;

import hushmaze.quantity.UnitSystem;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;

/** A grid of round numbers. */
enum Step {
    /** 10 mm. */
    METRIC(10, 1000),
    /** 2 mm, where the round ones do not do. */
    METRIC_FINE(2, 1000),
    /** 1/2 in. */
    INCH(127, 10_000),
    /** 1/8 in, where the round ones do not do. */
    INCH_FINE(127, 40_000);

    private final long counted;
    private final double perMetre;

    Step(long counted, double perMetre) {
        this.counted = counted;
        this.perMetre = perMetre;
    }

    static Step of(UnitSystem units, boolean fine) {
        if (units == UnitSystem.INCH) {
            return fine ? INCH_FINE : INCH;
        }
        return fine ? METRIC_FINE : METRIC;
    }

    /** All multiples in a range, m, each the nearest double to its decimal form. */
    DoubleStream between(double low, double high) {
        double step = counted / perMetre;
        long first = (long) Math.ceil(low / step - 1e-6);
        long last = (long) Math.floor(high / step + 1e-6);
        return LongStream.rangeClosed(first, last).mapToDouble(i -> i * counted / perMetre);
    }
}
