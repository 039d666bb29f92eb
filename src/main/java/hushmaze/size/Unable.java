package hushmaze.size;

/** Why a change cannot be made to a box. */
public enum Unable {
    /** It has no liner. */
    NO_LINER,
    /** Long sides are lined and baffles are not, or the other way round: passes would come out unequal. */
    UNEVEN_LINING,
    /** It has as many layers as the program knows. */
    MOST_LAYERS,
    /** It has as many passes as the program knows. */
    MOST_PASSES,
    /** It is no maze. */
    NO_MAZE,
    /** What comes out is not a box that can be built: a port, turn or liner has no room. */
    NO_BOX
}
