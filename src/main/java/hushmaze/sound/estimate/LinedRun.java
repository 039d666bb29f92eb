package hushmaze.sound.estimate;

import hushmaze.material.Liner;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.solid.Pass;
import hushmaze.sound.TermInput;
import hushmaze.sound.porous.FacedLiner;
import java.util.List;

/**
 * The loss of the lining of one straight run: {@link ReynoldsBledsoe}, up to 500 Hz no more than {@link LinedSlitLimit},
 * above the frequency where a beam forms no more than {@link StraightBeam}, and no more than 40 dB.
 */
final class LinedRun {
    /** Where it is published. */
    static final String SOURCE =
            "Reynolds and Bledsoe regression, ASHRAE Handbook, HVAC Applications (coefficients from memory, checked"
                    + " against a printed table); lining only; up to 500 Hz no more than the mode of a slit lined with a"
                    + " porous layer after Miki; for waves shorter than the width no more than 10 dB (a rule from memory)"
                    + " and the decay of the beam";

    /** Least f/σ the liner's model was fitted to, m³/kg. */
    private static final double MODEL_FROM = 0.01;

    private final Liner liner;
    private final double soundSpeed;
    private final LinedSlitLimit slitLimit;

    LinedRun(Liner liner, EstimateTables tables) {
        this.liner = liner;
        this.soundSpeed = tables.soundSpeed();
        this.slitLimit = new LinedSlitLimit(liner, tables);
    }

    /**
     * Loss of the lining of a pass.
     *
     * @param pass the pass
     * @param run straight part of it, m
     * @param part what the notices call it
     */
    BandLoss loss(Pass pass, double run, String part) {
        BandLoss free = ReynoldsBledsoe.uncapped(pass.linedPerimeter(), pass.area(), pass.meanLiner(), run, part);
        if (pass.linedPerimeter() == 0 || run == 0) {
            return free;
        }
        BandLoss stiff = free.heldTo(slitLimit.most(pass));
        BandLoss capped = ReynoldsBledsoe.capped(heldToBeam(stiff, pass, run, part), part);
        BandLoss loss = liner.facing() == null
                ? capped
                : capped.with(Notice.of(NoticeKind.FACING_NOT_IN_HANDBOOK, Severity.NOTE, part));
        double lowest = BandSet.THIRD_OCTAVE.centreHz(0);
        double from = MODEL_FROM * liner.flowResistivity();
        return lowest >= from
                ? loss
                : loss.with(
                        Notice.of(NoticeKind.LINER_MODEL_BELOW_RANGE, Severity.NOTE, part, lowest, from, Unit.HERTZ));
    }

    /** The numbers behind the loss. */
    List<TermInput> inputs(Pass pass, double run) {
        return List.of(
                new TermInput("linedPerimeter", pass.linedPerimeter(), Unit.MILLIMETRE),
                new TermInput("clearArea", pass.area(), Unit.SQUARE_METRE),
                new TermInput("linerThickness", pass.meanLiner(), Unit.MILLIMETRE),
                new TermInput("run", run, Unit.MILLIMETRE),
                new TermInput("clearLength", pass.length(), Unit.MILLIMETRE),
                new TermInput("flowResistivity", liner.flowResistivity(), Unit.PASCAL_SECOND_PER_SQUARE_METRE));
    }

    private BandLoss heldToBeam(BandLoss loss, Pass pass, double run, String part) {
        Spectrum most = StraightBeam.most(LinedSlits.of(pass), run, FacedLiner.miki(liner), soundSpeed);
        BandLoss held = loss.heldTo(most);
        int worst = 0;
        double excess = 0;
        for (int i = 0; i < most.size(); i++) {
            double over = loss.thirds().value(i) - held.thirds().value(i);
            if (over > excess) {
                excess = over;
                worst = i;
            }
        }
        return excess == 0
                ? held
                : held.with(Notice.of(
                        NoticeKind.BEAM_CAPPED,
                        Severity.NOTE,
                        part,
                        loss.thirds().value(worst),
                        held.thirds().value(worst),
                        Unit.DECIBEL));
    }
}
