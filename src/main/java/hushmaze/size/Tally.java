package hushmaze.size;

/**
 * What became of the boxes a search looked at.
 *
 * @param noRoom had no room in the space, no room for their ports, or passes too narrow for the air
 * @param noAir take too much pressure
 * @param hopeless left out: shorter than one that is far from quiet already, or of more layers where one does
 * @param estimated judged for sound by the estimate
 * @param quick judged by the quick wave and laid out on sheets
 * @param assessed judged as documents are, with the wave solution
 */
public record Tally(long noRoom, long noAir, long hopeless, long estimated, long quick, long assessed) {
    /** Nothing yet. */
    static final Tally NONE = new Tally(0, 0, 0, 0, 0, 0);

    /** Both together. */
    public Tally plus(Tally other) {
        return new Tally(
                noRoom + other.noRoom,
                noAir + other.noAir,
                hopeless + other.hopeless,
                estimated + other.estimated,
                quick + other.quick,
                assessed + other.assessed);
    }

    /** Boxes looked at in all. */
    public long all() {
        return noRoom + noAir + hopeless + estimated;
    }
}
