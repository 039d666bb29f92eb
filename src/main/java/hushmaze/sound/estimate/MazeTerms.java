package hushmaze.sound.estimate;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.solid.Axis;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.Turn;
import hushmaze.sound.TermInput;
import java.util.List;

/** The terms of a maze: a run of lining per pass, a turn per U-turn and turning port, a step per port. */
final class MazeTerms {
    private static final String STEP_SOURCE = "plane wave at a change of area, below the first cut-on only";
    private static final Spectrum NOTHING = Spectrum.flat(BandSet.THIRD_OCTAVE, 0);

    private final TermList list;
    private final Solid solid;
    private final List<Pass> passes;
    private final LinedRun lining;
    private final TurnSeries turns;

    private MazeTerms(TermList list, Solid solid) {
        this.list = list;
        this.solid = solid;
        this.passes = solid.passes();
        this.lining =
                solid.box().liner() == null ? null : new LinedRun(solid.box().liner(), list.tables());
        this.turns = new TurnSeries(list);
    }

    static void add(TermList list, Solid solid) {
        new MazeTerms(list, solid).addAll();
    }

    private void addAll() {
        if (solid.box().liner() == null || solid.box().linedFaces().most() == 0) {
            list.add(Notice.of(NoticeKind.NO_LINER, Severity.WARNING, ""));
        }
        sayIfOneSeesThrough();
        Pass last = passes.get(passes.size() - 1);
        addStep(PortPlace.AT_OPENING, solid.openingPort(), passes.get(0));
        Spectrum entry = addPortTurn(PortPlace.AT_OPENING, solid.openingPort(), passes.get(0));
        for (Pass pass : passes) {
            list.add(new PathEstimate.Leg(pass, entry, addLining(pass)));
            turns.straight(name(pass), linedRun(pass));
            if (pass.number() < last.number()) {
                entry = addTurn(solid.turns().get(pass.number()), pass, passes.get(pass.number() + 1));
            }
        }
        addPortTurn(PortPlace.IN_ROOM, solid.roomPort(), last);
        addStep(PortPlace.IN_ROOM, solid.roomPort(), last);
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

    private static String name(Pass pass) {
        return "pass " + (pass.number() + 1);
    }

    private double linedRun(Pass pass) {
        return pass.linedPerimeter() > 0 ? run(pass, solid) : 0;
    }

    /** A straight lined pass lets a beam through that its figures know of only in part. */
    private void sayIfOneSeesThrough() {
        boolean turned = solid.openingPort().turns() || solid.roomPort().turns();
        Pass pass = passes.get(0);
        if (passes.size() > 1 || turned || pass.linedPerimeter() == 0) {
            return;
        }
        double highest = BandSet.THIRD_OCTAVE.centreHz(BandSet.THIRD_OCTAVE.size() - 1);
        double view = StraightBeam.doubtfulFrom(LinedSlits.of(pass).narrowest(), list.soundSpeed());
        if (view < highest) {
            list.add(Notice.of(NoticeKind.LINE_OF_SIGHT, Severity.WARNING, name(pass), highest, view, Unit.HERTZ));
        }
    }

    private Spectrum addLining(Pass pass) {
        double run = linedRun(pass);
        if (run == 0) {
            return NOTHING;
        }
        BandLoss loss = lining.loss(pass, run, name(pass));
        list.add("lining", name(pass), LinedRun.SOURCE, loss, lining.inputs(pass, run));
        return loss.thirds();
    }

    private Spectrum addTurn(Turn turn, Pass before, Pass after) {
        double sides = Math.min(
                Math.max(before.lowLiner(), before.highLiner()), Math.max(after.lowLiner(), after.highLiner()));
        return turns.turn(new TurnSeries.Place(
                "turn " + (turn.number() + 1),
                before.width(),
                Math.min(turn.endLiner(), sides),
                Math.min(run(before, solid), run(after, solid))));
    }

    private Spectrum addPortTurn(String part, PortPlace port, Pass pass) {
        if (!port.turns()) {
            return NOTHING;
        }
        boolean side = port.role().normal() == Axis.Y;
        double width = side ? pass.width() : pass.height();
        double opposite = side ? oppositeLiner(port, pass) : pass.broadLiner();
        return turns.turn(
                new TurnSeries.Place(part, width, Math.min(solid.box().endLiner(), opposite), run(pass, solid)));
    }

    private static double oppositeLiner(PortPlace port, Pass pass) {
        return port.role() == Role.FIRST_SIDE ? pass.highLiner() : pass.lowLiner();
    }

    private void addStep(String part, PortPlace port, Pass pass) {
        double widest = Math.max(
                Math.max(pass.width(), pass.height()),
                Math.max(port.port().width(), port.port().height()));
        double cutOn = AreaStep.cutOn(list.soundSpeed(), widest);
        List<TermInput> inputs = List.of(
                new TermInput("portArea", port.area(), Unit.SQUARE_METRE),
                new TermInput("passArea", pass.area(), Unit.SQUARE_METRE),
                new TermInput("cutOn", cutOn, Unit.HERTZ));
        list.add("areaStep", part, STEP_SOURCE, AreaStep.loss(port.area(), pass.area(), cutOn, part), inputs);
    }
}
