package hushmaze.drawing.page;

import hushmaze.build.joint.Fastener;
import hushmaze.drawing.Labels;
import hushmaze.material.Screw;
import java.util.Locale;

/** Fasteners as they are asked for in a shop. */
final class FastenerNames {
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
                fastener.length() == screw.length()
                        ? Job.named(screw.name())
                        : job.bare(fastener.diameter()) + " × " + length;
            case BRAD, PIN -> length;
            case DOWEL, PLATE -> job.bare(fastener.diameter()) + " × " + length;
        };
    }
}
