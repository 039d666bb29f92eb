package hushmaze.build;

/**
 * How a part is laid down to be drawn: first its two directions may be exchanged, then each may be mirrored.
 *
 * @param exchange whether u and v change places
 * @param mirrorU whether the first direction then runs the other way
 * @param mirrorV whether the second does
 */
public record Turning(boolean exchange, boolean mirrorU, boolean mirrorV) {
    /** All eight, as it lies first. */
    static Turning[] all() {
        Turning[] all = new Turning[8];
        for (int i = 0; i < 8; i++) {
            all[i] = new Turning((i & 4) != 0, (i & 1) != 0, (i & 2) != 0);
        }
        return all;
    }

    /** The way from the plate back to the part. */
    Turning back() {
        return exchange ? new Turning(true, mirrorV, mirrorU) : this;
    }

    /** Whether the face that is seen is the other one. */
    public boolean flips() {
        return exchange ^ mirrorU ^ mirrorV;
    }
}
