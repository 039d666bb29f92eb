package hushmaze.size;

import hushmaze.assess.Assessment;
import java.util.List;

/**
 * One value of a sweep, judged or refused.
 *
 * @param step counted from 0
 * @param value of the number, in the unit of its file
 * @param laidOut for each path, whether its box was laid out for this value; empty when refused
 * @param assessment of the project with this value; null when refused
 * @param refusal why there is none: a value that cannot be accepted, or {@link NoBox}; null when judged
 */
public record SweepRow(int step, double value, List<Boolean> laidOut, Assessment assessment, RuntimeException refusal) {
    public SweepRow {
        laidOut = List.copyOf(laidOut);
        if ((assessment == null) == (refusal == null)) {
            throw new IllegalArgumentException("a row is judged or refused, and not both");
        }
    }
}
