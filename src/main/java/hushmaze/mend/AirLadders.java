package hushmaze.mend;

import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.project.Brief;
import hushmaze.project.Drive;
import hushmaze.project.Opening;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.VentPath;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** How much air there is, which ways it has and what drives it. */
final class AirLadders {
    /** Flows are rounded up to tenths of a litre a second. */
    private static final double FLOW_STEP = 1e-4;

    private final Assessment shown;
    private final int path;
    private final Notice notice;

    AirLadders(Assessment shown, int path, Notice notice) {
        this.shown = shown;
        this.path = path;
        this.notice = notice;
    }

    /** More air into the room, or as much out of it as in. */
    List<Ladder> flows() {
        double into = sum(true);
        double outOf = sum(false);
        double needed = switch (notice.kind()) {
            case FLOWS_UNEQUAL -> Math.max(into, outOf);
            case NEED_ABOVE_FLOW -> notice.value();
            default -> carriesOff();
        };
        double whole = Math.ceil(needed / FLOW_STEP - Ladder.EVEN) * FLOW_STEP;
        return List.of(new Ladder(
                Mend.Kind.FLOW,
                Unit.LITRE_PER_SECOND,
                List.of(whole),
                v -> p -> scaled(scaled(p, true, v, into), false, v, outOf)));
    }

    /** Flow at which carbon dioxide settles at the limit, m³/s: its rise is inverse to the flow. */
    private double carriesOff() {
        double outdoors = shown.project().room().outdoorCo2();
        return sum(true) * (notice.value() - outdoors) / (notice.limit() - outdoors);
    }

    private double sum(boolean supply) {
        return shown.project().paths().stream()
                .filter(p -> (p.purpose() == Purpose.SUPPLY) == supply)
                .mapToDouble(p -> p.brief().flow())
                .sum();
    }

    private Project scaled(Project project, boolean supply, double whole, double now) {
        Project changed = project;
        for (int i = 0; i < project.paths().size(); i++) {
            VentPath one = shown.project().paths().get(i);
            if ((one.purpose() == Purpose.SUPPLY) == supply && now > 0) {
                VentPath old = changed.paths().get(i);
                double flow = whole * one.brief().flow() / now;
                changed = changed.withPath(i, old.withBrief(old.brief().withFlow(flow)));
            }
        }
        return changed;
    }

    /** The missing path the other way. */
    Ladder wayBack() {
        return Ladder.single(Mend.Kind.WAY_BACK, this::wayBack);
    }

    /** A path like this one the other way, its air driven by what the other path brings. */
    private Project wayBack(Project project) {
        VentPath like = project.paths().get(path);
        boolean supply = like.purpose() == Purpose.SUPPLY;
        Opening opening = like.brief().opening();
        Opening hole = new Opening(
                Opening.Kind.WALL_OPENING,
                opening.surface(),
                opening.beyond() == Opening.Beyond.OUTDOORS ? Opening.Beyond.OUTDOORS : Opening.Beyond.INDOORS,
                opening.width(),
                opening.height());
        Drive drive = new Drive(
                Drive.Kind.NOTHING, null, null, null, "Assumed by the program, no source: driven by the other path.");
        Purpose purpose =
                supply ? hole.beyond() == Opening.Beyond.OUTDOORS ? Purpose.EXHAUST : Purpose.RETURN : Purpose.SUPPLY;
        Brief other = like.brief().plain().withAirFrom(hole, like.brief().flow(), drive);
        List<VentPath> paths = new ArrayList<>(project.paths());
        paths.add(new VentPath(freeName(project, supply ? "Way out" : "Way in"), purpose, other, like.box()));
        return project.withPaths(paths);
    }

    private static String freeName(Project project, String base) {
        String name = base;
        for (int number = 2; isTaken(project, name); number++) {
            name = base + " " + number;
        }
        return name;
    }

    private static boolean isTaken(Project project, String name) {
        return project.paths().stream().anyMatch(p -> p.name().equals(name));
    }

    List<Ladder> fanSpeed() {
        PathResult result = shown.paths().get(path);
        Drive drive = result.path().brief().drive();
        boolean known = drive != null
                && drive.kind() == Drive.Kind.FAN_CURVE
                && result.carried() != null
                && result.carried().speed() != null;
        if (!known) {
            return List.of();
        }
        double speed = Math.ceil(100 * result.carried().speed()) / 100;
        return List.of(new Ladder(
                Mend.Kind.FAN_SPEED,
                Unit.PERCENT,
                List.of(speed),
                v -> Ladder.ofBrief(
                        path,
                        b -> b.withAirFrom(
                                b.opening(),
                                b.flow(),
                                new Drive(drive.kind(), drive.pressure(), drive.fan(), v, drive.source())))));
    }
}
