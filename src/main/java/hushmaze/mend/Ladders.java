package hushmaze.mend;

import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Drive;
import hushmaze.project.Joinery;
import hushmaze.project.LinedFaces;
import hushmaze.project.Mounting;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Seam;
import hushmaze.project.VentPath;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.ResizedBox;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** Which numbers may mend a notice, and in what steps they are tried. */
final class Ladders {
    private static final Set<NoticeKind> SOUND =
            EnumSet.of(NoticeKind.NOT_QUIET_ENOUGH, NoticeKind.OTHERS_HEAR_TOO_MUCH);
    /** Steps of a size tried, each of 5 mm or 1/8 in: up to 200 mm. */
    private static final int STEPS = 40;
    /** Of the cleats' rows, each of 10 mm or 1/2 in. */
    private static final int ROW_STEPS = 60;

    private static final double METRIC_STEP = 0.005;
    private static final double INCH_STEP = 0.0254 / 8;
    /** Pressed foam strip, and play round a board; as in {@link Joinery#usual}. */
    private static final double GASKET = Joinery.usual().gasket();

    private static final double INCH_PLAY = 0.0254 / 32;
    /** Flows are rounded up to tenths of a litre a second. */
    private static final double FLOW_STEP = 1e-4;
    /** Published limits are rounded down to hundredths of a metre a second. */
    private static final double VELOCITY_STEPS = 100;

    private static final double EVEN = 1e-9;

    private final Assessment shown;
    private final int path;
    private final Notice notice;
    private final PathResult result;
    private final Box box;
    private final Brief brief;
    private final double step;

    Ladders(Assessment shown, int path, Notice notice) {
        this.shown = shown;
        this.path = path;
        this.notice = notice;
        this.result = shown.paths().get(path);
        this.box = result.path().box();
        this.brief = result.path().brief();
        this.step = shown.project().units() == UnitSystem.INCH ? INCH_STEP : METRIC_STEP;
    }

    /** Whether a notice is about the level in a room, so that a gain counts. */
    static boolean isAboutSound(Notice notice) {
        return SOUND.contains(notice.kind());
    }

    /** In the order they are offered. */
    List<Ladder> all() {
        return switch (notice.kind()) {
            case NOT_QUIET_ENOUGH, OTHERS_HEAR_TOO_MUCH -> quieter();
            case PRESSURE_ABOVE_LIMIT, PRESSURE_ABOVE_DRIVE, FLOW_BELOW_ASKED -> easier();
            case PRESSURE_ABOVE_ROOM_LIMIT, ROOM_PRESSURE_HIGH -> easier();
            case VELOCITY_ABOVE_LIMIT, FLOW_NOISE_GOVERNS, DRAUGHT -> slower();
            case TURN_GAP_NARROW, TURN_OUTSIDE_RANGE -> List.of(sizes(Mend.Kind.TURN_GAP, box.turnGap(), 1));
            case TURNS_OVERLAP ->
                List.of(
                        sizes(Mend.Kind.TURN_GAP, box.turnGap(), -1),
                        sizes(Mend.Kind.PASS_LENGTH, box.clearLength(), 1));
            case TURNS_INTERFERE -> List.of(sizes(Mend.Kind.PASS_LENGTH, box.clearLength(), 1));
            case DOES_NOT_FIT -> smaller();
            case PORT_SMALLER_THAN_OPENING -> List.of(Ladder.single(Mend.Kind.OPENING_PORT, this::overOpening));
            case HEAVIER_THAN_LIMIT, PART_HEAVIER_THAN_LIMIT, PANEL_LARGER_THAN_SHEET, DOES_NOT_PASS_DOORWAY ->
                parted();
            case SEAM_WITHOUT_GASKET -> List.of(joints(Mend.Kind.GASKET, GASKET));
            case PRINTED_SIZES_TIGHT -> List.of(joints(Mend.Kind.PLAY, play()));
            case NO_LINER, LINE_OF_SIGHT -> liners();
            case VELOCITY_LIMIT_LOOSE, PATH_VELOCITY_LIMIT_LOOSE -> limits();
            case NEED_ABOVE_FLOW, CO2_HIGH, FLOWS_UNEQUAL -> flows();
            case NO_WAY_OUT, ONLY_GAPS -> List.of(Ladder.single(Mend.Kind.WAY_BACK, this::wayBack));
            case FLOW_ABOVE_ASKED -> fanSpeed();
            default -> fixing();
        };
    }

    private UnaryOperator<Project> box(UnaryOperator<Box> change) {
        return p -> {
            VentPath old = p.paths().get(path);
            return p.withPath(path, old.withBox(change.apply(old.box())));
        };
    }

    private UnaryOperator<Project> brief(UnaryOperator<Brief> change) {
        return p -> {
            VentPath old = p.paths().get(path);
            return p.withPath(path, old.withBrief(change.apply(old.brief())));
        };
    }

    /** A size in steps of a builder's rule, up or down. */
    private Ladder sizes(Mend.Kind kind, double now, int direction) {
        double whole = direction > 0 ? Math.floor(now / step + EVEN) : Math.ceil(now / step - EVEN);
        List<Double> values = DoubleStream.iterate(whole + direction, n -> n + direction)
                .limit(STEPS)
                .map(n -> n * step)
                .filter(v -> v > 0)
                .boxed()
                .toList();
        return new Ladder(kind, Unit.MILLIMETRE, values, value -> box(b -> resized(b, kind, value)));
    }

    private static Box resized(Box b, Mend.Kind kind, double to) {
        ResizedBox as = new ResizedBox(b);
        return switch (kind) {
            case PASS_WIDTH -> as.clear(to, b.clearHeight(), b.clearLength());
            case PASS_HEIGHT -> as.clear(b.clearWidth(), to, b.clearLength());
            case PASS_LENGTH -> as.clear(b.clearWidth(), b.clearHeight(), to);
            case TURN_GAP -> as.turning(to);
            default -> throw new IllegalArgumentException(kind + " is no size");
        };
    }

    private List<Ladder> quieter() {
        List<Ladder> all = new ArrayList<>();
        if (box.shell().size() < Box.MAX_LAYERS) {
            all.add(Ladder.single(Mend.Kind.BOARD_LAYER, box(b -> {
                var more = new ArrayList<>(b.shell());
                more.add(more.get(more.size() - 1));
                return b.ofBoards(more, b.baffleBoard());
            })));
        }
        all.addAll(liners());
        all.add(sizes(Mend.Kind.PASS_LENGTH, box.clearLength(), 1));
        if (box.form() == Box.Form.MAZE && box.passes() < Box.MAX_PASSES) {
            all.add(new Ladder(
                    Mend.Kind.PASSES,
                    Unit.NUMBER,
                    List.of(box.passes() + 1.0),
                    value -> box(b -> new ResizedBox(b).ofPasses((int) value))));
        }
        all.add(sizes(Mend.Kind.PASS_WIDTH, box.clearWidth(), -1));
        all.add(sizes(Mend.Kind.PASS_HEIGHT, box.clearHeight(), -1));
        return all;
    }

    /** One more layer of liner, face by face. */
    private List<Ladder> liners() {
        List<Ladder> all = new ArrayList<>();
        if (box.liner() == null) {
            return all;
        }
        LinedFaces now = box.linedFaces();
        boolean baffles = box.passes() > 1;
        liner(all, Mend.Kind.SIDE_LINER, now.walls(), true, (f, n) -> f.withSides(n));
        liner(all, Mend.Kind.BAFFLE_LINER, now.baffles(), baffles, (f, n) -> f.withBaffles(n));
        liner(all, Mend.Kind.END_LINER, now.ends(), true, (f, n) -> f.withEnds(n));
        liner(all, Mend.Kind.BROAD_LINER, now.broad(), true, (f, n) -> f.withBroad(n));
        return all;
    }

    private interface Faces {
        LinedFaces with(LinedFaces faces, int layers);
    }

    private void liner(List<Ladder> all, Mend.Kind kind, int layers, boolean there, Faces faces) {
        if (there && layers < LinedFaces.MOST) {
            all.add(new Ladder(
                    kind,
                    Unit.NUMBER,
                    List.of(layers + 1.0),
                    value -> box(b -> b.lined(faces.with(b.linedFaces(), (int) value)))));
        }
    }

    /** Less pressure at the same air. */
    private List<Ladder> easier() {
        List<Ladder> all = new ArrayList<>(List.of(
                sizes(Mend.Kind.PASS_HEIGHT, box.clearHeight(), 1), sizes(Mend.Kind.PASS_WIDTH, box.clearWidth(), 1)));
        if (box.passes() > 1) {
            all.add(sizes(Mend.Kind.TURN_GAP, box.turnGap(), 1));
        }
        all.add(Ladder.single(Mend.Kind.ROOM_PORT, this::widestPort));
        all.addAll(fanSpeed());
        return all;
    }

    private List<Ladder> slower() {
        List<Ladder> all = new ArrayList<>();
        all.add(Ladder.single(Mend.Kind.ROOM_PORT, this::widestPort));
        all.add(sizes(Mend.Kind.PASS_HEIGHT, box.clearHeight(), 1));
        all.add(sizes(Mend.Kind.PASS_WIDTH, box.clearWidth(), 1));
        if (box.passes() > 1) {
            all.add(sizes(Mend.Kind.TURN_GAP, box.turnGap(), 1));
        }
        return all;
    }

    private Project widestPort(Project project) {
        return box(b -> {
                    Port port = b.roomPort();
                    boolean end = port.face() == PortFace.END;
                    double along = end ? b.clearWidth() : b.clearLength();
                    double most = port.face() == PortFace.SIDE ? Math.min(along / 2, 2 * port.width()) : along;
                    double across = port.face().isBroad() ? b.clearWidth() : b.clearHeight();
                    double distance = end && b.form() == Box.Form.MAZE ? 0 : port.edgeDistance();
                    Port wide = new Port(
                            port.face(),
                            Math.max(port.width(), Math.min(most, along - distance)),
                            across,
                            port.edgeDistance());
                    return b.sized(
                            b.passes(),
                            b.clearWidth(),
                            b.clearHeight(),
                            b.clearLength(),
                            b.turnGap(),
                            b.liner(),
                            b.openingPort(),
                            wide);
                })
                .apply(project);
    }

    private Project overOpening(Project project) {
        Opening opening = brief.opening();
        return box(b -> {
                    Port port = b.openingPort();
                    boolean turned = (port.width() >= port.height()) != (opening.width() >= opening.height());
                    double width = turned ? opening.height() : opening.width();
                    double height = turned ? opening.width() : opening.height();
                    Port over = new Port(
                            port.face(),
                            Math.max(port.width(), width),
                            Math.max(port.height(), height),
                            port.edgeDistance());
                    return b.sized(
                            b.passes(),
                            Math.max(b.clearWidth(), port.face().isBroad() ? over.height() : 0),
                            Math.max(b.clearHeight(), port.face().isBroad() ? 0 : over.height()),
                            b.clearLength(),
                            b.turnGap(),
                            b.liner(),
                            over,
                            b.roomPort());
                })
                .apply(project);
    }

    private List<Ladder> smaller() {
        return List.of(
                sizes(Mend.Kind.PASS_LENGTH, box.clearLength(), -1),
                sizes(Mend.Kind.PASS_HEIGHT, box.clearHeight(), -1),
                sizes(Mend.Kind.PASS_WIDTH, box.clearWidth(), -1));
    }

    /** The joints the notice names, beside those there are. */
    private List<Ladder> parted() {
        if (notice.places().isEmpty()) {
            return List.of();
        }
        List<Seam> seams = notice.places().stream()
                .map(p -> new Seam(p.comesApart() ? Seam.Kind.PARTING : Seam.Kind.GLUED, p.position()))
                .collect(Collectors.toList());
        return List.of(Ladder.single(Mend.Kind.SEAMS, box(b -> b.joined(b.joinery(), seams))));
    }

    private Ladder joints(Mend.Kind kind, double value) {
        return new Ladder(kind, Unit.MILLIMETRE, List.of(value), v -> p -> {
            VentPath old = p.paths().get(path);
            Joinery now = old.box().joinery();
            Joinery other = kind == Mend.Kind.GASKET
                    ? new Joinery(now.fitClearance(), v, now.groove(), now.pinsAbove())
                    : new Joinery(v, now.gasket(), now.groove(), now.pinsAbove());
            Box joined = old.box().joined(other, old.box().seams());
            Brief asked =
                    old.brief().withConstruction(old.brief().construction().joined(other));
            return p.withPath(path, old.withBox(joined).withBrief(asked));
        });
    }

    private double play() {
        return shown.project().units() == UnitSystem.INCH
                ? INCH_PLAY
                : Joinery.usual().fitClearance();
    }

    /** What is published for so quiet a room. */
    private List<Ladder> limits() {
        boolean inPath = notice.kind() == NoticeKind.PATH_VELOCITY_LIMIT_LOOSE;
        double limit = Math.floor(notice.limit() * VELOCITY_STEPS) / VELOCITY_STEPS;
        return List.of(new Ladder(
                inPath ? Mend.Kind.PATH_LIMIT : Mend.Kind.ROOM_LIMIT,
                Unit.METRE_PER_SECOND,
                List.of(limit),
                v -> brief(
                        b -> b.withVelocities(inPath ? v : b.maxPathVelocity(), inPath ? b.maxOpeningVelocity() : v))));
    }

    /** More air into the room, or as much out of it as in. */
    private List<Ladder> flows() {
        double into = sum(true);
        double outOf = sum(false);
        double needed = switch (notice.kind()) {
            case FLOWS_UNEQUAL -> Math.max(into, outOf);
            case NEED_ABOVE_FLOW -> notice.value();
            default -> carriesOff();
        };
        double whole = Math.ceil(needed / FLOW_STEP - EVEN) * FLOW_STEP;
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

    private List<Ladder> fanSpeed() {
        Drive drive = brief.drive();
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
                v -> brief(b -> b.withAirFrom(
                        b.opening(),
                        b.flow(),
                        new Drive(drive.kind(), drive.pressure(), drive.fan(), v, drive.source())))));
    }

    /** Screws and cleats. */
    private List<Ladder> fixing() {
        Mounting mounting = brief.construction().mounting();
        if (mounting == null) {
            return List.of();
        }
        return switch (notice.kind()) {
            case FIXING_OVERLOADED, SCREWS_SHALLOW, MORE_SCREWS_DO, SCREWS_EXCEED_STUDS, NO_SCREWS_DO ->
                List.of(
                        new Ladder(
                                Mend.Kind.SCREWS,
                                Unit.NUMBER,
                                DoubleStream.iterate(mounting.screwsPerRow() + 1, n -> n + 1)
                                        .limit(Mounting.MOST_SCREWS - mounting.screwsPerRow())
                                        .boxed()
                                        .toList(),
                                v -> mounted(mounting.withScrews((int) v))),
                        rows(mounting, 1),
                        mounts(Mend.Kind.THREAD, mounting.thread(), 1, mounting::withThread));
            case SCREWS_MISS_STUDS, SCREWS_MAY_MISS_STUDS, LONGER_CLEAT ->
                mounting.cleatLength() == null
                        ? List.of()
                        : List.of(mounts(Mend.Kind.CLEAT_LENGTH, mounting.cleatLength(), 1, mounting::withCleatLength));
            case ROWS_BEYOND_BOX ->
                List.of(mounts(Mend.Kind.ROW_DISTANCE, notice.limit() + step, -1, mounting::withRowDistance));
            case CLEAT_ACROSS_PORT, CENTRE_BEYOND_ROWS -> List.of(rows(mounting, 1), rows(mounting, -1));
            default -> List.of();
        };
    }

    private Ladder rows(Mounting mounting, int direction) {
        return mounts(Mend.Kind.ROW_DISTANCE, mounting.rowDistance(), direction, mounting::withRowDistance);
    }

    private interface Mounts {
        Mounting with(double value);
    }

    private Ladder mounts(Mend.Kind kind, double now, int direction, Mounts mounts) {
        double by = kind == Mend.Kind.THREAD ? step : (shown.project().units() == UnitSystem.INCH ? 4 : 2) * step;
        double whole = direction > 0 ? Math.floor(now / by + EVEN) : Math.ceil(now / by - EVEN);
        List<Double> values = DoubleStream.iterate(whole + direction, n -> n + direction)
                .limit(ROW_STEPS)
                .map(n -> n * by)
                .filter(v -> v > 0)
                .boxed()
                .toList();
        return new Ladder(
                kind, Unit.MILLIMETRE, values, v -> p -> mounted(mounts.with(v)).apply(p));
    }

    private UnaryOperator<Project> mounted(Mounting other) {
        return brief(b -> b.withConstruction(b.construction().mounted(other)));
    }
}
