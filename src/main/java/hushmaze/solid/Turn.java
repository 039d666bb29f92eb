package hushmaze.solid;

/**
 * Where the air goes round a baffle's tip, from one pass into the next.
 *
 * @param number counted from 0; turn i is between pass i and pass i + 1
 * @param atFarEnd whether it is at the high-x end
 * @param gap clear from the tip to the liner face opposite, m
 * @param clear the air beyond the tip, over both passes and the baffle between them
 * @param tipWidth width of the baffle's tip with its liner, m: what the two passes are apart
 * @param endLiner liner thickness on the end opposite, m
 */
public record Turn(int number, boolean atFarEnd, double gap, Cuboid clear, double tipWidth, double endLiner) {
    /** Clear area of the gap, m². */
    public double area() {
        return gap * clear.size(Axis.Z);
    }
}
