package hushmaze.mend;

import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Joinery;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Seam;
import hushmaze.project.VentPath;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.ResizedBox;
import hushmaze.size.Steps;
import hushmaze.solid.Role;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Which numbers may mend a notice, and in what steps they are tried. */
final class Ladders {
    private static final Set<NoticeKind> SOUND =
            EnumSet.of(NoticeKind.NOT_QUIET_ENOUGH, NoticeKind.OTHERS_HEAR_TOO_MUCH);
    /** Steps of a size tried, each of 5 mm or 1/8 in: up to 200 mm. */
    private static final int STEPS = 40;
    /** Pressed foam strip, and play round a board; as in {@link Joinery#usual}. */
    private static final double GASKET = Joinery.usual().gasket();

    private static final double INCH_PLAY = 0.0254 / 32;
    /** Published limits are rounded down to hundredths of a metre a second. */
    private static final double VELOCITY_STEPS = 100;

    private final Assessment shown;
    private final int path;
    private final Notice notice;
    private final PathResult result;
    private final Box box;
    private final Brief brief;
    private final double step;
    private final AirLadders air;

    Ladders(Assessment shown, int path, Notice notice) {
        this.shown = shown;
        this.path = path;
        this.notice = notice;
        this.result = shown.paths().get(path);
        this.box = result.path().box();
        this.brief = result.path().brief();
        this.step = new Steps(shown.project().units()).size();
        this.air = new AirLadders(shown, path, notice);
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
            case PANEL_RESONANCE_DECIDES -> layer();
            case TURN_GAP_NARROW, TURN_OUTSIDE_RANGE -> List.of(gap(1));
            case TURNS_OVERLAP -> List.of(gap(-1), length(1));
            case TURNS_INTERFERE -> List.of(length(1));
            case DOES_NOT_FIT -> smaller();
            case PORT_SMALLER_THAN_OPENING -> List.of(Ladder.single(Mend.Kind.OPENING_PORT, this::overOpening));
            case HEAVIER_THAN_LIMIT, PART_HEAVIER_THAN_LIMIT, PANEL_LARGER_THAN_SHEET, DOES_NOT_PASS_DOORWAY ->
                parted();
            case NARROW_STRIP -> otherPorts();
            case SEAM_WITHOUT_GASKET -> List.of(joints(Mend.Kind.GASKET, GASKET));
            case PRINTED_SIZES_TIGHT -> List.of(joints(Mend.Kind.PLAY, play()));
            case NO_LINER, LINE_OF_SIGHT -> liners();
            case VELOCITY_LIMIT_LOOSE, PATH_VELOCITY_LIMIT_LOOSE -> limits();
            case NEED_ABOVE_FLOW, CO2_HIGH, FLOWS_UNEQUAL -> air.flows();
            case NO_WAY_OUT, ONLY_GAPS -> List.of(air.wayBack());
            case FLOW_ABOVE_ASKED -> air.fanSpeed();
            default -> new FixingLadders(shown, path, notice).all();
        };
    }

    private UnaryOperator<Project> box(UnaryOperator<Box> change) {
        return p -> {
            VentPath old = p.paths().get(path);
            return p.withPath(path, old.withBox(change.apply(old.box())));
        };
    }

    /** A size in steps of a builder's rule, up or down. */
    private Ladder sizes(Mend.Kind kind, ResizedBox.Size size, double now, int direction) {
        return lengths(kind, now, direction, to -> box(b -> new ResizedBox(b).with(size, to)));
    }

    private Ladder lengths(Mend.Kind kind, double now, int direction, DoubleFunction<UnaryOperator<Project>> change) {
        return new Ladder(kind, Unit.MILLIMETRE, Ladder.steps(now, step, direction, STEPS), change);
    }

    private Ladder width(int direction) {
        return sizes(Mend.Kind.PASS_WIDTH, ResizedBox.Size.WIDTH, box.clearWidth(), direction);
    }

    private Ladder height(int direction) {
        return sizes(Mend.Kind.PASS_HEIGHT, ResizedBox.Size.HEIGHT, box.clearHeight(), direction);
    }

    private Ladder length(int direction) {
        return sizes(Mend.Kind.PASS_LENGTH, ResizedBox.Size.LENGTH, box.clearLength(), direction);
    }

    private Ladder gap(int direction) {
        return sizes(Mend.Kind.TURN_GAP, ResizedBox.Size.GAP, box.turnGap(), direction);
    }

    /** One more layer of board all round, if there may be one. */
    private List<Ladder> layer() {
        return box.shell().size() < Box.MAX_LAYERS
                ? List.of(Ladder.single(Mend.Kind.BOARD_LAYER, box(Box::withOneMoreLayer)))
                : List.of();
    }

    private List<Ladder> quieter() {
        List<Ladder> all = new ArrayList<>(layer());
        all.addAll(liners());
        all.add(length(1));
        if (box.form() == Box.Form.MAZE && box.passes() < Box.MAX_PASSES) {
            all.add(new Ladder(
                    Mend.Kind.PASSES,
                    Unit.NUMBER,
                    List.of(box.passes() + 1.0),
                    value -> box(b -> new ResizedBox(b).ofPasses((int) value))));
        }
        all.add(width(-1));
        all.add(height(-1));
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
        List<Ladder> all = new ArrayList<>(List.of(height(1), width(1)));
        if (box.passes() > 1) {
            all.add(gap(1));
        }
        all.add(Ladder.single(Mend.Kind.ROOM_PORT, this::widestPort));
        all.addAll(air.fanSpeed());
        return all;
    }

    private List<Ladder> slower() {
        List<Ladder> all = new ArrayList<>();
        all.add(Ladder.single(Mend.Kind.ROOM_PORT, this::widestPort));
        all.add(height(1));
        all.add(width(1));
        if (box.passes() > 1) {
            all.add(gap(1));
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

    /** Ports of the board that the notice is about, elsewhere or smaller; that of the room first, for the other should cover the opening. */
    private List<Ladder> otherPorts() {
        List<Ladder> all = new ArrayList<>();
        if (isOfNotice(result.solid().roomPort().role())) {
            ofPort(
                    all,
                    box.roomPort(),
                    List.of(Mend.Kind.ROOM_PORT_PLACE, Mend.Kind.ROOM_PORT_WIDTH, Mend.Kind.ROOM_PORT_HEIGHT),
                    (b, port) -> b.withPorts(b.openingPort(), port.apply(b.roomPort())));
        }
        if (isOfNotice(result.solid().openingPort().role())) {
            ofPort(
                    all,
                    box.openingPort(),
                    List.of(Mend.Kind.OPENING_PORT_PLACE, Mend.Kind.OPENING_PORT_WIDTH, Mend.Kind.OPENING_PORT_HEIGHT),
                    (b, port) -> b.withPorts(port.apply(b.openingPort()), b.roomPort()));
        }
        return all;
    }

    /** Whether the board with the mark in the notice is one of a face. */
    private boolean isOfNotice(Role role) {
        return result.cutList().boards().stream()
                .filter(item -> item.mark().equals(notice.part()))
                .flatMap(item -> item.parts().stream())
                .anyMatch(part -> part.role() == role);
    }

    private interface PortOfBox {
        Box changed(Box box, UnaryOperator<Port> change);
    }

    /** A port farther from the edge, nearer to it, narrower and lower; kinds of place, width and height. */
    private void ofPort(List<Ladder> all, Port now, List<Mend.Kind> kinds, PortOfBox port) {
        DoubleFunction<UnaryOperator<Project>> place = to -> box(b -> port.changed(b, old -> placed(old, to)));
        all.add(lengths(kinds.get(0), now.edgeDistance(), 1, place));
        all.add(lengths(kinds.get(0), now.edgeDistance(), -1, place));
        all.add(lengths(kinds.get(1), now.width(), -1, to -> box(b -> port.changed(b, old -> wide(old, to)))));
        all.add(lengths(kinds.get(2), now.height(), -1, to -> box(b -> port.changed(b, old -> high(old, to)))));
    }

    private static Port placed(Port port, double edge) {
        return new Port(port.face(), port.width(), port.height(), edge);
    }

    private static Port wide(Port port, double width) {
        return new Port(port.face(), width, port.height(), port.edgeDistance());
    }

    private static Port high(Port port, double height) {
        return new Port(port.face(), port.width(), height, port.edgeDistance());
    }

    private List<Ladder> smaller() {
        return List.of(length(-1), height(-1), width(-1));
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
                    ? new Joinery(now.fitClearance(), v, now.groove(), now.pinsAbove(), now.coverGap())
                    : new Joinery(v, now.gasket(), now.groove(), now.pinsAbove(), now.coverGap());
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
                v -> Ladder.ofBrief(
                        path,
                        b -> b.withVelocities(inPath ? v : b.maxPathVelocity(), inPath ? b.maxOpeningVelocity() : v))));
    }
}
