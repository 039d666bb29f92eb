package hushmaze.size;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Equally spaced values of one number. Each is worked out from its step alone, in decimals, so that any part of the range
 * gives the same numbers to the last bit, and tenths come out as tenths.
 *
 * @param from first value, in the unit of the number's file
 * @param to last value, in the same unit; may be less than the first
 * @param steps how many values, both ends counted, 2 to 100 000
 */
public record SweepRange(double from, double to, int steps) {
    private static final int MOST_STEPS = 100_000;

    public SweepRange {
        InvalidValue.within("from", from, -Double.MAX_VALUE, Double.MAX_VALUE, Unit.NUMBER);
        InvalidValue.within("to", to, -Double.MAX_VALUE, Double.MAX_VALUE, Unit.NUMBER);
        InvalidValue.within("steps", steps, 2, MOST_STEPS);
        if (from == to) {
            throw new InvalidValue("to", Double.toString(to), "another value than the first", "");
        }
    }

    /** The value of one step, counted from 0. */
    public double value(int step) {
        if (step < 0 || step >= steps) {
            throw new IllegalArgumentException("no step " + step + " of " + steps);
        }
        if (step == 0 || step == steps - 1) {
            return step == 0 ? from : to;
        }
        BigDecimal start = BigDecimal.valueOf(from);
        return BigDecimal.valueOf(to)
                .subtract(start)
                .multiply(BigDecimal.valueOf(step))
                .divide(BigDecimal.valueOf(steps - 1L), MathContext.DECIMAL128)
                .add(start)
                .doubleValue();
    }

    /**
     * The steps of one part: part i of n takes step k when k mod n is i - 1, so that each part goes through the whole range and
     * all take about as long.
     *
     * @param part from 1 to {@code parts}
     * @param parts at least 1
     */
    public List<Integer> part(int part, int parts) {
        InvalidValue.within("parts", parts, 1, MOST_STEPS);
        InvalidValue.within("part", part, 1, parts);
        return IntStream.range(0, steps)
                .filter(k -> k % parts == part - 1)
                .boxed()
                .toList();
    }

    /**
     * Requires whole values at all steps.
     *
     * @throws InvalidValue if there is one that is not, with numbers of steps that would do
     */
    public void requireWhole() {
        if (from != Math.rint(from) || to != Math.rint(to)) {
            boolean first = from != Math.rint(from);
            throw new InvalidValue(first ? "from" : "to", Double.toString(first ? from : to), "a whole number", "");
        }
        long span = Math.abs((long) to - (long) from);
        if (span % (steps - 1) != 0) {
            String counts = IntStream.rangeClosed(1, (int) Math.min(span, MOST_STEPS - 1))
                    .filter(gaps -> span % gaps == 0)
                    .limit(6)
                    .mapToObj(gaps -> String.valueOf(gaps + 1))
                    .collect(Collectors.joining(", "));
            throw new InvalidValue(
                    "steps", String.valueOf(steps), "a number that makes every value whole, such as " + counts, "");
        }
    }
}
