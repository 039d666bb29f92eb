package hushmaze.solid;

import hushmaze.project.Port;

/**
 * A port where it is.
 *
 * @param port as chosen
 * @param role wall it goes through
 * @param hole the air from the box's outer face to the liner's inner face
 */
public record PortPlace(Port port, Role role, Cuboid hole) {
    /** What the port over the opening is called where parts are named. */
    public static final String AT_OPENING = "opening port";
    /** What the port in the room is called where parts are named. */
    public static final String IN_ROOM = "room port";

    /** Clear area, m². */
    public double area() {
        return port.area();
    }

    /** Whether the air turns by ninety degrees between the port and its pass. */
    public boolean turns() {
        return role.normal() != Axis.X;
    }
}
