package hushmaze.air.need;

import hushmaze.air.AirState;
import hushmaze.air.Need;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Carbon dioxide in the room over a timetable of people and air.
 *
 * <p>Formula: within each span that of {@link Need#co2After}, on the level at the end of the span before; the flow is the
 * span's air and the leakage together. Source, accuracy: as there; no time steps, so none of their error.
 *
 * @param volume of the room, m³
 * @param co2PerPerson given off, m³/s
 * @param outdoorCo2 in the air supplied and leaking in, as a fraction
 * @param start level at the beginning, as a fraction
 * @param leakage air that comes in all the time, m³/s
 * @param spans at least one, in order
 */
public record Co2Course(
        double volume, double co2PerPerson, double outdoorCo2, double start, double leakage, List<Span> spans) {
    private static final double MAX_FLOW = 500;
    private static final double MAX_DURATION = 1e9;
    /** Flow below which nothing counts as flowing, m³/s. */
    private static final double MIN_FLOW = 1e-9;

    /** Any state does: the carbon dioxide does not depend on it. */
    private static final AirState AIR = AirState.of(0, 20);

    /**
     * A time in which nothing changes.
     *
     * @param duration s
     * @param people present
     * @param flow air supplied, m³/s; zero while the fan is off
     */
    public record Span(double duration, int people, double flow) {
        public Span {
            InvalidValue.within("duration", duration, 1e-3, MAX_DURATION, Unit.NUMBER);
            InvalidValue.within("people", people, 0, 500);
            InvalidValue.within("flow", flow, 0, MAX_FLOW, Unit.LITRE_PER_SECOND);
        }
    }

    /**
     * A point of the course.
     *
     * @param time since the beginning, s
     * @param level as a fraction
     */
    public record Sample(double time, double level) {}

    public Co2Course {
        InvalidValue.within("volume", volume, 0.1, 1e6, Unit.CUBIC_METRE);
        InvalidValue.within("co2PerPerson", co2PerPerson, 0, 1e-3, Unit.LITRE_PER_SECOND);
        InvalidValue.within("outdoorCo2", outdoorCo2, 0, 1, Unit.PARTS_PER_MILLION);
        InvalidValue.within("start", start, 0, 1, Unit.PARTS_PER_MILLION);
        InvalidValue.within("leakage", leakage, 0, MAX_FLOW, Unit.LITRE_PER_SECOND);
        spans = List.copyOf(InvalidValue.present("spans", spans));
        if (spans.isEmpty()) {
            throw new InvalidValue("spans", "none", "at least one", "");
        }
        double level = start;
        for (int i = 0; i < spans.size(); i++) {
            Span span = spans.get(i);
            level = new Need(volume, span.people() * co2PerPerson, outdoorCo2, 0, AIR)
                    .co2After(level, span.flow() + leakage, span.duration());
            InvalidValue.within("levelAfterSpan" + (i + 1), level, 0, 1, Unit.PARTS_PER_MILLION);
        }
    }

    /** Length of all spans, s. */
    public double duration() {
        // added in the order of the curve, so that its last time is this to the last bit
        double sum = 0;
        for (Span span : spans) {
            sum += span.duration();
        }
        return sum;
    }

    /** Level at a time from the beginning, as a fraction; time in s, not after the end. */
    public double levelAt(double time) {
        InvalidValue.within("time", time, 0, duration(), Unit.NUMBER);
        double level = start;
        double left = time;
        for (Span span : spans) {
            if (left <= span.duration()) {
                return after(span, level, left);
            }
            level = after(span, level, span.duration());
            left -= span.duration();
        }
        // only rounding of the sum of the spans leads here
        return level;
    }

    /** Levels at the end of each span, as fractions. */
    public List<Double> levelsAtEnds() {
        List<Double> ends = new ArrayList<>();
        double level = start;
        for (Span span : spans) {
            level = after(span, level, span.duration());
            ends.add(level);
        }
        return ends;
    }

    /** Where each span would settle if it lasted, as a fraction; nothing for one without any air, which never settles. */
    public List<OptionalDouble> steadyLevels() {
        return spans.stream()
                .map(s -> flow(s) < MIN_FLOW ? OptionalDouble.empty() : OptionalDouble.of(need(s).co2Steady(flow(s))))
                .toList();
    }

    /** Highest level, as a fraction. */
    public double highest() {
        // within a span the level only rises or only falls
        return levelsAtEnds().stream().mapToDouble(Double::doubleValue).reduce(start, Math::max);
    }

    /** When a limit is first reached, s from the beginning; nothing if it never is. Limit as a fraction. */
    public OptionalDouble firstReaches(double limit) {
        InvalidValue.within("limit", limit, 0, 1, Unit.PARTS_PER_MILLION);
        double level = start;
        double begin = 0;
        for (Span span : spans) {
            OptionalDouble reached = need(span).secondsToReach(limit, level, flow(span));
            if (reached.isPresent() && reached.getAsDouble() <= span.duration()) {
                return OptionalDouble.of(begin + reached.getAsDouble());
            }
            level = after(span, level, span.duration());
            begin += span.duration();
        }
        return OptionalDouble.empty();
    }

    /** Points for a chart: the beginning, the end of every span, and so many equal parts of each span. */
    public List<Sample> curve(int partsOfSpan) {
        InvalidValue.within("partsOfSpan", partsOfSpan, 1, 10_000);
        List<Sample> samples = new ArrayList<>();
        samples.add(new Sample(0, start));
        double level = start;
        double begin = 0;
        for (Span span : spans) {
            for (int i = 1; i <= partsOfSpan; i++) {
                double since = span.duration() * ((double) i / partsOfSpan);
                samples.add(new Sample(begin + since, after(span, level, since)));
            }
            level = after(span, level, span.duration());
            begin += span.duration();
        }
        return samples;
    }

    private double after(Span span, double level, double seconds) {
        return need(span).co2After(level, flow(span), seconds);
    }

    private double flow(Span span) {
        return span.flow() + leakage;
    }

    private Need need(Span span) {
        return new Need(volume, span.people() * co2PerPerson, outdoorCo2, 0, AIR);
    }
}
