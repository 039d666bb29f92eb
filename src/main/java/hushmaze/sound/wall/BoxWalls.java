package hushmaze.sound.wall;

import hushmaze.project.Opening;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.sound.estimate.PathEstimate.Leg;
import java.util.List;

/**
 * Insertion loss of the route through the boards and joints of a box into the room.
 *
 * <p>Formula: IL = 10 lg(1 + 1/X), X = Σ over passes (q τ Ai + q Li) Fi / So. Fi is the mean of the sound along pass i over
 * that at the opening: what the path has taken before the pass, times (1 - e^-x)/x with x the lining's loss in the pass in
 * nepers. X/(1 + X) instead of X keeps the power let through below the power that comes in; for IL above 10 dB the two agree
 * within 0.5 dB.
 *
 * <p>Symbols: Ai outer area of the box beside pass i in m²; τ transmission coefficient of the wall ({@link
 * PanelTransmission}); Li leak area of the joints beside it in m² ({@link SlitLeak}), the whole shared out by area; So area
 * of the bare opening in m²; q intensity on the wall over intensity in the opening.
 *
 * <p>Source: the balance of duct break-out, Wout = Win τ S/A (textbook form, from memory), with the fall along the path
 * averaged. The edges are our own judgement: pessimistic, q = 1, joints open 0.1 mm all along; likely, q = 1/4 (diffuse
 * field of the same pressure) and a tenth of that gap; optimistic, q = 1/8 and tight joints. With two or more layers, whose
 * joints overlap, gaps count a third.
 *
 * <p>Range: boxes standing in the quiet room. The back does not count when the port at the opening is in it: it is then against the
 * building. All other faces are taken as open to the room; nothing is taken off for liner between air and board.
 *
 * <p>Accuracy: 5 dB; workmanship decides.
 *
 * <p>Differs from the source: see formula.
 */
public final class BoxWalls {
    /** The edges of the range. */
    public enum Edge {
        LOW(1, 1e-4),
        LIKELY(0.25, 1e-5),
        HIGH(0.125, 0);

        private final double incidence;
        private final double gap;

        Edge(double incidence, double gap) {
            this.incidence = incidence;
            this.gap = gap;
        }

        /** Width of the gap all along the joints of a single-layer box, m. */
        public double gap() {
            return gap;
        }
    }

    private static final double OVERLAPPED_JOINTS = 1.0 / 3;
    private static final double NEPER_PER_DECIBEL = Math.log(10) / 10;
    private static final double THIN = 1e-6;

    private final double[] exposed;
    private final double[] transmission;
    private final double jointLength;
    private final double jointShare;
    private final double openingArea;

    private BoxWalls(Solid solid, double openingArea, double soundSpeed) {
        this.exposed = exposedAreas(solid);
        PanelTransmission panel = PanelTransmission.of(solid.box().shell(), soundSpeed);
        this.transmission = new double[BandSet.THIRD_OCTAVE.size()];
        for (int i = 0; i < transmission.length; i++) {
            transmission[i] = Energy.ratio(-panel.transmissionLoss(BandSet.THIRD_OCTAVE.centreHz(i)));
        }
        Cuboid outer = solid.outer();
        this.jointLength = 4 * (outer.size(Axis.X) + outer.size(Axis.Y) + outer.size(Axis.Z));
        this.jointShare = solid.box().shell().size() > 1 ? OVERLAPPED_JOINTS : 1;
        this.openingArea = openingArea;
    }

    /** The walls of a box over an opening; speed of sound in m/s. */
    public static BoxWalls of(Solid solid, Opening opening, double soundSpeed) {
        return new BoxWalls(solid, opening.area(), soundSpeed);
    }

    /** Outer area of the box beside a pass that can radiate into the room, m². */
    public double exposedArea(int pass) {
        return exposed[pass];
    }

    /**
     * Insertion loss of the route, third octaves, dB.
     *
     * @param legs what the path takes, pass by pass
     * @param edge of the range
     */
    public Spectrum loss(List<Leg> legs, Edge edge) {
        double allExposed = 0;
        for (double area : exposed) {
            allExposed += area;
        }
        double leak = new SlitLeak(edge.gap * jointShare, jointLength).area() / allExposed;
        double[] losses = new double[transmission.length];
        for (int band = 0; band < losses.length; band++) {
            double x = (transmission[band] + leak) * edge.incidence * reached(legs, band) / openingArea;
            losses[band] = Energy.db(1 + 1 / x);
        }
        return new Spectrum(BandSet.THIRD_OCTAVE, losses);
    }

    /** Outer area weighted with how much of the sound reaches it, m². */
    private double reached(List<Leg> legs, int band) {
        double taken = 0;
        double sum = 0;
        for (Leg leg : legs) {
            taken += leg.entry().value(band);
            double along = leg.along().value(band);
            double nepers = along * NEPER_PER_DECIBEL;
            double mean = nepers < THIN ? 1 : -Math.expm1(-nepers) / nepers;
            sum += exposed[leg.pass().number()] * mean * Energy.ratio(-taken);
            taken += along;
        }
        return sum;
    }

    private static double[] exposedAreas(Solid solid) {
        List<Pass> passes = solid.passes();
        Cuboid outer = solid.outer();
        double length = outer.size(Axis.X);
        double height = outer.size(Axis.Z);
        int broadFaces = backIsCovered(solid) ? 1 : 2;
        double[] areas = new double[passes.size()];
        double low = outer.y0();
        for (int i = 0; i < areas.length; i++) {
            boolean last = i == areas.length - 1;
            // The strip of a pass reaches to the middle of the baffle.
            double high = last
                    ? outer.y1()
                    : (passes.get(i).clear().y1() + passes.get(i + 1).clear().y0()) / 2;
            areas[i] = (high - low) * (broadFaces * length + 2 * height);
            low = high;
        }
        areas[0] += length * height;
        areas[areas.length - 1] += length * height;
        areas[0] -= holeInCountedFace(solid, solid.openingPort());
        areas[areas.length - 1] -= holeInCountedFace(solid, solid.roomPort());
        return areas;
    }

    private static boolean backIsCovered(Solid solid) {
        return solid.openingPort().role() == Role.BACK;
    }

    private static double holeInCountedFace(Solid solid, PortPlace port) {
        return port.role() == Role.BACK && backIsCovered(solid) ? 0 : port.area();
    }
}
