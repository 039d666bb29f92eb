package hushmaze.project;

/** Through which face of the box the air enters or leaves a pass. */
public enum PortFace {
    /** The end of the pass, in the direction of the air. */
    END,
    /** The long side of the first or last pass. */
    SIDE,
    /** The broad face against the wall, floor or ceiling. */
    BACK,
    /** The broad face towards the room, which is also the screwed cover. */
    FRONT;

    /** Whether the port is in one of the two broad faces. */
    public boolean isBroad() {
        return this == BACK || this == FRONT;
    }
}
