package hushmaze.drawing.page;

import hushmaze.build.joint.Fastener;
import hushmaze.drawing.Labels;
import hushmaze.material.Screw;
import hushmaze.quantity.UnitSystem;
import java.util.Locale;
import java.util.OptionalInt;

/**
 * Fasteners as they are asked for in a shop; in inches, screws by their gauge.
 *
 * <p>Formula: D = 0.060 in + 0.013 in · N. D is the diameter, N the gauge number. Source: ANSI/ASME B18.6.1, wood screws, from
 * memory. Range: the even gauges 2 to 24, which are sold; a screw whose diameter is more than 0.2 mm from a gauge is given by its diameter. Accuracy: exact
 * as a name. Differs from the source: none.
 */
final class FastenerNames {
    private static final double INCH = 0.0254;
    private static final double GAUGE_0 = 0.060 * INCH;
    private static final double STEP = 0.013 * INCH;
    private static final int LAST = 24;
    private static final int EVEN = 2;
    /** Farthest from a gauge, m. */
    private static final double NEAR = 0.0002;

    private final Job job;

    FastenerNames(Job job) {
        this.job = job;
    }

    static String kind(Fastener fastener) {
        return Labels.of("fastener." + fastener.kind().name().toLowerCase(Locale.ROOT));
    }

    String size(Fastener fastener) {
        Screw screw = job.assessment().project().stock().screw();
        String length = job.length(fastener.length());
        return switch (fastener.kind()) {
            case SCREW ->
                fastener.length() == screw.length() ? Job.named(screw.name()) : screw(fastener.diameter(), length);
            case BRAD, PIN -> length;
            case DOWEL, PLATE -> job.bare(fastener.diameter()) + " × " + length;
        };
    }

    private String screw(double diameter, String length) {
        OptionalInt gauge = job.units() == UnitSystem.INCH ? gauge(diameter) : OptionalInt.empty();
        return gauge.isPresent()
                ? Labels.of("fastener.gauge", String.valueOf(gauge.getAsInt()), length)
                : job.bare(diameter) + " × " + length;
    }

    /** The gauge of a wood screw; none if its diameter is near no gauge. */
    static OptionalInt gauge(double diameter) {
        int nearest = EVEN * (int) Math.round((diameter - GAUGE_0) / (EVEN * STEP));
        boolean near = Math.abs(GAUGE_0 + nearest * STEP - diameter) <= NEAR;
        return near && nearest >= EVEN && nearest <= LAST ? OptionalInt.of(nearest) : OptionalInt.empty();
    }
}
