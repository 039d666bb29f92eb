package hushmaze.sound.quick;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.solid.Axis;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Solid;
import hushmaze.sound.porous.LinerModel;
import java.util.ArrayList;
import java.util.List;

/**
 * Transmission loss of a box's folded, lined path as a chain of lined passes, turns and ports that carry a few modes each.
 *
 * <p>Formula: in a pass the pressure is a sum of the slit's modes, u(y) exp(-jκx). Ports and turns scatter these modes by
 * matrices; through a length L a mode gains exp(-jκL). From the outlet backwards R' = S11 + S12 R (1 - S22 R)⁻¹ S21, then the
 * amplitudes forwards; the transmission loss is -10 lg of the power that leaves over the power that comes in.
 *
 * <p>Symbols: κ axial wavenumbers of the bulk-reacting lined slit ({@link hushmaze.sound.porous.SlitRoots}), 1/m, time factor
 * exp(+jωt); S scattering of a turn ({@link TurnMouth}, {@link TurnTable}) or port ({@link PortField}), found by mode matching with
 * all modes that travel in the section and four to six more; carried on are those that travel in the air and up to five
 * more, as long as they are not far behind the first.
 *
 * <p>A facing over the liner ({@link hushmaze.sound.porous.FacedLiner}) is a step of the pressure at its face, on sides, broad faces and ends;
 * where the liner is cut, in the hole of a port, it has none.
 *
 * <p>Source: textbook mode matching, our own use of it; liner after its model. Checked against published and computed tables
 * of lined slits, mitre bends, double bends and expansion chambers, and box by box against the wave solution of the flat
 * section.
 *
 * <p>Range: 50 Hz to 10 kHz. Flat as the flat section of the wave solution: pressure does not change along the clear
 * height; a port lower than the pass counts by its own height. Lined broad faces: the first cross wavenumber of the slit
 * between them is taken from the air's, k² - kz², as an approximation. A port through a broad face is matched in the plane
 * along the pass and across the clear height. A loss is held at {@value #MOST_LOSS} dB. Turns or ports that overlap along a pass
 * are joined by a negative length, which is rough above about 250 Hz.
 *
 * <p>Accuracy of third octaves, against the wave solution of the flat section on 192 random boxes of 1 to 5 passes whose turns
 * and ports do not overlap, losses up to 150 dB: median within 0.1 dB up to 5 kHz; nine in ten within 0.3 dB up to 1.25 kHz and
 * 0.6 dB up to 5 kHz; worst 2 dB. Where turns overlap (8 boxes) the worst is 2 dB up to 315 Hz and 13 dB above. A port
 * through a broad face, against a solution in three directions of two short boxes: within 0.2 dB up to 200 Hz, up to 4 dB too
 * little from 316 to 800 Hz.
 *
 * <p>Reversing the path changes nothing below the first cut-on of the ports' ducts; above, a plane wave that comes in one way
 * and all modes that leave the other way are different things.
 */
public final class QuickWave {
    /** No more is claimed for a path than this, dB. */
    public static final double MOST_LOSS = 250;

    /** Overlaps below this are rounding, m. */
    private static final double OVERLAP = 1e-6;

    /**
     * Mean square behind a port in the long side of the first pass over that of the wave that comes in through it, where the face
     * across is lined, and where it is bare. Fitted, with the share of {@link Mouth}, to solutions in three directions of
     * sixty random boxes, 125 Hz to 1.6 kHz; of sixty others nine in ten are within 4 dB, most of the rest too loud (9 dB at worst).
     */
    private static final double IN_MOUTH = 0.5;

    private static final double IN_BARE_MOUTH = 0.8;

    private static final double LEAST_ENERGY = Energy.ratio(-MOST_LOSS);

    private QuickWave() {}

    /**
     * The path of a box on its own; what is computed for it is not kept.
     *
     * @param solid of the box
     * @param liner of all its lined faces
     * @param soundSpeed m/s
     */
    public static QuickResult of(Solid solid, LinerModel liner, double soundSpeed) {
        return of(solid, new QuickTables(liner, soundSpeed));
    }

    /**
     * The path of a box, one of many that share liner and speed of sound.
     *
     * @param solid of the box
     * @param tables of its liner and air
     */
    public static QuickResult of(Solid solid, QuickTables tables) {
        if (!tables.hasLiner() && !solid.liners().isEmpty()) {
            throw new InvalidValue("liner", "nothing", "given for a box that is lined", "");
        }
        PathPlan plan = PathPlan.of(solid);
        Chain chain = new Chain(plan, tables);
        QuickGrid grid = tables.grid();
        BandSums sums = new BandSums(grid.perBand(), plan.sections().size(), Mouth.of(solid));
        double[] loss = new double[grid.size()];
        boolean held = false;
        for (int f = 0; f < loss.length; f++) {
            double energy = chain.transmitted(f);
            held |= energy < LEAST_ENERGY;
            energy = Math.min(1, Math.max(energy, LEAST_ENERGY));
            // not a minus before the zero of a path that lets everything through
            loss[f] = 0 - Energy.db(energy);
            sums.add(grid.band(f), energy, chain);
        }
        return new QuickResult(grid.all(), loss, sums.thirds(), sums.levels(), notices(solid, plan, chain, held));
    }

    /**
     * What stands behind the opening's port.
     *
     * @param share of the first pass's air; 0 where the port is in its end
     * @param square mean square there over that of the wave that comes in
     */
    private record Mouth(double share, double square) {
        static Mouth of(Solid solid) {
            PortPlace port = solid.openingPort();
            if (!port.turns()) {
                return new Mouth(0, 0);
            }
            Pass pass = solid.passes().get(0);
            boolean broad = port.role().normal() == Axis.Z;
            double along = port.hole().size(Axis.X) / pass.length();
            double across = broad
                    ? port.hole().size(Axis.Y) / pass.width()
                    : port.hole().size(Axis.Z) / pass.height();
            boolean lined = (broad ? pass.broadLiner() : pass.highLiner()) > 0;
            return new Mouth(Math.min(1, along) * Math.min(1, across), lined ? IN_MOUTH : IN_BARE_MOUTH);
        }

        /** Mean of the first pass, of which the modes know the part beyond the mouth only. */
        double mean(double beyond) {
            return (1 - share) * beyond + share * Math.max(beyond, square);
        }
    }

    /** Energies summed up per band. */
    private static final class BandSums {
        private final double[] through = new double[BandSet.THIRD_OCTAVE.size()];
        private final double[][] inPass;

        private final Mouth mouth;
        private final int perBand;

        BandSums(int perBand, int passes, Mouth mouth) {
            this.perBand = perBand;
            this.mouth = mouth;
            inPass = new double[passes][through.length];
        }

        void add(int band, double energy, Chain chain) {
            through[band] += energy / perBand;
            for (int pass = 0; pass < inPass.length; pass++) {
                inPass[pass][band] += Math.max(LEAST_ENERGY, chain.inPass(pass)) / perBand;
            }
        }

        Spectrum thirds() {
            return Spectrum.of(BandSet.THIRD_OCTAVE, band -> 0 - Energy.db(through[band]));
        }

        List<Spectrum> levels() {
            List<Spectrum> levels = new ArrayList<>();
            for (int i = 0; i < inPass.length; i++) {
                double[] pass = inPass[i];
                boolean first = i == 0;
                levels.add(Spectrum.of(
                        BandSet.THIRD_OCTAVE, band -> Energy.db(first ? mouth.mean(pass[band]) : pass[band])));
            }
            return levels;
        }
    }

    private static List<Notice> notices(Solid solid, PathPlan plan, Chain chain, boolean held) {
        List<Notice> notices = new ArrayList<>();
        if (held) {
            notices.add(
                    Notice.of(NoticeKind.PATH_LOSS_HELD, Severity.NOTE, "path", MOST_LOSS, MOST_LOSS, Unit.DECIBEL));
        }
        for (int i = 0; i < plan.overlaps().length; i++) {
            if (plan.overlaps()[i] > OVERLAP) {
                notices.add(Notice.of(
                        NoticeKind.TURNS_OVERLAP,
                        Severity.WARNING,
                        "pass " + (i + 1),
                        plan.overlaps()[i],
                        0,
                        Unit.MILLIMETRE));
            }
        }
        if (plan.inlet().kind() == PortShape.Kind.BROAD) {
            notices.add(Notice.of(NoticeKind.QUICK_BROAD_PORT, Severity.NOTE, PortPlace.AT_OPENING));
        }
        if (plan.outlet().kind() == PortShape.Kind.BROAD) {
            notices.add(Notice.of(NoticeKind.QUICK_BROAD_PORT, Severity.NOTE, PortPlace.IN_ROOM));
        }
        Pass pass = solid.passes().get(0);
        if (pass.broadLiner() > 0) {
            notices.add(Notice.of(
                    NoticeKind.QUICK_BROAD_LINING,
                    Severity.NOTE,
                    "",
                    pass.broadLiner(),
                    pass.height(),
                    Unit.MILLIMETRE));
        }
        if (chain.uncertain()) {
            notices.add(Notice.of(NoticeKind.MODES_UNCERTAIN, Severity.NOTE, "the pass"));
        }
        return notices;
    }
}
