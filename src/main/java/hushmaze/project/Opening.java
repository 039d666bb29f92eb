package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * The hole in the room's envelope, or the duct, that the air comes through.
 *
 * @param kind what it is
 * @param surface where it is
 * @param beyond what is on the other side
 * @param width clear, m; for a floor or ceiling opening the longer side
 * @param height clear, m
 */
public record Opening(
        Kind kind,
        Surface surface,
        Beyond beyond,
        @Measured(Unit.MILLIMETRE) double width,
        @Measured(Unit.MILLIMETRE) double height) {
    /** What the opening is; it decides how many open mouths the box and the bare opening have. */
    public enum Kind {
        /** The open end of a duct in the room: one mouth, into the room. */
        REGISTER,
        /** A hole through a wall, a door or a window infill: a mouth on each side. */
        WALL_OPENING,
        /** A duct that goes on behind the box: no mouth. */
        IN_DUCT
    }

    /** The surface the opening is in. */
    public enum Surface {
        FLOOR,
        WALL,
        CEILING
    }

    /** What the air comes from or goes to. */
    public enum Beyond {
        /** Ductwork of a heating or ventilation system. */
        DUCTWORK,
        /** Another room or a hall. */
        INDOORS,
        OUTDOORS,
        /** A garage: not a place to take air from. */
        GARAGE
    }

    public Opening {
        InvalidValue.present("kind", kind);
        InvalidValue.present("surface", surface);
        InvalidValue.present("beyond", beyond);
        InvalidValue.within("width", width, 0.03, 2, Unit.MILLIMETRE);
        InvalidValue.within("height", height, 0.03, 2, Unit.MILLIMETRE);
    }

    /** Clear area, m². */
    public double area() {
        return width * height;
    }
}
