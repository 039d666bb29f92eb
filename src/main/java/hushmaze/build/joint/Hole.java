package hushmaze.build.joint;

/**
 * A hole for a screw, right through a board, measured like a cut-out from the board's own low corner.
 *
 * @param u m
 * @param v m
 */
public record Hole(double u, double v) {}
