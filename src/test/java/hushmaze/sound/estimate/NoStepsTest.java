package hushmaze.sound.estimate;

import static hushmaze.sound.SampleBoxes.SOUND_SPEED;
import static hushmaze.sound.SampleBoxes.opening;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.project.Opening;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.SolidBuilder;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Property: no size of a box is at a step of the estimate. A fifth of a millimetre, less than a saw keeps to, changes no band by more than
 * half a decibel; what a box is rated by must not hang on which side of a limit in a table it lies.
 */
class NoStepsTest {
    private static final double STEP = 0.0002;
    private static final int STEPS = 30;
    private static final int BOXES = 60;

    private final EstimateTables tables = new EstimateTables(SOUND_SPEED);

    private enum Size {
        WIDTH,
        HEIGHT,
        LENGTH,
        GAP
    }

    @ParameterizedTest
    @EnumSource(Size.class)
    void aFifthOfAMillimetreIsWorthLittle(Size size) {
        RandomBoxes boxes = new RandomBoxes(23);
        int compared = 0;
        for (int n = 0; n < BOXES; n++) {
            Box box = boxes.next();
            Optional<Spectrum> before = Optional.empty();
            for (int i = -STEPS; i <= STEPS; i++) {
                Optional<Spectrum> loss = loss(box, size, i * STEP);
                if (loss.isPresent() && before.isPresent()) {
                    compare(before.get(), loss.get(), box + ", " + size + " changed by " + i * STEP + " m");
                    compared++;
                }
                before = loss;
            }
        }
        assertThat(compared).isGreaterThan(BOXES * STEPS);
    }

    private static void compare(Spectrum one, Spectrum other, String what) {
        for (int band = 0; band < one.size(); band++) {
            assertThat(other.value(band))
                    .as("band %d of %s", band, what)
                    .isCloseTo(one.value(band), within(0.5 + 0.005 * one.value(band)));
        }
    }

    /** Empty where there is no such box. */
    private Optional<Spectrum> loss(Box box, Size size, double more) {
        try {
            Box changed = box.sized(
                    box.passes(),
                    box.clearWidth() + (size == Size.WIDTH ? more : 0),
                    box.clearHeight() + (size == Size.HEIGHT ? more : 0),
                    box.clearLength() + (size == Size.LENGTH ? more : 0),
                    box.turnGap() + (size == Size.GAP ? more : 0),
                    box.liner(),
                    box.openingPort(),
                    box.roomPort());
            return Optional.of(PathEstimate.of(SolidBuilder.build(changed), opening(Opening.Kind.REGISTER), tables)
                    .thirds());
        } catch (InvalidValue noSuchBox) {
            return Optional.empty();
        }
    }
}
