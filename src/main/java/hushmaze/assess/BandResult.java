package hushmaze.assess;

import hushmaze.quantity.Band;

/**
 * One band of one path. Losses are insertion losses in dB: level in the room through the bare opening minus level
 * through the box.
 *
 * @param band octave or third octave
 * @param noise level at the microphone through the bare opening, dB
 * @param allowed level this path may make at the microphone, dB; negative infinity if nothing is left for it
 * @param needed insertion loss needed, dB; zero if the bare opening is quiet enough, positive infinity if nothing is left
 * @param estimate handbook estimate of the path
 * @param quick quick wave method; null when not run
 * @param wave wave solution; null when not run
 * @param path best figure for the path: wave solution, else quick wave, else estimate
 * @param walls through the box's own walls and joints, likely
 * @param low pessimistic edge of the whole box
 * @param likely of the whole box
 * @param high optimistic edge of the whole box
 * @param level everything this path brings to the microphone, with the noise of its air and its fan, pessimistic edge, dB
 */
public record BandResult(
        Band band,
        double noise,
        double allowed,
        double needed,
        double estimate,
        Double quick,
        Double wave,
        double path,
        double walls,
        double low,
        double likely,
        double high,
        double level) {
    /** What the path may make less what it makes at the pessimistic edge, dB. */
    public double margin() {
        return margin(allowed, level);
    }

    /** Allowed less made, dB; silence has all the margin there is, whatever is allowed. */
    static double margin(double allowed, double level) {
        return level == Double.NEGATIVE_INFINITY ? Double.POSITIVE_INFINITY : allowed - level;
    }
}
