package hushmaze.air;

import hushmaze.project.Box;
import hushmaze.project.Fitting;
import hushmaze.project.Opening;
import hushmaze.project.Purpose;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Solid;
import hushmaze.solid.Turn;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * All losses of pressure of a box over its opening, in the order of the air, with the velocities on the way.
 *
 * <p>The box's passes are counted from the port at the opening to the port in the room, and the parts keep their names:
 * "opening port", "pass 1", "turn 1", ..., "room port". For {@link Purpose#SUPPLY} the air runs in that order; for RETURN
 * and EXHAUST it runs from the port in the room to the one at the opening, and so do the lists.
 *
 * <p>What is summed: at each end what {@link PathEnd} says; at each port the turn by 90 degrees if the port is not in the
 * end of its pass, else the change of area between port and pass; friction along the clear length of every pass; every turn
 * around a baffle. A port's turn goes from the port's width to that of the pass in its plane at the port's height, and a
 * change of area along its axis makes up the rest.
 *
 * <p>An offset chamber is simplified: a sudden widening into the chamber's cross-section and a narrowing out of it, a turn of
 * the port's own section at each port that is not in an end, and no friction; that the two ports are out of line is not
 * counted.
 *
 * <p>Not counted at all: how a port's turn and the first turn around a baffle act on each other.
 */
public final class PathLosses {
    /** Roughness of bare board, m: upper end of well planed wood, 0.18 to 0.9 mm, as read in a duct roughness table. */
    public static final double BOARD_ROUGHNESS = 0.0009;

    /** Least air that is computed, m³/s. */
    public static final double MIN_FLOW = 1e-6;

    private static final double MAX_FLOW = 50;

    private final Solid solid;
    private final LossList list;
    private final PathEnd opening;
    private final PathEnd room;
    private final boolean fromRoom;

    private PathLosses(
            Solid solid, Opening opening, List<Fitting> fittings, double flow, AirState air, Purpose purpose) {
        this.solid = solid;
        this.list = new LossList(flow, air);
        this.opening = PathEnd.of(solid.openingPort(), false, opening, fittings);
        this.room = PathEnd.of(solid.roomPort(), true, opening, fittings);
        this.fromRoom = purpose != Purpose.SUPPLY;
    }

    /**
     * The air through a box without fittings.
     *
     * @param solid of the box
     * @param opening the box is set over
     * @param flow through it, m³/s
     * @param air its state
     * @param purpose which way the air runs
     */
    public static PathAir of(Solid solid, Opening opening, double flow, AirState air, Purpose purpose) {
        return of(solid, opening, List.of(), flow, air, purpose);
    }

    /**
     * The air through a box.
     *
     * @param solid of the box
     * @param opening the box is set over
     * @param fittings at its ends
     * @param flow through it, m³/s
     * @param air its state
     * @param purpose which way the air runs
     */
    public static PathAir of(
            Solid solid, Opening opening, List<Fitting> fittings, double flow, AirState air, Purpose purpose) {
        InvalidValue.within("flow", flow, MIN_FLOW, MAX_FLOW, Unit.LITRE_PER_SECOND);
        return new PathLosses(solid, opening, fittings, flow, air, purpose).walk();
    }

    private PathAir walk() {
        List<Pass> passes = inOrder(solid.passes());
        List<Turn> turns = inOrder(solid.turns());
        (fromRoom ? room : opening).enter(list);
        port(fromRoom ? solid.roomPort() : solid.openingPort(), fromRoom ? room : opening, passes.get(0), true);
        for (int i = 0; i < passes.size(); i++) {
            pass(passes.get(i));
            if (i < turns.size()) {
                turn(turns.get(i), i == 0 ? null : turns.get(i - 1), passes.get(i));
            }
        }
        Pass last = passes.get(passes.size() - 1);
        port(fromRoom ? solid.openingPort() : solid.roomPort(), fromRoom ? opening : room, last, false);
        (fromRoom ? opening : room).leave(list);
        return list.toPathAir();
    }

    /** Between a port and its pass: the turn, and the change of area that it leaves over. */
    private void port(PortPlace place, PathEnd end, Pass pass, boolean intoBox) {
        boolean changesWidth = place.turns() && solid.box().form() != Box.Form.OFFSET_CHAMBER;
        double turned = changesWidth ? inPlane(place, pass) * place.port().height() : place.area();
        if (intoBox) {
            portTurn(place, end.part(), pass, true);
            list.areaChange(end.part(), turned, pass.area());
        } else {
            list.areaChange(end.part(), pass.area(), turned);
            portTurn(place, end.part(), pass, false);
        }
    }

    /** Width of a pass in the plane of the turn at a port, m. */
    private static double inPlane(PortPlace place, Pass pass) {
        return place.port().face().isBroad() ? pass.height() : pass.width();
    }

    private void portTurn(PortPlace place, String part, Pass pass, boolean intoBox) {
        if (!place.turns()) {
            return;
        }
        double atPort = place.port().width();
        boolean chamber = solid.box().form() == Box.Form.OFFSET_CHAMBER;
        double inPass = chamber ? atPort : inPlane(place, pass);
        Section before = new Section(intoBox ? atPort : inPass, place.port().height());
        double ratio = intoBox ? inPass / atPort : atPort / inPass;
        double reynolds = list.reynolds(before);
        double rough = roughness(pass) / before.hydraulicDiameter();
        if (Math.abs(ratio - 1) < UnequalTurn.SAME) {
            list.add("turn90", part, SharpTurn.SOURCE, SharpTurn.zeta(before.aspect(), reynolds, rough), before.area());
        } else {
            Zeta zeta = UnequalTurn.zeta(before.aspect(), ratio, reynolds, rough);
            // on the faster of the two velocities
            double faster = Math.min(1, ratio);
            list.add("turn90", part, UnequalTurn.SOURCE, zeta.times(faster * faster), before.area() * faster);
            UnequalTurn.notice(part, ratio).ifPresent(list::note);
        }
        SharpTurn.notice(part, reynolds).ifPresent(list::note);
    }

    private void pass(Pass pass) {
        String part = "pass " + (pass.number() + 1);
        list.velocity(part, PathAir.Place.INSIDE, pass.area());
        if (solid.box().form() == Box.Form.OFFSET_CHAMBER) {
            return;
        }
        double diameter = pass.hydraulicDiameter();
        double reynolds = list.air().reynolds(list.flow() / pass.area(), diameter);
        Zeta zeta = ChurchillFriction.zeta(pass.length(), diameter, roughness(pass), reynolds);
        list.add("friction", part, ChurchillFriction.SOURCE, zeta, pass.area());
    }

    private void turn(Turn turn, Turn before, Pass pass) {
        String part = "turn " + (turn.number() + 1);
        double width = pass.width();
        double straight = before == null ? BaffleTurn.FIRST : straight(turn, before);
        list.velocity(part, PathAir.Place.INSIDE, turn.area());
        Zeta zeta = BaffleTurn.zeta(turn.gap() / width, straight / width);
        list.add("turn180", part, BaffleTurn.SOURCE, zeta, pass.area());
        BaffleTurn.notices(part, turn.gap(), width, straight).forEach(list::note);
        double reynolds = list.air().reynolds(list.flow() / pass.area(), pass.hydraulicDiameter());
        SharpTurn.notice(part, reynolds).ifPresent(list::note);
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

    private <T> List<T> inOrder(List<T> fromOpening) {
        List<T> items = new ArrayList<>(fromOpening);
        if (fromRoom) {
            Collections.reverse(items);
        }
        return items;
    }
}
