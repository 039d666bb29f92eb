package hushmaze.sound.flow;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.List;

/** A place where moving air makes noise. */
public interface FlowSource {
    /**
     * Fastest air any formula is asked for, m/s; far more than any of them was published for.
     */
    double FASTEST = 100;
    /**
     * Total power that cannot matter, dB re 1 pW: in a room of 1 m² of absorption it makes -4 dB, 15 dB below the lowest
     * limit that NC 15 has in any octave.
     */
    double NEGLIGIBLE = -10;

    /** The part that makes it: "pass 1", "turn 2", "room port". */
    String part();

    /** Method and where it is published. */
    String source();

    /**
     * Sound power where it is made, octaves, dB re 1 pW. All of it is taken to go towards the room. Air at rest makes
     * none: negative infinity.
     */
    Spectrum power();

    /** Where the formula is carried on beyond what it was published for; none if the power is negligible anyway. */
    List<Notice> notices();

    /** Checks what all formulas take: velocity in m/s, clear area in m². */
    static void check(String part, double velocity, double area) {
        InvalidValue.present("part", part);
        InvalidValue.within("velocity", velocity, 0, FASTEST, Unit.METRE_PER_SECOND);
        InvalidValue.within("area", area, 1e-6, 100, Unit.SQUARE_METRE);
    }

    /** The notice that a value is below or above a formula's range, if it is. */
    static List<Notice> outside(String part, double value, double low, double high, Unit unit) {
        if (value >= low && value <= high) {
            return List.of();
        }
        double limit = value < low ? low : high;
        return List.of(Notice.of(NoticeKind.FLOW_NOISE_OUTSIDE_RANGE, Severity.NOTE, part, value, limit, unit));
    }
}
