package hushmaze.sound.porous;

import hushmaze.material.Facing;
import hushmaze.material.Liner;
import hushmaze.quantity.InvalidValue;
import java.util.function.DoubleFunction;

/**
 * A liner under a limp cloth or film.
 *
 * <p>Formula: Z = jωm for a film, Z = 1 / (1/R + 1/(jωm)) for a cloth: it lets air through and moves, too. In units of the impedance
 * of air at 20 °C and 101,325 Pa, {@value #AIR} Pa·s/m, to which the liner's model is fitted as well.
 *
 * <p>Symbols: m mass per area in kg/m²; R airflow resistance in Pa·s/m; ω = 2πf in 1/s.
 *
 * <p>Source: limp sheet and Darcy's law for a thin layer; that both ways are side by side is textbook (resistive sheets that are free
 * to move), from memory.
 *
 * <p>Range: a facing that lies loose, or is glued in dots: one that is stretched over a frame, or glued all over to a stiff liner, moves
 * less, and as a film reflects more.
 *
 * <p>Accuracy: that of m and R.
 *
 * @param bare model of the liner
 * @param facing over its face
 */
public record FacedLiner(LinerModel bare, Facing facing) implements LinerModel {
    private static final double AIR = 413.3;

    public FacedLiner {
        InvalidValue.present("bare", bare);
        InvalidValue.present("facing", facing);
    }

    /** A liner with its own flow resistivity after Miki, under its facing if it has one. */
    public static LinerModel miki(Liner liner) {
        return of(liner, liner.flowResistivity(), MikiLiner::new);
    }

    /**
     * A liner as some model has it, under its facing if it has one.
     *
     * @param resistivity of the liner, Pa·s/m²
     * @param model of the liner by its resistivity
     */
    public static LinerModel of(Liner liner, double resistivity, DoubleFunction<LinerModel> model) {
        LinerModel bare = model.apply(resistivity);
        return liner.facing() == null ? bare : new FacedLiner(bare, liner.facing());
    }

    @Override
    public Complex impedanceRatio(double frequency) {
        return bare.impedanceRatio(frequency);
    }

    @Override
    public Complex wavenumberRatio(double frequency) {
        return bare.wavenumberRatio(frequency);
    }

    @Override
    public Complex facingRatio(double frequency) {
        Complex moving = new Complex(0, 2 * Math.PI * frequency * facing.massPerArea() / AIR);
        if (facing.isFilm()) {
            return moving;
        }
        Complex through = new Complex(facing.flowResistance() / AIR, 0);
        return moving.times(through).dividedBy(moving.plus(through));
    }

    @Override
    public boolean faced() {
        return true;
    }
}
