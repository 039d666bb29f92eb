package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * An opening of the box itself.
 *
 * @param face which face of its pass it is in
 * @param width m: across the pass for {@link PortFace#END}, along the pass for the other faces
 * @param height m: along the clear height for {@link PortFace#END} and {@link PortFace#SIDE}, across the pass for a broad
 *     face
 * @param edgeDistance m: how far the port's edge keeps from the lined end of its pass (SIDE and broad faces); in an
 *     offset chamber with {@link PortFace#END}, from the chamber's lined side
 */
public record Port(
        PortFace face,
        @Measured(Unit.MILLIMETRE) double width,
        @Measured(Unit.MILLIMETRE) double height,
        @Measured(Unit.MILLIMETRE) double edgeDistance) {
    public Port {
        InvalidValue.present("face", face);
        InvalidValue.within("width", width, 0.02, 3, Unit.MILLIMETRE);
        InvalidValue.within("height", height, 0.02, 3, Unit.MILLIMETRE);
        InvalidValue.within("edgeDistance", edgeDistance, 0, 5, Unit.MILLIMETRE);
    }

    /** Clear area, m². */
    public double area() {
        return width * height;
    }
}
