package hushmaze.size;

/**
 * What became of the boxes a search looked at.
 *
 * @param noRoom had no room in the space, no room for their ports, or passes too narrow for the air
 * @param noAir take too much pressure
 * @param notCarried too heavy or too large for the doorway, in however many parts
 * @param noSheets take more or larger sheets than there are
 * @param hopeless left out: shorter than one that is far from quiet already, or of more layers where one does
 * @param estimated judged for sound by the estimate
 * @param quick judged by the quick wave and laid out on sheets
 * @param assessed judged as documents are, with the wave solution
 */
public record Tally(
        long noRoom,
        long noAir,
        long notCarried,
        long noSheets,
        long hopeless,
        long estimated,
        long quick,
        long assessed) {
    /** Nothing yet. */
    static final Tally NONE = new Tally(0, 0, 0, 0, 0, 0, 0, 0);

    /** Boxes that have no room. */
    static Tally noRoom(long boxes) {
        return new Tally(boxes, 0, 0, 0, 0, 0, 0, 0);
    }

    /** Boxes that are shorter than one far too loud. */
    static Tally hopeless(long boxes) {
        return new Tally(0, 0, 0, 0, boxes, 0, 0, 0);
    }

    /** Boxes judged by the quick wave, which were counted before. */
    static Tally quick(long boxes) {
        return new Tally(0, 0, 0, 0, 0, 0, boxes, 0);
    }

    /** A box assessed with the wave solution, which was counted before. */
    static Tally inFull() {
        return new Tally(0, 0, 0, 0, 0, 0, 0, 1);
    }

    /** A box whose first judgement ended so. */
    static Tally of(Appraiser.End end) {
        return switch (end) {
            case NO_BOX -> noRoom(1);
            case NO_AIR -> new Tally(0, 1, 0, 0, 0, 0, 0, 0);
            case NOT_CARRIED -> new Tally(0, 0, 1, 0, 0, 0, 0, 0);
            case NO_SHEETS -> new Tally(0, 0, 0, 1, 0, 0, 0, 0);
            case DONE -> new Tally(0, 0, 0, 0, 0, 1, 0, 0);
        };
    }

    /** Both together. */
    public Tally plus(Tally other) {
        return new Tally(
                noRoom + other.noRoom,
                noAir + other.noAir,
                notCarried + other.notCarried,
                noSheets + other.noSheets,
                hopeless + other.hopeless,
                estimated + other.estimated,
                quick + other.quick,
                assessed + other.assessed);
    }

    /** Boxes looked at in all. */
    public long all() {
        return noRoom + noAir + notCarried + noSheets + hopeless + estimated;
    }
}
