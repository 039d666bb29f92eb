package hushmaze.build.joint;

import hushmaze.material.Board;
import hushmaze.material.Screw;
import hushmaze.project.Seam;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Axis;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Panel;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * Counts the fasteners of a box by kind and size.
 *
 * <p>A screw is at least twice as long as what it fastens is thick: the project's own screw where that is long enough, else
 * the next length sold. A brad is three times as long as what it fastens is thick, as far as brads go, and through two layers
 * never comes out. Layers are held on each other by brads no further apart than 250 mm. A glued seam has dowels of half the
 * board's thickness, the first and last 32 mm from the ends. A seam that comes apart has connecting plates around the
 * outside. Pins hold liner 100 mm from its edges and no further apart than 300 mm.
 *
 * <p>Source: screw length, a shop guide, as read; brads, an advice page, as read; dowels 1 1/4 in from the ends, 8 to 12 in
 * apart, 3/8 in in 3/4 in board, a woodworking magazine, as read; layers, plates and pins, common practice, no source. Range:
 * any box. Accuracy: counts exact for the joints there are; buy a tenth more. Differs from the source: sizes as sold.
 */
public final class FastenerList {
    /** An 18 gauge brad, m. */
    static final double BRAD = 0.0012;
    /** How far a brad through two layers stays from the far face, m. */
    private static final double HIDDEN = 0.003;

    /** Most that brads between layers are apart, m. */
    public static final double LAYERS_APART = 0.25;

    private static final Spacing LAYERS = new Spacing(Fastening.FACE_CORNER, LAYERS_APART);
    private static final Spacing DOWELS = new Spacing(0.032, 0.25);
    private static final Spacing PLATES = new Spacing(0.06, 0.25);
    private static final Spacing PINS = new Spacing(0.1, 0.3);

    /** Dowels for 3/8 in in 3/4 in board, and a trifle. */
    private static final double DOWEL_SHARE = 0.51;
    /** Length of a dowel in diameters. */
    private static final double DOWEL_LENGTH = 5;

    private static final double PLATE = 0.04;
    private static final double PLATE_LENGTH = 0.1;
    private static final double PIN = 0.0025;
    private static final double SAME = 1e-6;

    /**
     * So many of one size.
     *
     * @param fastener what
     * @param use where
     * @param count how many
     */
    public record Counted(Fastener fastener, Use use, int count) {}

    /** Where fasteners go. */
    public enum Use {
        /** Through the cover into the edges it lies on. */
        COVER,
        /** In glued joints. */
        JOINTS,
        /** Between the layers of a wall or baffle. */
        LAYERS,
        /** In a glued seam. */
        GLUED_SEAM,
        /** Over a seam that comes apart. */
        PARTING_SEAM,
        /** Through liner. */
        LINER
    }

    private record Key(Use use, Fastener fastener) {}

    private final Solid solid;
    private final Screw screw;
    private final UnitSystem units;
    private final TreeMap<Key, Integer> counts = new TreeMap<>(Comparator.comparing(Key::use)
            .thenComparing(k -> k.fastener().kind())
            .thenComparingDouble(k -> k.fastener().length())
            .thenComparingDouble(k -> k.fastener().diameter()));

    private FastenerList(Solid solid, Screw screw, UnitSystem units) {
        this.solid = solid;
        this.screw = screw;
        this.units = units;
    }

    /**
     * All fasteners of a box.
     *
     * @param screw the project's own
     * @param units whose sizes are sold
     * @param pins whether the liner needs pins
     */
    public static List<Counted> of(Solid solid, Screw screw, UnitSystem units, boolean pins) {
        FastenerList list = new FastenerList(solid, screw, units);
        list.joints();
        list.layers();
        list.gluedSeams();
        list.plates();
        if (pins) {
            list.pins();
        }
        return list.counts.entrySet().stream()
                .map(e -> new Counted(e.getKey().fastener(), e.getKey().use(), e.getValue()))
                .toList();
    }

    private void add(Use use, Fastener.Kind kind, double diameter, double length, int count) {
        if (count > 0) {
            counts.merge(new Key(use, new Fastener(kind, diameter, length)), count, Integer::sum);
        }
    }

    private void joints() {
        for (Fastening.Held held : Fastening.of(solid, screw).held()) {
            Fastener f = holding(held, solid, screw, units);
            Use use = held.joint().cover() ? Use.COVER : Use.JOINTS;
            add(use, f.kind(), f.diameter(), f.length(), held.places().size());
        }
    }

    /** What holds a joint of a box. */
    public static Fastener holding(Fastening.Held held, Solid solid, Screw screw, UnitSystem units) {
        return holding(held.joint(), held.hold(), solid, screw, units);
    }

    static Fastener holding(Joint joint, Fastening.Hold hold, Solid solid, Screw screw, UnitSystem units) {
        double fastened = joint.cover()
                ? solid.box().shellThickness() + solid.box().joinery().gasket()
                : joint.face().thickness();
        return hold == Fastening.Hold.SCREWS
                ? new Fastener(Fastener.Kind.SCREW, screw.diameter(), screwLength(fastened, screw, units))
                : new Fastener(Fastener.Kind.BRAD, BRAD, Lengths.brad(3 * fastened, units));
    }

    private static double screwLength(double fastened, Screw screw, UnitSystem units) {
        double least = 2 * fastened;
        return screw.length() >= least - SAME ? screw.length() : Lengths.screw(least, units);
    }

    private void layers() {
        List<Board> shell = solid.box().shell();
        for (Panel panel : solid.panels()) {
            if (panel.layer() == 0) {
                continue;
            }
            double under = panel.role() == Role.BAFFLE
                    ? panel.thickness()
                    : shell.get(panel.layer() - 1).thickness();
            double most = Math.min(3 * panel.thickness(), panel.thickness() + under - HIDDEN);
            double length = Lengths.brad(most, units);
            if (length > panel.thickness()) {
                int count = LAYERS.places(0, panel.uSize()).size()
                        * LAYERS.places(0, panel.vSize()).size();
                add(Use.LAYERS, Fastener.Kind.BRAD, BRAD, length, count);
            }
        }
    }

    private void gluedSeams() {
        for (Panel panel : SeamEdges.glued(solid)) {
            double diameter = Lengths.dowel(DOWEL_SHARE * panel.thickness(), units);
            int count = DOWELS.places(0, SeamEdges.length(panel)).size();
            add(Use.GLUED_SEAM, Fastener.Kind.DOWEL, diameter, DOWEL_LENGTH * diameter, count);
        }
    }

    private void plates() {
        int around = 2 * PLATES.places(0, solid.outer().size(Axis.Y)).size()
                + 2 * PLATES.places(0, solid.outer().size(Axis.Z)).size();
        for (Seam seam : solid.box().seams()) {
            if (seam.comesApart()) {
                add(Use.PARTING_SEAM, Fastener.Kind.PLATE, PLATE, PLATE_LENGTH, around);
            }
        }
    }

    private void pins() {
        for (LinerPiece piece : solid.liners()) {
            int count = PINS.places(0, piece.uSize()).size()
                    * PINS.places(0, piece.vSize()).size();
            add(Use.LINER, Fastener.Kind.PIN, PIN, piece.thickness(), count);
        }
    }
}
