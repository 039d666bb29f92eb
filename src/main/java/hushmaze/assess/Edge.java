package hushmaze.assess;

import hushmaze.air.PathAir;

/** Which end of the range of losses is taken. */
enum Edge {
    LOW,
    LIKELY,
    HIGH;

    /** Pressure drop of a path at this edge, Pa. */
    double of(PathAir air) {
        return switch (this) {
            case LOW -> air.pressureLow();
            case LIKELY -> air.pressure();
            case HIGH -> air.pressureHigh();
        };
    }
}
