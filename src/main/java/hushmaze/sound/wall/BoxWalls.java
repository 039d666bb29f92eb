package hushmaze.sound.wall;

import hushmaze.material.Board;
import hushmaze.project.JointGap;
import hushmaze.project.Opening;
import hushmaze.project.SlitMouth;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Axis;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.sound.estimate.PathEstimate.Leg;
import hushmaze.sound.wall.WallRoute.Kind;
import hushmaze.sound.wall.WallRoute.Part;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Insertion loss of the route through the boards and joints of a box into the room.
 *
 * <p>Formula: IL = 10 lg(1 + 1/X), X = Σ over passes q (τ Ai + σ w Li + σ' w' Ci) Fi / So. X/(1 + X) instead of X keeps the
 * power let through below the power that comes in; for IL above 10 dB the two agree within 0.5 dB.
 *
 * <p>Symbols: Ai outer area of the box beside pass i in m²; τ transmission coefficient of the wall ({@link
 * PanelTransmission}); Li and Ci lengths in m of the glued joints and of the cover's joint beside it, w and w' their gaps in m
 * and σ, σ' their transmission coefficients ({@link SlitLeak}); So area of the bare opening in m²; Fi mean-square pressure in
 * pass i over that of the wave that comes into the opening; q intensity on the wall over that of a wave of this pressure.
 *
 * <p>Source: the balance of duct break-out, Wout = Win τ S/A (textbook form, from memory). The edges are our own judgement:
 * pessimistic, q = 1, glued joints open 0.1 mm all along and the cover's 0.2 mm; likely, q = 1/4 (diffuse field of the same
 * pressure) and a tenth of those gaps; optimistic, q = 1/8 and tight joints. A joint is as deep as the boards; where layers
 * overlap, a leak must also go sideways between them, at least by the thickness of each further layer. The cover's gasket is
 * taken to be as deep as the innermost board. Where the box's joinery has a gap of the cover's joint that was measured ({@link
 * JointGap}), its widest, likely and narrowest stand for the three edges, and q = 1/4 for that joint at all of them, because the
 * gap was found with it.
 *
 * <p>Range: boxes standing in the quiet room. A face against the building does not radiate into it. Nothing is taken off for
 * liner between air and board. The seal between box and building is taken as tight.
 *
 * <p>Accuracy: 5 dB; workmanship decides.
 *
 * <p>Differs from the source: see formula.
 */
public final class BoxWalls {
    /** The edges of the range. */
    public enum Edge {
        LOW(1, 1e-4, 2e-4),
        LIKELY(0.25, 1e-5, 2e-5),
        HIGH(0.125, 0, 0);

        private final double incidence;
        private final double gap;
        private final double coverGap;

        Edge(double incidence, double gap, double coverGap) {
            this.incidence = incidence;
            this.gap = gap;
            this.coverGap = coverGap;
        }

        /** Gap all along the glued joints, m. */
        public double gap() {
            return gap;
        }

        /** Gap all along the gasket of the cover where none was measured, m. */
        public double coverGap() {
            return coverGap;
        }
    }

    private static final double NEPER_PER_DECIBEL = Math.log(10) / 10;
    private static final double THIN = 1e-6;
    /** How far a third octave at a resonance may lie below the mass law, dB: see {@link PanelTransmission}. */
    private static final double RESONANCE_DIP = 10;
    /** A clamped square plate's first resonance over a supported one's: 35.99 / 19.74, from memory. */
    private static final double CLAMPED = 1.8;

    private final Solid solid;
    private final Set<Role> covered;
    private final List<Board> layers;
    private final Lamination lamination;
    private final double openingArea;
    private final double soundSpeed;
    private final WallFaces faces;
    private final PanelTransmission panel;

    private BoxWalls(BoxWalls from, List<Board> layers) {
        this(from.solid, from.covered, layers, from.lamination, from.openingArea, from.soundSpeed);
    }

    private BoxWalls(
            Solid solid,
            Set<Role> covered,
            List<Board> layers,
            Lamination lamination,
            double openingArea,
            double soundSpeed) {
        this.solid = solid;
        this.covered = covered;
        this.layers = layers;
        this.lamination = lamination;
        this.openingArea = openingArea;
        this.soundSpeed = soundSpeed;
        double thickness = layers.stream().mapToDouble(Board::thickness).sum();
        this.faces = new WallFaces(solid, covered, thickness - solid.box().shellThickness());
        this.panel = PanelTransmission.of(layers, lamination, soundSpeed);
    }

    /** The walls of a box over an opening, layers glued; speed of sound in m/s. */
    public static BoxWalls of(Solid solid, Opening opening, double soundSpeed) {
        return of(solid, opening, Lamination.GLUED, soundSpeed);
    }

    /** The walls of a box over an opening; speed of sound in m/s. */
    public static BoxWalls of(Solid solid, Opening opening, Lamination lamination, double soundSpeed) {
        return new BoxWalls(
                solid,
                WallFaces.againstBuilding(solid, opening),
                solid.box().shell(),
                lamination,
                opening.area(),
                soundSpeed);
    }

    /** The same walls with one more layer of the outermost board on the outside. */
    public BoxWalls withOneMoreLayer() {
        List<Board> more = new ArrayList<>(layers);
        more.add(layers.get(layers.size() - 1));
        return new BoxWalls(this, List.copyOf(more));
    }

    /** Outer area of the box beside a pass that can radiate into the room, m². */
    public double exposedArea(int pass) {
        return faces.area(pass);
    }

    /** Length of the glued joints beside a pass, m. */
    public double gluedJoints(int pass) {
        return faces.glued(pass);
    }

    /** Length of the cover's joint beside a pass, m. */
    public double coverJoint(int pass) {
        return faces.cover(pass);
    }

    /**
     * Insertion loss of the route, third octaves, dB.
     *
     * @param legs what the path takes, pass by pass
     * @param edge of the range
     */
    public Spectrum loss(List<Leg> legs, Edge edge) {
        return route(levels(legs), edge).loss();
    }

    /**
     * Mean-square pressure in every pass over that of the wave that comes into the opening, third octaves, dB, as the terms of
     * an estimate give it: what the path has taken before the pass, and (1 - e^-x)/x for x nepers of lining along it.
     */
    public static List<Spectrum> levels(List<Leg> legs) {
        List<Spectrum> levels = new ArrayList<>();
        Spectrum taken = Spectrum.flat(BandSet.THIRD_OCTAVE, 0);
        for (Leg leg : legs) {
            Spectrum before = taken.plus(leg.entry());
            levels.add(
                    Spectrum.of(BandSet.THIRD_OCTAVE, i -> meanAlong(leg.along().value(i)) - before.value(i)));
            taken = before.plus(leg.along());
        }
        return List.copyOf(levels);
    }

    /**
     * The route and its parts.
     *
     * @param levels mean-square pressure in every pass over that of the wave that comes into the opening, third octaves, dB,
     *     from whatever method
     * @param edge of the range
     */
    public WallRoute route(List<Spectrum> levels, Edge edge) {
        return route(levels, edge, edge.gap, coverGap(edge));
    }

    private double coverGap(Edge edge) {
        JointGap measured = solid.box().joinery().coverGap();
        if (measured == null) {
            return edge.coverGap;
        }
        return switch (edge) {
            case LOW -> measured.most();
            case LIKELY -> measured.likely();
            case HIGH -> measured.least();
        };
    }

    /**
     * The route with another gap all along the cover's joint than the edge has.
     *
     * @param levels as for {@link #route}
     * @param edge of the range
     * @param coverGap m
     */
    public WallRoute routeWithCoverGap(List<Spectrum> levels, Edge edge, double coverGap) {
        return route(levels, edge, edge.gap, coverGap);
    }

    /** What one more layer and tight joints would buy; arguments as for {@link #route}. */
    public WallChoices choices(List<Spectrum> levels, Edge edge) {
        BoxWalls more = withOneMoreLayer();
        return new WallChoices(
                route(levels, edge),
                more.route(levels, edge),
                route(levels, edge, 0, 0),
                more.route(levels, edge, 0, 0));
    }

    /** Faces whose panels may resonate. */
    public enum Free {
        /** Back and front cover, between the baffles. */
        BROAD,
        /** Long sides. */
        SIDES,
        /** Ends. */
        ENDS
    }

    /**
     * A resonance of a panel that may make the walls govern.
     *
     * @param band third octave
     * @param face whose panel it is
     * @param route through the walls with the dip of the resonance in that band
     */
    public record Resonance(Band band, Free face, WallRoute route) {}

    /** Lowest first resonance among the outer panels between baffles and corners, simply supported, Hz. */
    public double firstResonance() {
        return lowest().getValue();
    }

    private Map.Entry<Free, Double> lowest() {
        return Collections.min(resonances().entrySet(), Map.Entry.comparingByValue());
    }

    private Map<Free, Double> resonances() {
        double x = solid.cavity().size(Axis.X);
        double y = solid.cavity().size(Axis.Y);
        double z = solid.cavity().size(Axis.Z);
        double pitch = y / solid.passes().size();
        // A baffle reaches one of the two ends, so an end is free over two passes.
        double end = Math.min(y, 2 * pitch);
        Map<Free, Double> all = new EnumMap<>(Free.class);
        all.put(Free.BROAD, panel.firstResonance(x, pitch));
        all.put(Free.SIDES, panel.firstResonance(x, z));
        all.put(Free.ENDS, panel.firstResonance(end, z));
        return all;
    }

    /**
     * The first resonance of a panel if it may make the walls govern: somewhere between it and that of clamped edges the
     * route less the dip of a resonance is below the path.
     *
     * @param route of these walls
     * @param path loss of the path, third octaves, dB
     */
    public Optional<Resonance> resonance(WallRoute route, Spectrum path) {
        Map.Entry<Free, Double> lowest = lowest();
        double low = lowest.getValue();
        for (int i = 0; i < BandSet.THIRD_OCTAVE.size(); i++) {
            double upper = BandSet.THIRD_OCTAVE.bands().get(i).upperHz();
            double lower = BandSet.THIRD_OCTAVE.bands().get(i).lowerHz();
            boolean near = upper > low && lower < CLAMPED * low;
            if (near && route.loss().value(i) - RESONANCE_DIP < path.value(i)) {
                int dip = i;
                Spectrum less =
                        Spectrum.of(BandSet.THIRD_OCTAVE, k -> route.loss().value(k) - (k == dip ? RESONANCE_DIP : 0));
                return Optional.of(new Resonance(
                        BandSet.THIRD_OCTAVE.bands().get(i), lowest.getKey(), new WallRoute(less, route.parts())));
            }
        }
        return Optional.empty();
    }

    private WallRoute route(List<Spectrum> levels, Edge edge, double gap, double coverGap) {
        if (levels.size() != faces.passes()) {
            throw new IllegalArgumentException(levels.size() + " levels for " + faces.passes() + " passes");
        }
        double scale = Energy.db(openingArea / edge.incidence);
        boolean measured = solid.box().joinery().coverGap() != null;
        double coverScale = measured ? Energy.db(openingArea / Edge.LIKELY.incidence) : scale;
        Spectrum boards = panel.transmissionLoss();
        Spectrum joints = perLength(gap, faces.allGlued(), jointDepth());
        Spectrum cover = perLength(coverGap, faces.allCover(), layers.get(0).thickness());
        List<Part> parts = new ArrayList<>();
        for (int pass = 0; pass < faces.passes(); pass++) {
            Spectrum level = levels.get(pass);
            parts.add(part(pass, Kind.BOARDS, boards, faces.area(pass), level, scale));
            parts.add(part(pass, Kind.JOINTS, joints, faces.glued(pass), level, scale));
            parts.add(part(pass, Kind.COVER, cover, faces.cover(pass), level, coverScale));
        }
        return WallRoute.of(parts);
    }

    private static Part part(int pass, Kind kind, Spectrum loss, double size, Spectrum level, double scale) {
        double area = Energy.db(size);
        return new Part(pass, kind, loss.minus(level).plus(scale - area));
    }

    /** Loss of one metre of a joint against one square metre of full transmission, dB. */
    private Spectrum perLength(double gap, double whole, double depth) {
        SlitLeak slit = new SlitLeak(gap, whole, depth, SlitMouth.IN_SURFACE);
        return Spectrum.ofFrequency(BandSet.THIRD_OCTAVE, f -> -Energy.db(slit.openArea(f, soundSpeed) / whole));
    }

    private double jointDepth() {
        double depth = layers.get(0).thickness();
        for (Board further : layers.subList(1, layers.size())) {
            depth += 2 * further.thickness();
        }
        return depth;
    }

    private static double meanAlong(double loss) {
        double nepers = loss * NEPER_PER_DECIBEL;
        return nepers < THIN ? 0 : Energy.db(-Math.expm1(-nepers) / nepers);
    }
}
