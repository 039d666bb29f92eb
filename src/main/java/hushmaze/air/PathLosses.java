package hushmaze.air;

import hushmaze.project.Box;
import hushmaze.project.Opening;
import hushmaze.project.Purpose;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Solid;
import hushmaze.solid.Turn;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * All losses of pressure of a box over its opening, in the order of the air, with the velocities on the way.
 *
 * <p>The box's passes are counted from the port at the opening to the port in the room, and the parts keep their names:
 * "opening port", "pass 1", "turn 1", ..., "room port". For {@link Purpose#SUPPLY} the air runs in that order; for RETURN
 * and EXHAUST it runs from the port in the room to the one at the opening, and so do the lists.
 *
 * <p>What is summed: a mouth at each end (entry 0.5 or exit 1.0 where the port opens to a space, a change of area where a
 * duct goes on: at the opening for a register, at both ends in a duct run); at each port the turn by 90 degrees if the port
 * is not in the end of its pass, and the change of area between port and pass; friction along the clear length of every
 * pass; every turn around a baffle. A port's turn is reckoned at the port's section and at the pass's, and the dearer is
 * listed. A wall opening smaller than the port counts as a mouth of its own size with a change of area to the port.
 *
 * <p>An offset chamber is simplified: a sudden widening into the chamber's cross-section and a narrowing out of it, a turn
 * at each port that is not in an end, and no friction; that the two ports are out of line is not counted.
 *
 * <p>Not counted, with a notice: grille, filter, flexible duct. Not counted at all: how a port's turn and the first turn
 * around a baffle act on each other.
 */
public final class PathLosses {
    /** Roughness of bare board, m: upper end of well planed wood, 0.18 to 0.9 mm, as read in a duct roughness table. */
    public static final double BOARD_ROUGHNESS = 0.0009;

    /** Relative difference below which two areas are the same. */
    private static final double SAME_AREA = 1e-9;
    /** Least air that is computed, m³/s. */
    public static final double MIN_FLOW = 1e-6;

    private static final double MAX_FLOW = 50;

    private final Solid solid;
    private final Opening opening;
    private final double flow;
    private final AirState air;
    private final boolean fromRoom;
    private final List<Loss> losses = new ArrayList<>();
    private final List<PathAir.PlaceVelocity> velocities = new ArrayList<>();
    private final List<Notice> notices = new ArrayList<>();

    private PathLosses(Solid solid, Opening opening, double flow, AirState air, Purpose purpose) {
        this.solid = solid;
        this.opening = opening;
        this.flow = flow;
        this.air = air;
        this.fromRoom = purpose != Purpose.SUPPLY;
    }

    /**
     * The air through a box.
     *
     * @param solid of the box
     * @param opening the box is set over
     * @param flow through it, m³/s
     * @param air its state
     * @param purpose which way the air runs
     */
    public static PathAir of(Solid solid, Opening opening, double flow, AirState air, Purpose purpose) {
        InvalidValue.within("flow", flow, MIN_FLOW, MAX_FLOW, Unit.LITRE_PER_SECOND);
        return new PathLosses(solid, opening, flow, air, purpose).walk();
    }

    private PathAir walk() {
        List<Pass> passes = inOrder(solid.passes());
        List<Turn> turns = inOrder(solid.turns());
        Pass first = passes.get(0);
        Pass last = passes.get(passes.size() - 1);

        mouthIn();
        portVelocity(firstPort(), firstName());
        portTurn(firstPort(), firstName(), first);
        areaChange(firstName(), firstPort().area(), first.area());
        for (int i = 0; i < passes.size(); i++) {
            pass(passes.get(i));
            if (i < turns.size()) {
                turn(turns.get(i), i == 0 ? null : turns.get(i - 1), passes.get(i));
            }
        }
        areaChange(lastName(), last.area(), lastPort().area());
        portTurn(lastPort(), lastName(), last);
        portVelocity(lastPort(), lastName());
        mouthOut();

        notices.add(Notice.of(NoticeKind.FITTINGS_NOT_COUNTED, Severity.NOTE, ""));
        return new PathAir(flow, losses, velocities, once(notices));
    }

    private void mouthIn() {
        double port = firstPort().area();
        if (hasDuct(fromRoom)) {
            areaChange(firstName(), opening.area(), port);
            return;
        }
        double mouth = mouthArea(fromRoom, port);
        losses.add(Entry.ZETA.loss("entry", firstName(), Entry.SOURCE, flow / mouth, air));
        areaChange(firstName(), mouth, port);
    }

    private void mouthOut() {
        double port = lastPort().area();
        if (hasDuct(!fromRoom)) {
            areaChange(lastName(), port, opening.area());
            return;
        }
        double mouth = mouthArea(!fromRoom, port);
        areaChange(lastName(), port, mouth);
        losses.add(Exit.ZETA.loss("exit", lastName(), Exit.SOURCE, flow / mouth, air));
    }

    /** Whether a duct goes on beyond the end in the room, or beyond the end at the opening. */
    private boolean hasDuct(boolean roomEnd) {
        return opening.kind() == Opening.Kind.IN_DUCT || (!roomEnd && opening.kind() == Opening.Kind.REGISTER);
    }

    private double mouthArea(boolean roomEnd, double port) {
        return roomEnd ? port : Math.min(port, opening.area());
    }

    private void areaChange(String part, double before, double after) {
        if (Math.abs(before - after) > SAME_AREA * after) {
            Zeta zeta = AreaChange.zeta(before, after);
            losses.add(zeta.loss("areaChange", part, AreaChange.SOURCE, flow / Math.min(before, after), air));
        }
    }

    private void portTurn(PortPlace place, String part, Pass pass) {
        if (!place.turns()) {
            return;
        }
        boolean broad = place.port().face().isBroad();
        Section atPort = new Section(place.port().width(), place.port().height());
        Section inPass = broad ? new Section(pass.height(), pass.width()) : new Section(pass.width(), pass.height());
        Loss one = sharpTurn(part, atPort, roughness(pass));
        Loss other = sharpTurn(part, inPass, roughness(pass));
        boolean portDearer = one.pressure() >= other.pressure();
        losses.add(portDearer ? one : other);
        SharpTurn.notice(part, reynolds(portDearer ? atPort : inPass)).ifPresent(notices::add);
    }

    private Loss sharpTurn(String part, Section section, double roughness) {
        Zeta zeta = SharpTurn.zeta(section.aspect(), reynolds(section), roughness / section.hydraulicDiameter());
        return zeta.loss("turn90", part, SharpTurn.SOURCE, flow / section.area(), air);
    }

    private double reynolds(Section section) {
        return air.reynolds(flow / section.area(), section.hydraulicDiameter());
    }

    private void pass(Pass pass) {
        String part = "pass " + (pass.number() + 1);
        double velocity = flow / pass.area();
        velocities.add(new PathAir.PlaceVelocity(part, false, velocity));
        if (solid.box().form() == Box.Form.OFFSET_CHAMBER) {
            return;
        }
        double diameter = pass.hydraulicDiameter();
        Zeta zeta = ChurchillFriction.zeta(pass.length(), diameter, roughness(pass), air.reynolds(velocity, diameter));
        losses.add(zeta.loss("friction", part, ChurchillFriction.SOURCE, velocity, air));
    }

    private void turn(Turn turn, Turn before, Pass pass) {
        String part = "turn " + (turn.number() + 1);
        double width = pass.width();
        double straight = before == null ? BaffleTurn.FIRST : straight(turn, before);
        double velocity = flow / pass.area();
        velocities.add(new PathAir.PlaceVelocity(part, false, flow / turn.area()));
        Zeta zeta = BaffleTurn.zeta(turn.gap() / width, straight / width);
        losses.add(zeta.loss("turn180", part, BaffleTurn.SOURCE, velocity, air));
        notices.addAll(BaffleTurn.notices(part, turn.gap(), width, straight));
        SharpTurn.notice(part, air.reynolds(velocity, pass.hydraulicDiameter())).ifPresent(notices::add);
    }

    /** Length over which the baffles of two turns in a row overlap, m; zero if they do not. */
    private static double straight(Turn one, Turn other) {
        Turn far = one.atFarEnd() ? one : other;
        Turn near = one.atFarEnd() ? other : one;
        return Math.max(0, far.clear().x0() - near.clear().x1());
    }

    private double roughness(Pass pass) {
        return pass.linedPerimeter() > 0 ? solid.box().liner().roughness() : BOARD_ROUGHNESS;
    }

    private void portVelocity(PortPlace place, String part) {
        velocities.add(new PathAir.PlaceVelocity(part, true, flow / place.area()));
    }

    private PortPlace firstPort() {
        return fromRoom ? solid.roomPort() : solid.openingPort();
    }

    private PortPlace lastPort() {
        return fromRoom ? solid.openingPort() : solid.roomPort();
    }

    private String firstName() {
        return fromRoom ? PortPlace.IN_ROOM : PortPlace.AT_OPENING;
    }

    private String lastName() {
        return fromRoom ? PortPlace.AT_OPENING : PortPlace.IN_ROOM;
    }

    private <T> List<T> inOrder(List<T> fromOpening) {
        List<T> list = new ArrayList<>(fromOpening);
        if (fromRoom) {
            Collections.reverse(list);
        }
        return list;
    }

    /** Every turn may be below the range of the Reynolds correction; the one furthest below it speaks for all. */
    private static List<Notice> once(List<Notice> notices) {
        Optional<Notice> lowest =
                notices.stream().filter(PathLosses::aboutReynolds).min(Comparator.comparingDouble(Notice::value));
        return notices.stream()
                .filter(n -> !aboutReynolds(n) || n.equals(lowest.orElse(null)))
                .distinct()
                .toList();
    }

    private static boolean aboutReynolds(Notice notice) {
        return notice.kind() == NoticeKind.REYNOLDS_BELOW_RANGE;
    }
}
