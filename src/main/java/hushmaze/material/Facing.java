package hushmaze.material;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * A limp cloth, tissue or film over the face of a liner, towards the air.
 *
 * @param name as bought
 * @param massPerArea kg/m²
 * @param flowResistance airflow resistance, Pa·s/m; absent for a film, which lets no air through
 * @param source where the numbers are from
 */
public record Facing(
        String name,
        @Measured(Unit.GRAM_PER_SQUARE_METRE) double massPerArea,
        @MayBeAbsent @Measured(Unit.PASCAL_SECOND_PER_METRE) Double flowResistance,
        String source) {
    public Facing {
        InvalidValue.text("name", name, 80);
        InvalidValue.within("massPerArea", massPerArea, 0.005, 2, Unit.GRAM_PER_SQUARE_METRE);
        if (flowResistance != null) {
            InvalidValue.within("flowResistance", flowResistance, 1, 10_000, Unit.PASCAL_SECOND_PER_METRE);
        }
        InvalidValue.text("source", source, 400);
    }

    /** Whether it lets no air through. */
    public boolean isFilm() {
        return flowResistance == null;
    }
}
