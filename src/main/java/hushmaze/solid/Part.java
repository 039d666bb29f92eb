package hushmaze.solid;

import java.util.List;
import java.util.stream.Stream;

/** A panel or a liner piece where it belongs: a rectangle of sheet material with rectangular cut-outs. */
public sealed interface Part permits Panel, LinerPiece {
    /** Where it belongs. */
    Role role();

    /**
     * Which one of its role: the layer of a shell panel counted from the inside (0, 1, 2); for baffles and their parts
     * see the implementing records.
     */
    int layer();

    /** The block it fills before its cut-outs are taken out. */
    Cuboid bounds();

    /** Rectangles taken out of it. */
    List<Cutout> cutouts();

    /** Rectangles sunk into one face; none for liner. */
    default List<Groove> grooves() {
        return List.of();
    }

    /** The space one of its cut-outs takes, right through it. */
    default Cuboid space(Cutout c) {
        return space(c.u0(), c.v0(), c.u1(), c.v1());
    }

    /** The space one of its grooves takes. */
    default Cuboid space(Groove g) {
        Axis n = normal();
        double low = g.inLowFace() ? bounds().low(n) : bounds().high(n) - g.depth();
        return space(g.u0(), g.v0(), g.u1(), g.v1()).with(n, low, low + g.depth());
    }

    private Cuboid space(double u0, double v0, double u1, double v1) {
        double u = bounds().low(normal().u());
        double v = bounds().low(normal().v());
        return bounds().with(normal().u(), u + u0, u + u1).with(normal().v(), v + v0, v + v1);
    }

    /** The space that all its cut-outs and grooves take. */
    default List<Cuboid> taken() {
        return Stream.concat(
                        cutouts().stream().map(this::space), grooves().stream().map(this::space))
                .toList();
    }

    /** Which of the stretches between seams it belongs to, counted from the near end. */
    int stretch();

    /** Material's thickness, m. */
    double thickness();

    /** Density of the material, kg/m³. */
    double density();

    /** Name of the material. */
    String material();

    /** Direction across its faces. */
    default Axis normal() {
        return role().normal();
    }

    /** Size along u, m. */
    default double uSize() {
        return bounds().size(normal().u());
    }

    /** Size along v, m. */
    default double vSize() {
        return bounds().size(normal().v());
    }

    /** Face area with the cut-outs taken out, m². Cut-outs of one part never overlap. */
    default double faceArea() {
        return uSize() * vSize() - cutouts().stream().mapToDouble(Cutout::area).sum();
    }

    /** m³. */
    default double volume() {
        return faceArea() * thickness()
                - grooves().stream().mapToDouble(Groove::volume).sum();
    }

    /** kg. */
    default double mass() {
        return volume() * density();
    }
}
