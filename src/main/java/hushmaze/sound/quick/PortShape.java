package hushmaze.sound.quick;

import hushmaze.sound.porous.SlitSection;

/**
 * Everything the field at a port depends on.
 *
 * @param kind which face of its pass the port is in
 * @param pass section of the pass
 * @param turned whether the port is on the high side, so that the pass is looked at from there
 * @param fluids of the pass
 * @param height clear height of the pass, m
 * @param along size of the port in the plane of the section: across the pass for an end port, along it for the others, m
 * @param across the port's other size, m
 * @param offset of an end port from the low face of the air, m; zero for the others
 * @param stub from the port's edge to the end of the pass, m; zero for an end port
 * @param endLiner depth of the liner on that end, m
 */
record PortShape(
        Kind kind,
        SlitSection pass,
        boolean turned,
        Fluids fluids,
        double height,
        double along,
        double across,
        double offset,
        double stub,
        double endLiner) {
    enum Kind {
        END,
        SIDE,
        BROAD
    }
}
