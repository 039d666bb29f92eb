package hushmaze.material;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * A porous, sound-absorbing lining.
 *
 * @param name as bought
 * @param thickness m (3 mm to 200 mm)
 * @param density kg/m³
 * @param flowResistivity airflow resistivity, Pa·s/m², the value to compute with
 * @param flowResistivityLow lower end of what the material may have, Pa·s/m²
 * @param flowResistivityHigh upper end of what the material may have, Pa·s/m²
 * @param roughness equivalent sand roughness of the face along the air, m
 * @param source where the numbers are from
 * @param facing cloth or film over its face; may be absent, then bare
 */
public record Liner(
        String name,
        @Measured(Unit.MILLIMETRE) double thickness,
        @Measured(Unit.KILOGRAM_PER_CUBIC_METRE) double density,
        @Measured(Unit.PASCAL_SECOND_PER_SQUARE_METRE) double flowResistivity,
        @Measured(Unit.PASCAL_SECOND_PER_SQUARE_METRE) double flowResistivityLow,
        @Measured(Unit.PASCAL_SECOND_PER_SQUARE_METRE) double flowResistivityHigh,
        @Measured(Unit.MILLIMETRE) double roughness,
        String source,
        @MayBeAbsent Facing facing) {
    private static final double MIN_RESISTIVITY = 500;
    private static final double MAX_RESISTIVITY = 500_000;

    public Liner {
        InvalidValue.text("name", name, 80);
        InvalidValue.within("thickness", thickness, 0.003, 0.2, Unit.MILLIMETRE);
        InvalidValue.within("density", density, 3, 400, Unit.KILOGRAM_PER_CUBIC_METRE);
        Unit unit = Unit.PASCAL_SECOND_PER_SQUARE_METRE;
        InvalidValue.within("flowResistivity", flowResistivity, MIN_RESISTIVITY, MAX_RESISTIVITY, unit);
        InvalidValue.within("flowResistivityLow", flowResistivityLow, MIN_RESISTIVITY, flowResistivity, unit);
        InvalidValue.within("flowResistivityHigh", flowResistivityHigh, flowResistivity, MAX_RESISTIVITY, unit);
        InvalidValue.within("roughness", roughness, 0, 0.01, Unit.MILLIMETRE);
        InvalidValue.text("source", source, 400);
    }

    /** A liner without facing. */
    public Liner(
            String name,
            double thickness,
            double density,
            double flowResistivity,
            double flowResistivityLow,
            double flowResistivityHigh,
            double roughness,
            String source) {
        this(
                name,
                thickness,
                density,
                flowResistivity,
                flowResistivityLow,
                flowResistivityHigh,
                roughness,
                source,
                null);
    }

    /**
     * The same liner of another flow resistivity.
     *
     * @param likely to compute with, Pa·s/m²
     * @param low lower end, Pa·s/m²
     * @param high upper end, Pa·s/m²
     * @param from where the numbers are from
     */
    public Liner resisting(double likely, double low, double high, String from) {
        return new Liner(name, thickness, density, likely, low, high, roughness, from, facing);
    }

    /** The same under another name. */
    public Liner named(String other) {
        return with(other, thickness, facing);
    }

    /** The same liner of another thickness in m. */
    public Liner thick(double other) {
        return with(name, other, facing);
    }

    /** The same liner under a facing; bare if null. */
    public Liner faced(Facing other) {
        return with(name, thickness, other);
    }

    private Liner with(String otherName, double otherThickness, Facing otherFacing) {
        return new Liner(
                otherName,
                otherThickness,
                density,
                flowResistivity,
                flowResistivityLow,
                flowResistivityHigh,
                roughness,
                source,
                otherFacing);
    }

    /** Mass per area, kg/m². */
    public double massPerArea() {
        return density * thickness;
    }
}
