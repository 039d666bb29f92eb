package hushmaze.air;

import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The losses, velocities and notices of one path while they are gathered, in the order of the air. */
final class LossList {
    /** Relative difference below which two areas are the same. */
    private static final double SAME_AREA = 1e-9;

    /** Sudden changes, whose coefficients are published for turbulent flow, from the same Reynolds number as turns. */
    private static final Set<String> TURBULENT = Set.of("entry", "areaChange", "collar");

    private final double flow;
    private final AirState air;
    private final List<Loss> losses = new ArrayList<>();
    private final List<PathAir.PlaceVelocity> velocities = new ArrayList<>();
    private final List<Notice> notices = new ArrayList<>();

    /** @param flow through the path, m³/s */
    LossList(double flow, AirState air) {
        this.flow = flow;
        this.air = air;
    }

    double flow() {
        return flow;
    }

    AirState air() {
        return air;
    }

    /** A loss on the velocity in an area, m². */
    void add(String key, String part, String source, Zeta zeta, double area) {
        losses.add(zeta.loss(key, part, source, flow / area, air));
        if (TURBULENT.contains(key)) {
            // on the round section of the same area
            double reynolds = air.reynolds(flow / area, Math.sqrt(4 * area / Math.PI));
            SharpTurn.notice(part, reynolds).ifPresent(notices::add);
        }
    }

    /** A sudden change between two areas, m²; nothing if they are the same. */
    void areaChange(String part, double before, double after) {
        if (Math.abs(before - after) > SAME_AREA * after) {
            add("areaChange", part, AreaChange.SOURCE, AreaChange.zeta(before, after), Math.min(before, after));
        }
    }

    /** The velocity in an area, m². */
    void velocity(String part, PathAir.Place place, double area) {
        velocities.add(new PathAir.PlaceVelocity(part, place, flow / area));
    }

    void note(Notice notice) {
        notices.add(notice);
    }

    double reynolds(Section section) {
        return air.reynolds(flow / section.area(), section.hydraulicDiameter());
    }

    PathAir toPathAir() {
        return new PathAir(flow, losses, velocities, once());
    }

    /** Every turn and change may be below the range of the Reynolds correction; the one furthest below it speaks for all. */
    private List<Notice> once() {
        Optional<Notice> lowest =
                notices.stream().filter(LossList::aboutReynolds).min(Comparator.comparingDouble(Notice::value));
        return notices.stream()
                .filter(n -> !aboutReynolds(n) || n.equals(lowest.orElse(null)))
                .distinct()
                .toList();
    }

    private static boolean aboutReynolds(Notice notice) {
        return notice.kind() == NoticeKind.REYNOLDS_BELOW_RANGE;
    }
}
