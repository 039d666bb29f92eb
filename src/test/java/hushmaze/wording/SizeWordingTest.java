package hushmaze.wording;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.Kind;
import hushmaze.size.PathDesigns;
import hushmaze.size.Relaxation;
import hushmaze.size.Tally;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Property: there are words for every kind of design and every limit, and figures stand in them. */
class SizeWordingTest {
    private final SizeWording words = new SizeWording(UnitSystem.METRIC);

    private static PathDesigns nothing(List<Relaxation> ways) {
        return new PathDesigns(
                0, List.of(), new Tally(1000, 200, 0, 0, 30, 0, 0, 0), null, true, PathDesigns.Shortfall.NONE, ways);
    }

    @Test
    void everyKindHasAName() {
        for (Kind kind : Kind.values()) {
            assertThat(new Wording(UnitSystem.METRIC).text("kind." + kind)).isNotBlank();
        }
    }

    @Test
    void whatBecameOfBoxesIsSaidInFigures() {
        assertThat(words.looked(new Tally(1000, 170, 20, 10, 30, 4, 3, 2)))
                .contains(
                        "1,234 boxes",
                        "1,000",
                        "170",
                        "20 were too heavy",
                        "10 took more",
                        "30",
                        "4 were judged",
                        "3 of them",
                        "2 by the wave");
    }

    /** What the target and what others hear are missed by are two figures, each with what would help. */
    @Test
    void bothLimitsOnSoundMayBeMissed() {
        PathDesigns.Shortfall both = new PathDesigns.Shortfall(1.5, 2.5);
        assertThat(both.isAny()).isTrue();
        assertThat(PathDesigns.Shortfall.NONE.isAny()).isFalse();
        assertThat(words.missed(both)).contains("1.5 dB short", "exceeds its limit by 2.5 dB");
        assertThat(words.missed(new PathDesigns.Shortfall(1.5, 0)))
                .contains("1.5 dB short")
                .doesNotContain("hear");
        assertThat(words.lessSound(both)).contains("Noise 1.5 dB less", "played or spoken in the room 2.5 dB less");
        assertThat(words.lessSound(new PathDesigns.Shortfall(0, 2.5)))
                .contains("limit on what others hear 2.5 dB higher")
                .doesNotContain("Noise");
        assertThat(words.missed(new PathDesigns.Shortfall(0, 2.5)))
                .contains("hear", "2.5 dB")
                .doesNotContain("short");
    }

    @Test
    void everyLimitThatWouldHelpIsSaid() {
        for (Relaxation.Limit limit : Relaxation.Limit.values()) {
            Relaxation way = new Relaxation(limit, 0.25, 0.5, Unit.MILLIMETRE);
            assertThat(words.ways(nothing(List.of(way))))
                    .hasSize(2)
                    .last()
                    .asString()
                    .contains("500", "250");
        }
        assertThat(words.ways(nothing(List.of()))).hasSize(1).first().asString().startsWith("No single limit helps");
        assertThat(words.head("in", nothing(List.of()))).isEqualTo("in: no box keeps every limit.");
    }
}
