package hushmaze.project;

import hushmaze.quantity.BandLevels;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * What was measured of one vent path, before and after its box was fitted.
 *
 * @param levels readings of all rounds, differently named within a round; none if nothing is said
 * @param flow air through the grille with the box, m³/s; absent if it was not measured
 * @param flowSource how it was measured; absent when it was not
 */
public record PathReadings(
        @MayBeAbsent List<Reading> levels,
        @MayBeAbsent @Measured(Unit.LITRE_PER_SECOND) Double flow,
        @MayBeAbsent String flowSource) {
    /** Most readings of one path. */
    public static final int MAX_READINGS = 48;
    /** Nothing measured. */
    public static final PathReadings NONE = new PathReadings(List.of(), null, null);

    public PathReadings {
        levels = levels == null ? List.of() : List.copyOf(levels);
        if (levels.size() > MAX_READINGS) {
            throw new InvalidValue("levels", levels.size() + " readings", "at most " + MAX_READINGS + " readings", "");
        }
        if (levels.stream().map(r -> r.round() + r.name()).distinct().count() != levels.size()) {
            throw new InvalidValue(
                    "levels", "two readings of one name in a round", "differently named readings in a round", "");
        }
        boolean some = levels.stream().anyMatch(r -> r.scale() == Reading.Scale.FULL_SCALE);
        boolean all = levels.stream().allMatch(r -> r.scale() == Reading.Scale.FULL_SCALE);
        if (some && !all) {
            throw new InvalidValue(
                    "levels",
                    "recordings without calibration beside levels that count from something else",
                    "all with calibration, or all recordings without",
                    "");
        }
        if (flow != null) {
            InvalidValue.within("flow", flow, 0, 10, Unit.LITRE_PER_SECOND);
        }
        if (flowSource != null) {
            InvalidValue.text("flowSource", flowSource, 400);
        }
    }

    /** Levels of one round, in their order. */
    public List<BandLevels> of(Reading.Round round) {
        return levels.stream()
                .filter(r -> r.round() == round)
                .map(Reading::levels)
                .toList();
    }

    /** Whether there is a reading in a round. */
    public boolean has(Reading.Round round) {
        return levels.stream().anyMatch(r -> r.round() == round);
    }

    /** Whether readings without the box can be held against readings with it. */
    public boolean comparable() {
        return has(Reading.Round.WITHOUT_BOX) && has(Reading.Round.WITH_BOX);
    }

    /** Whether nothing was measured. */
    public boolean empty() {
        return levels.isEmpty() && flow == null;
    }

    /**
     * What the levels count from; as given as soon as one reading is.
     *
     * @throws IllegalStateException if there is no reading
     */
    public Reading.Scale scale() {
        if (levels.isEmpty()) {
            throw new IllegalStateException("no readings");
        }
        boolean given = levels.stream().anyMatch(r -> r.scale() == Reading.Scale.AS_GIVEN);
        return given ? Reading.Scale.AS_GIVEN : levels.get(0).scale();
    }

    /** The same and one more reading, its name with a number after it where its round has that name already. */
    public PathReadings and(Reading more) {
        String name = more.name();
        for (int number = 2; isTaken(more.round(), name); number++) {
            name = more.name() + " (" + number + ")";
        }
        List<Reading> others = new ArrayList<>(levels);
        others.add(more.named(name));
        return withLevels(others);
    }

    private boolean isTaken(Reading.Round round, String name) {
        return levels.stream().anyMatch(r -> r.round() == round && r.name().equals(name));
    }

    /** The same with other readings of levels. */
    public PathReadings withLevels(List<Reading> others) {
        return new PathReadings(others, flow, flowSource);
    }

    /** The same with another flow, m³/s, and how it was measured; null for none. */
    public PathReadings withFlow(Double other, String otherSource) {
        return new PathReadings(levels, other, otherSource);
    }
}
