package hushmaze.app.entry;

import hushmaze.app.entry.TypedEntry.Size;
import hushmaze.app.model.EntryText;
import hushmaze.app.model.MeasuredAir;
import hushmaze.app.model.MeasuredModel;
import hushmaze.app.model.Undoing;
import hushmaze.quantity.Unit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;

/** Makes the entries for what was measured. */
public final class MeasuredEntries {
    private final Undoing edit;
    private final MeasuredModel levels;
    private final MeasuredAir air;

    /** @param edit for undo and redo */
    public MeasuredEntries(Undoing edit, MeasuredModel levels, MeasuredAir air) {
        this.edit = edit;
        this.levels = levels;
        this.air = air;
    }

    /** Air through the path, pressure across the door, carbon dioxide. */
    public List<Entry> air() {
        BooleanSupplier gas = () -> air.room().co2() != null;
        return List.of(
                of("flow", () -> air.shown(air.path().flow(), Unit.LITRE_PER_SECOND), () -> true, air::enterFlow),
                of("door", () -> air.shown(air.room().doorPressure(), Unit.PASCAL), () -> true, air::enterDoorPressure),
                of("co2", () -> air.shown(air.room().co2(), Unit.PARTS_PER_MILLION), () -> true, air::enterCo2),
                of("minutes", () -> Objects.toString(air.room().co2Minutes(), ""), gas, air::enterMinutes),
                of("people", () -> Objects.toString(air.room().co2People(), ""), gas, air::enterPeople),
                of("start", () -> air.shown(air.room().co2Start(), Unit.PARTS_PER_MILLION), gas, air::enterStart));
    }

    /** Level of a sine at full scale. */
    public Entry offset() {
        return of("offset", () -> decibels(levels.offsetProperty().get()), () -> true, levels::enterOffset);
    }

    /** Level of the calibrator. */
    public Entry calibrator() {
        return of("calibrator", () -> decibels(levels.calibratorProperty().get()), () -> true, levels::enterCalibrator);
    }

    private static String decibels(Double level) {
        return level == null ? "" : EntryText.brief(level) + " dB";
    }

    private Entry of(
            String key, Supplier<String> shown, BooleanSupplier there, Function<String, Optional<String>> take) {
        return new TypedEntry(edit, "measured." + key, "measured." + key, Size.BESIDE, shown, there, take);
    }
}
