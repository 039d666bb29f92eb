package hushmaze.app.model;

import hushmaze.project.PathReadings;
import hushmaze.project.Project;
import hushmaze.project.RoomReadings;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** What was measured of the air: through the path looked at, across the room's door, and how stale it became. */
public final class MeasuredAir {
    private static final Field FLOW = Field.of("path.readings");
    private static final Field ROOM = Field.of("readings");
    /** How long people are in the room until somebody says otherwise, minutes. */
    private static final int USUAL_MINUTES = 60;

    private final EditModel edit;

    MeasuredAir(EditModel edit) {
        this.edit = edit;
    }

    /** What was measured of the path looked at. */
    public PathReadings path() {
        return edit.project().paths().get(edit.path()).readingsOrNone();
    }

    /** What was measured of the room. */
    public RoomReadings room() {
        return edit.project().readingsOrNone();
    }

    /** An amount as its entry shows it; nothing for an absent one. */
    public String shown(Double si, Unit unit) {
        return EntryText.show(si, unit, edit.project().units());
    }

    private Optional<String> changeFlow(Double flow) {
        int at = edit.path();
        return edit.change(FLOW, Texts.of("entry.measured.flow"), Texts.of("edit.measured.flow"), p -> {
            VentPath old = p.paths().get(at);
            return p.withPath(at, old.measured(old.readingsOrNone().withFlow(flow, null)));
        });
    }

    /** Takes the flow as it was typed; a blank for none. */
    public Optional<String> enterFlow(String text) {
        return entered("measured.flow", text, Unit.LITRE_PER_SECOND, this::changeFlow);
    }

    /** Takes the pressure across the door as it was typed; a blank for none. */
    public Optional<String> enterDoorPressure(String text) {
        return entered(
                "measured.door",
                text,
                Unit.PASCAL,
                value -> changeRoom(r ->
                        new RoomReadings(value, r.co2(), r.co2Minutes(), r.co2People(), r.co2Start(), r.source())));
    }

    /** Takes the carbon dioxide as it was typed; a blank for none. The first time an hour with everybody is assumed. */
    public Optional<String> enterCo2(String text) {
        return entered(
                "measured.co2",
                text,
                Unit.PARTS_PER_MILLION,
                value -> changeRoom(r -> new RoomReadings(
                        r.doorPressure(),
                        value,
                        value == null ? null : r.co2Minutes() == null ? Integer.valueOf(USUAL_MINUTES) : r.co2Minutes(),
                        value == null
                                ? null
                                : r.co2People() == null
                                        ? Integer.valueOf(edit.project().room().people())
                                        : r.co2People(),
                        value == null ? null : r.co2Start(),
                        r.source())));
    }

    /** Takes how long people had been there as it was typed, in minutes. */
    public Optional<String> enterMinutes(String text) {
        return whole(
                "measured.minutes",
                text,
                value -> changeRoom(r ->
                        new RoomReadings(r.doorPressure(), r.co2(), value, r.co2People(), r.co2Start(), r.source())));
    }

    /** Takes how many people had been there as it was typed. */
    public Optional<String> enterPeople(String text) {
        return whole(
                "measured.people",
                text,
                value -> changeRoom(r ->
                        new RoomReadings(r.doorPressure(), r.co2(), r.co2Minutes(), value, r.co2Start(), r.source())));
    }

    /** Takes the carbon dioxide at the beginning as it was typed; a blank for that of the air supplied. */
    public Optional<String> enterStart(String text) {
        return entered(
                "measured.start",
                text,
                Unit.PARTS_PER_MILLION,
                value -> changeRoom(r ->
                        new RoomReadings(r.doorPressure(), r.co2(), r.co2Minutes(), r.co2People(), value, r.source())));
    }

    private Optional<String> changeRoom(UnaryOperator<RoomReadings> change) {
        return edit.change(
                ROOM,
                Texts.of("measured.air"),
                Texts.of("edit.measured.air"),
                p -> p.measured(change.apply(p.readingsOrNone())));
    }

    private Optional<String> entered(String key, String text, Unit unit, Function<Double, Optional<String>> take) {
        if (text.isBlank()) {
            return take.apply(null);
        }
        Project project = edit.project();
        try {
            return take.apply(EntryText.parse(key, text, unit, project.units()));
        } catch (InvalidValue e) {
            return Optional.of(Refusal.sentence(e, Texts.of("entry." + key)));
        }
    }

    private Optional<String> whole(String key, String text, Function<Integer, Optional<String>> take) {
        return entered(key, text, Unit.NUMBER, value -> {
            if (value == null || value != Math.rint(value) || Math.abs(value) > Integer.MAX_VALUE) {
                return Optional.of(Texts.of(
                        "entry.refused",
                        Texts.of("entry." + key),
                        "\"" + text.strip() + "\"",
                        Texts.of("entry.wholeNumber")));
            }
            return take.apply(value.intValue());
        });
    }
}
