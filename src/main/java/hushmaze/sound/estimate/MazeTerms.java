package hushmaze.sound.estimate;

import hushmaze.project.LinedFaces;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.Turn;
import java.util.List;

/** The terms of a maze: a run of lining per pass, a turn per U-turn and turning port, a step per port. */
final class MazeTerms {
    private static final String LINING_SOURCE =
            "Reynolds and Bledsoe regression, ASHRAE Handbook, HVAC Applications (coefficients from memory, checked"
                    + " against a printed table); lining only; up to 500 Hz no more than the mode of a slit lined with a"
                    + " porous layer after Miki";
    private static final String TURN_SOURCE =
            "square turn by frequency times width, ASHRAE Handbook, HVAC Applications (from memory)";
    private static final String STEP_SOURCE = "plane wave at a change of area, below the first cut-on only";
    private static final Spectrum NOTHING = Spectrum.flat(BandSet.THIRD_OCTAVE, 0);

    private MazeTerms() {}

    static void add(TermList list, Solid solid) {
        if (solid.box().liner() == null || solid.box().linedFaces().equals(LinedFaces.NONE)) {
            list.add(Notice.of(NoticeKind.NO_LINER, Severity.WARNING, ""));
        }
        List<Pass> passes = solid.passes();
        Pass last = passes.get(passes.size() - 1);
        addStep(list, PortPlace.AT_OPENING, solid.openingPort(), passes.get(0));
        Spectrum entry = addPortTurn(list, PortPlace.AT_OPENING, solid.openingPort(), passes.get(0), solid);
        LinedSlitLimit limit = solid.box().liner() == null
                ? null
                : new LinedSlitLimit(solid.box().liner(), list.soundSpeed());
        for (Pass pass : passes) {
            Spectrum along = addLining(list, pass, solid, limit);
            list.add(new PathEstimate.Leg(pass, entry, along));
            if (pass.number() < last.number()) {
                entry = addTurn(list, solid.turns().get(pass.number()), pass, passes.get(pass.number() + 1));
            }
        }
        addPortTurn(list, PortPlace.IN_ROOM, solid.roomPort(), last, solid);
        addStep(list, PortPlace.IN_ROOM, solid.roomPort(), last);
    }

    /** Length of a pass between its turns, m; zero when turns and ports leave nothing. */
    static double run(Pass pass, Solid solid) {
        double low = pass.clear().x0();
        double high = pass.clear().x1();
        for (Turn turn : solid.turns()) {
            if (turn.number() == pass.number() || turn.number() == pass.number() - 1) {
                if (turn.atFarEnd()) {
                    high = Math.min(high, turn.clear().x0());
                } else {
                    low = Math.max(low, turn.clear().x1());
                }
            }
        }
        // The first pass always runs towards high x.
        if (pass.number() == 0 && solid.openingPort().turns()) {
            low = Math.max(low, solid.openingPort().hole().x1());
        }
        if (pass.number() == solid.passes().size() - 1 && solid.roomPort().turns()) {
            if (pass.forward()) {
                high = Math.min(high, solid.roomPort().hole().x0());
            } else {
                low = Math.max(low, solid.roomPort().hole().x1());
            }
        }
        return Math.max(0, high - low);
    }

    private static Spectrum addLining(TermList list, Pass pass, Solid solid, LinedSlitLimit limit) {
        double thickness = Math.max(pass.broadLiner(), Math.max(pass.lowLiner(), pass.highLiner()));
        double run = run(pass, solid);
        if (thickness == 0 || run == 0) {
            return NOTHING;
        }
        String part = "pass " + (pass.number() + 1);
        BandLoss regression = ReynoldsBledsoe.loss(pass.linedPerimeter(), pass.area(), thickness, run, part);
        BandLoss loss = limit.held(regression, pass);
        list.add("lining", part, LINING_SOURCE, loss);
        return loss.thirds();
    }

    private static Spectrum addTurn(TermList list, Turn turn, Pass before, Pass after) {
        double width = before.width();
        boolean lined = AshraeSquareElbow.lines(turn.endLiner(), width)
                && AshraeSquareElbow.lines(Math.max(before.lowLiner(), before.highLiner()), width)
                && AshraeSquareElbow.lines(Math.max(after.lowLiner(), after.highLiner()), width);
        BandLoss loss = AshraeSquareElbow.loss(width, lined);
        list.add("turn", "turn " + (turn.number() + 1), TURN_SOURCE, loss);
        return loss.thirds();
    }

    private static Spectrum addPortTurn(TermList list, String part, PortPlace port, Pass pass, Solid solid) {
        if (!port.turns()) {
            return NOTHING;
        }
        boolean side = port.role().normal() == Axis.Y;
        double width = side ? pass.width() : pass.height();
        double opposite = side ? oppositeLiner(port, pass) : pass.broadLiner();
        boolean lined =
                AshraeSquareElbow.lines(solid.box().endLiner(), width) && AshraeSquareElbow.lines(opposite, width);
        BandLoss loss = AshraeSquareElbow.loss(width, lined);
        list.add("turn", part, TURN_SOURCE, loss);
        return loss.thirds();
    }

    private static double oppositeLiner(PortPlace port, Pass pass) {
        return port.role() == Role.FIRST_SIDE ? pass.highLiner() : pass.lowLiner();
    }

    private static void addStep(TermList list, String part, PortPlace port, Pass pass) {
        Cuboid hole = port.hole();
        double widest = Math.max(pass.width(), pass.height());
        for (Axis axis : Axis.values()) {
            if (axis != port.role().normal()) {
                widest = Math.max(widest, hole.size(axis));
            }
        }
        double cutOn = AreaStep.cutOn(list.soundSpeed(), widest);
        double loss = AreaStep.loss(port.area(), pass.area());
        list.add("areaStep", part, STEP_SOURCE, f -> f < cutOn ? loss : 0);
    }
}
