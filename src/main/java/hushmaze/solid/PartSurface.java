package hushmaze.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;

/**
 * The whole surface of a part as flat rectangles: cut-outs and grooves are really taken out. The planes of all its faces
 * divide the part's block into cells that are there or not as a whole; the surface lies where a cell that is there meets
 * nothing. Every edge of a rectangle is a whole edge of its neighbour, so that the surface closes without gaps. Holes for
 * screws are left out.
 */
public final class PartSurface {
    /** Planes nearer than this are one, m. */
    private static final double SAME = 1e-8;

    /**
     * One flat rectangle.
     *
     * @param across axis it lies across
     * @param high whether the part is on the low side of it, so that it looks towards the axis's high end
     * @param at where along that axis, m
     * @param u0 low end along {@link Axis#u} of that axis, m
     * @param v0 low end along {@link Axis#v}, m
     * @param u1 high end along u, m
     * @param v1 high end along v, m
     */
    public record Face(Axis across, boolean high, double at, double u0, double v0, double u1, double v1) {
        /** Its four corners {x, y, z} in turn, m; counterclockwise for who looks at it from outside the part. */
        public List<double[]> corners() {
            List<double[]> turn = List.of(place(u0, v0), place(u1, v0), place(u1, v1), place(u0, v1));
            // x × y = +z and y × z = +x, but x × z = -y
            boolean counterclockwise = high != (across == Axis.Y);
            return counterclockwise ? turn : List.of(turn.get(3), turn.get(2), turn.get(1), turn.get(0));
        }

        private double[] place(double u, double v) {
            return switch (across) {
                case X -> new double[] {at, u, v};
                case Y -> new double[] {u, at, v};
                case Z -> new double[] {u, v, at};
            };
        }
    }

    private final List<Cuboid> taken;
    private final double[][] planes = new double[Axis.values().length][];

    private PartSurface(Part part) {
        Cuboid bounds = part.bounds();
        taken = part.taken();
        for (Axis axis : Axis.values()) {
            planes[axis.ordinal()] = planes(bounds, axis);
        }
    }

    /** The rectangles of a part's surface. */
    public static List<Face> of(Part part) {
        PartSurface surface = new PartSurface(part);
        List<Face> faces = new ArrayList<>();
        for (Axis across : Axis.values()) {
            for (int i = 0; i < surface.cells(across.u()); i++) {
                for (int j = 0; j < surface.cells(across.v()); j++) {
                    surface.stack(faces, across, i, j);
                }
            }
        }
        return List.copyOf(faces);
    }

    private double[] planes(Cuboid bounds, Axis axis) {
        TreeSet<Double> all = new TreeSet<>(List.of(bounds.low(axis), bounds.high(axis)));
        taken.stream()
                .flatMapToDouble(block -> DoubleStream.of(block.low(axis), block.high(axis)))
                .filter(place -> all.first() < place && place < all.last())
                .forEach(place -> {
                    if (all.subSet(place - SAME, place + SAME).isEmpty()) {
                        all.add(place);
                    }
                });
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private int cells(Axis axis) {
        return planes[axis.ordinal()].length - 1;
    }

    /** The faces across an axis along one row of cells. */
    private void stack(List<Face> faces, Axis across, int i, int j) {
        double[] at = planes[across.ordinal()];
        double[] us = planes[across.u().ordinal()];
        double[] vs = planes[across.v().ordinal()];
        boolean before = false;
        for (int k = 0; k < at.length; k++) {
            boolean there = k < at.length - 1 && there(across, k, i, j);
            if (there != before) {
                faces.add(new Face(across, before, at[k], us[i], vs[j], us[i + 1], vs[j + 1]));
            }
            before = there;
        }
    }

    private boolean there(Axis across, int k, int i, int j) {
        double n = middle(across, k);
        double u = middle(across.u(), i);
        double v = middle(across.v(), j);
        return taken.stream()
                .noneMatch(block ->
                        within(block, across, n) && within(block, across.u(), u) && within(block, across.v(), v));
    }

    private double middle(Axis axis, int cell) {
        double[] all = planes[axis.ordinal()];
        return (all[cell] + all[cell + 1]) / 2;
    }

    private static boolean within(Cuboid block, Axis axis, double place) {
        return place > block.low(axis) && place < block.high(axis);
    }
}
