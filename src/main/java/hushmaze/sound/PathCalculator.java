package hushmaze.sound;

import hushmaze.material.Liner;
import hushmaze.project.Opening;
import hushmaze.solid.Solid;
import hushmaze.sound.estimate.EstimateTables;
import hushmaze.sound.estimate.PathEstimate;
import hushmaze.sound.porous.FacedLiner;
import hushmaze.sound.porous.JohnsonLiner;
import hushmaze.sound.porous.LinerModel;
import hushmaze.sound.porous.MikiLiner;
import hushmaze.sound.quick.QuickResult;
import hushmaze.sound.quick.QuickTables;
import hushmaze.sound.quick.QuickWave;
import hushmaze.sound.section.WaveResult;
import hushmaze.work.Kept;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/**
 * Runs estimate and quick wave for many boxes in the same air, and keeps what they have in common.
 */
public final class PathCalculator {
    /** For the tables of a box without liner, which do not use it, Pa·s/m². */
    private static final double UNUSED_RESISTIVITY = 20000;

    /** Models of liners whose tables are kept: a box has four. */
    private static final int MODELS = 32;

    private static final int MODELS_OF_FEW = 12;

    private final double soundSpeed;
    private final BiFunction<LinerModel, Double, QuickTables> makes;
    private final EstimateTables estimates;
    private final Kept<LinerModel, QuickTables> tables;

    /** @param soundSpeed m/s */
    public PathCalculator(double soundSpeed) {
        this(soundSpeed, MODELS, QuickTables::new);
    }

    private PathCalculator(double soundSpeed, int models, BiFunction<LinerModel, Double, QuickTables> makes) {
        this.soundSpeed = soundSpeed;
        this.makes = makes;
        this.estimates = new EstimateTables(soundSpeed);
        this.tables = new Kept<>(models);
    }

    /** One for a few boxes at a time, over a long while: less is kept. */
    public static PathCalculator ofFew(double soundSpeed) {
        return new PathCalculator(soundSpeed, MODELS_OF_FEW, QuickTables::ofFew);
    }

    /** One for the differences of a few boxes that hardly differ: it takes the quick wave at fewer frequencies. */
    public static PathCalculator ofDifferences(double soundSpeed) {
        return new PathCalculator(soundSpeed, MODELS_OF_FEW, QuickTables::ofDifferences);
    }

    /** How many of the quick wave's figures are wanted. */
    public enum Quick {
        /** None: the estimate alone, in microseconds. */
        NONE,
        /** With the liner as given. */
        PLAIN,
        /** Also with the softest and stiffest liner it may be, and with another model of it. */
        VARIANTS
    }

    /**
     * The path of a box.
     *
     * @param solid of the box
     * @param opening the bare opening
     * @param wanted how much of the quick wave
     * @param wave its wave solution, which takes long and is made elsewhere; null if it was not run
     */
    public PathMethods methods(Solid solid, Opening opening, Quick wanted, WaveResult wave) {
        PathEstimate estimate = PathEstimate.of(solid, opening, estimates);
        if (wanted == Quick.NONE) {
            return new PathMethods(estimate, null, List.of(), wave);
        }
        Liner liner = solid.box().liner();
        LinerModel plain = liner == null ? new MikiLiner(UNUSED_RESISTIVITY) : FacedLiner.miki(liner);
        if (liner == null || wanted == Quick.PLAIN) {
            return new PathMethods(estimate, quick(solid, plain), List.of(), wave);
        }
        List<QuickResult> all = Stream.of(
                        plain,
                        FacedLiner.of(liner, liner.flowResistivityLow(), MikiLiner::new),
                        FacedLiner.of(liner, liner.flowResistivityHigh(), MikiLiner::new),
                        FacedLiner.of(liner, liner.flowResistivity(), JohnsonLiner::new))
                .parallel()
                .map(model -> quick(solid, model))
                .toList();
        return new PathMethods(estimate, all.get(0), all.subList(1, all.size()), wave);
    }

    private QuickResult quick(Solid solid, LinerModel model) {
        return QuickWave.of(solid, tables.get(model, this::tables));
    }

    private QuickTables tables(LinerModel model) {
        return makes.apply(model, soundSpeed);
    }
}
