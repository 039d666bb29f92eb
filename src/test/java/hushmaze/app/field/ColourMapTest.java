package hushmaze.app.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Property: levels get lighter evenly, pressures are as light on either side, and neighbours can be told apart without seeing hues.
 * Lightness is worked out from the pixels alone: red, green and blue made linear by IEC 61966-2-1, Y = 0.2126 R + 0.7152 G + 0.0722 B, L* =
 * 116 Y^(1/3) - 16 (CIE 1976).
 */
class ColourMapTest {
    /** Pixels have whole numbers: what that may do to L*. */
    private static final double ROUNDING = 0.6;

    @Test
    void levelsGetLighterEvenly() {
        ColourMap map = ColourMap.level();
        double dark = lightness(map.at(0));
        double light = lightness(map.at(1));
        assertThat(dark).isLessThan(20);
        assertThat(light).isGreaterThan(90);
        double before = dark - 1e-9;
        for (int i = 0; i < ColourMap.SIZE; i++) {
            double share = i / (ColourMap.SIZE - 1.0);
            double now = lightness(map.at(share));
            assertThat(now).as("share %s", share).isCloseTo(dark + share * (light - dark), within(ROUNDING));
            assertThat(now).isGreaterThan(before - ROUNDING / 4);
            before = now;
        }
    }

    @Test
    void tenStepsOfLevelDifferInLightness() {
        ColourMap map = ColourMap.level();
        for (int i = 0; i < 9; i++) {
            assertThat(lightness(map.at((i + 1) / 9.0)) - lightness(map.at(i / 9.0)))
                    .isGreaterThan(7);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {95, 24})
    void pressuresAreAsLightOnEitherSideAndGreyInTheMiddle(double still) {
        ColourMap map = ColourMap.pressure(still);
        double before = Double.NaN;
        for (int i = 0; i <= 127; i++) {
            double away = i / 127.0;
            double thin = lightness(map.at(0.5 - away / 2));
            double dense = lightness(map.at(0.5 + away / 2));
            assertThat(thin).isCloseTo(dense, within(1.2));
            if (!Double.isNaN(before)) {
                assertThat(still > 50 ? before - dense : dense - before).isGreaterThan(-ROUNDING);
            }
            before = dense;
        }
        int middle = map.at(0.5);
        assertThat(lightness(middle)).isCloseTo(still, within(1.0));
        assertThat(part(middle, 16) - part(middle, 0)).isBetween(-6, 6);
        assertThat(part(map.at(0), 0)).isGreaterThan(part(map.at(0), 16) + 50);
        assertThat(part(map.at(1), 16)).isGreaterThan(part(map.at(1), 0) + 50);
    }

    @Test
    void sharesBeyondTheEndsHaveTheColoursOfTheEnds() {
        ColourMap map = ColourMap.level();
        assertThat(map.at(-3)).isEqualTo(map.at(0));
        assertThat(map.at(7)).isEqualTo(map.at(1)).isNotEqualTo(map.at(0));
    }

    private static int part(int argb, int shift) {
        return argb >> shift & 0xff;
    }

    private static double lightness(int argb) {
        double y = 0.2126 * linear(part(argb, 16)) + 0.7152 * linear(part(argb, 8)) + 0.0722 * linear(part(argb, 0));
        return y > 216.0 / 24389 ? 116 * Math.cbrt(y) - 16 : y * 24389 / 27;
    }

    private static double linear(int part) {
        double s = part / 255.0;
        return s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
    }
}
