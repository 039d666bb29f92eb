package hushmaze.sound.flow;

import hushmaze.project.Box;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.solid.Axis;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Solid;
import hushmaze.solid.Turn;
import hushmaze.sound.estimate.PathEstimate.Leg;
import hushmaze.sound.flow.ElbowNoise.Corner;
import hushmaze.sound.flow.FlowNoise.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The sources of flow noise in a box, each in its place.
 *
 * <p>Counted: every pass as a straight duct; every U-turn as two bends with sharp edges at the narrower of gap and pass; a
 * port that turns as one such bend at the narrower of port and pass; every listed loss of pressure but friction, flexible
 * ducts and filters as a fitting, for a turn the louder of the two formulas; the mouth in the room as a grille. The mouth's own loss of pressure
 * is not counted twice.
 *
 * <p>What is made in a turn passes along the passes after it; what is made along a pass is taken to be made at its end. It
 * makes no difference which way the air runs.
 */
public final class BoxFlow {
    private static final String TURN = "turn ";
    private static final String PASS = "pass ";
    /** The mouth itself, which is in the grille's formula in the room. */
    private static final Set<String> MOUTH = Set.of("exit", "entry");
    /** What may stand in the mouth in the room, and is in the grille's formula there. */
    private static final Set<String> IN_MOUTH = Set.of("grille", "louvre", "knownLoss");
    /** Losses that are spread out and make no noise of their own worth counting. */
    private static final Set<String> QUIET = Set.of("friction", "flexibleDuct", "filter");

    private final Solid solid;
    private final double flow;
    private final List<Spectrum> remaining;
    private final List<FlowLoss> losses;
    private final List<Placed> placed = new ArrayList<>();

    private BoxFlow(Solid solid, double flow, List<Spectrum> passLosses, List<FlowLoss> losses) {
        InvalidValue.within("flow", flow, 0, 50, Unit.LITRE_PER_SECOND);
        if (passLosses.size() != solid.passes().size()) {
            throw new IllegalArgumentException(
                    passLosses.size() + " losses for " + solid.passes().size() + " passes");
        }
        this.solid = solid;
        this.flow = flow;
        this.remaining = FlowNoise.remaining(passLosses);
        this.losses = List.copyOf(losses);
    }

    /**
     * The flow noise of a box at its room port.
     *
     * @param solid of the box
     * @param flow of air through it, m³/s
     * @param passLosses sound loss from the entrance of each pass to that of the next, or to the room, first pass at the
     *     opening, third octaves, dB; {@link #passLosses} makes them of an estimate
     * @param losses of pressure along the path, by part
     * @param grille loss coefficient of a grille in the room port; {@link GrilleNoise#OPEN_MOUTH} if there is none
     */
    public static FlowNoise of(
            Solid solid, double flow, List<Spectrum> passLosses, List<FlowLoss> losses, double grille) {
        BoxFlow box = new BoxFlow(solid, flow, passLosses, losses);
        box.turns();
        box.checkTurns();
        box.straights();
        box.fittings();
        Spectrum none = box.remaining.get(solid.passes().size());
        double port = solid.roomPort().area();
        box.placed.add(new Placed(new GrilleNoise(PortPlace.IN_ROOM, flow / port, port, grille), none));
        return FlowNoise.of(box.placed);
    }

    /**
     * Losses from pass to pass out of an estimate's legs: a pass's lining and the turn after it. The turn at the room port
     * is left out.
     */
    public static List<Spectrum> passLosses(List<Leg> legs) {
        List<Spectrum> losses = new ArrayList<>();
        for (int i = 0; i < legs.size(); i++) {
            Spectrum along = legs.get(i).along();
            losses.add(i + 1 < legs.size() ? along.plus(legs.get(i + 1).entry()) : along);
        }
        return losses;
    }

    /**
     * Loss coefficient of what stands in the mouth in the room, on the velocity in the port; the open mouth's if that is more.
     *
     * @param flow m³/s
     * @param losses of pressure along the path, by part
     */
    public static double mouth(Solid solid, double flow, List<FlowLoss> losses) {
        double inPort = flow / solid.roomPort().area();
        double zeta = losses.stream()
                .filter(l -> l.part().equals(PortPlace.IN_ROOM) && IN_MOUTH.contains(l.key()))
                .mapToDouble(l -> l.zeta() * Math.pow(l.velocity() / inPort, 2))
                .sum();
        return Math.max(GrilleNoise.OPEN_MOUTH, Math.min(GrilleNoise.MOST_ZETA, zeta));
    }

    private void turns() {
        List<Pass> passes = solid.passes();
        portTurn(solid.openingPort(), PortPlace.AT_OPENING, passes.get(0));
        for (Turn turn : solid.turns()) {
            Pass before = passes.get(turn.number());
            double narrow = Math.min(turn.gap(), Math.min(before.width(), before.height()));
            double area = Math.min(turn.area(), before.area());
            addTurn(TURN + (turn.number() + 1), area, narrow, 2, turn.number() + 1);
        }
        portTurn(solid.roomPort(), PortPlace.IN_ROOM, passes.get(passes.size() - 1));
    }

    private void portTurn(PortPlace place, String part, Pass pass) {
        if (!place.turns()) {
            return;
        }
        double across = place.role().normal() == Axis.Y ? pass.width() : pass.height();
        double narrow =
                Math.min(across, Math.min(place.port().width(), place.port().height()));
        addTurn(part, Math.min(place.area(), pass.area()), narrow, 1, start(part));
    }

    private void addTurn(String part, double area, double narrow, int bends, int from) {
        FlowSource elbow = new ElbowNoise(part, flow / area, area, narrow, Corner.SHARP, bends);
        for (FlowLoss loss : losses) {
            if (isTurn(loss) && loss.part().equals(part) && loss.velocity() > 0) {
                elbow = new LouderOf(elbow, fitting(loss));
            }
        }
        placed.add(new Placed(elbow, remaining.get(from)));
    }

    /** Every loss of a turn must have found its turn: none may be dropped unseen. */
    private void checkTurns() {
        for (FlowLoss loss : losses) {
            if (isTurn(loss) && placed.stream().noneMatch(p -> p.source().part().equals(loss.part()))) {
                throw new IllegalArgumentException("no turn in this box is called " + loss.part());
            }
        }
    }

    private void straights() {
        if (solid.box().form() == Box.Form.OFFSET_CHAMBER) {
            return;
        }
        for (Pass pass : solid.passes()) {
            FlowSource straight = new StraightNoise(PASS + (pass.number() + 1), flow / pass.area(), pass.area());
            placed.add(new Placed(straight, remaining.get(pass.number() + 1)));
        }
    }

    private void fittings() {
        for (FlowLoss loss : losses) {
            boolean roomMouth = loss.part().equals(PortPlace.IN_ROOM)
                    && (MOUTH.contains(loss.key()) || IN_MOUTH.contains(loss.key()));
            if (!isTurn(loss) && !roomMouth && !QUIET.contains(loss.key()) && loss.velocity() > 0) {
                placed.add(new Placed(fitting(loss), remaining.get(start(loss.part()))));
            }
        }
    }

    private static boolean isTurn(FlowLoss loss) {
        return loss.key().startsWith("turn");
    }

    private FittingNoise fitting(FlowLoss loss) {
        return new FittingNoise(loss.part(), loss.velocity(), flow / loss.velocity(), loss.zeta());
    }

    /** The pass whose entrance is next on the way to the room. */
    private int start(String part) {
        if (part.equals(PortPlace.AT_OPENING)) {
            return 0;
        }
        if (part.equals(PortPlace.IN_ROOM)) {
            return solid.passes().size();
        }
        String digits = part.replaceAll("\\D", "");
        int number = digits.isEmpty() ? 0 : Integer.parseInt(digits);
        if ((!part.equals(TURN + number) && !part.equals(PASS + number)) || number < 1 || number >= remaining.size()) {
            throw new IllegalArgumentException("no such part in this box: " + part);
        }
        return number;
    }
}
