package hushmaze.solid;

import java.util.List;

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
