package hushmaze.project;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hushmaze.project.EnvelopeElement.Kind;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Property: an envelope that can be made can be saved and computed; what is missing or impossible is named. */
class EnvelopeTest {
    private static final Spectrum FORTY = Spectrum.flat(BandSet.OCTAVE, 40);
    private static final EnvelopeElement WALL = EnvelopeElement.surface("wall", 10, FORTY, "test");

    @Test
    void aSurfaceNeedsAnAreaAndALoss() {
        assertThatThrownBy(() ->
                        new EnvelopeElement("wall", Kind.SURFACE, 1, null, FORTY, null, null, null, null, null, "test"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("area");
        assertThatThrownBy(() ->
                        new EnvelopeElement("wall", Kind.SURFACE, 1, 10.0, null, null, null, null, null, null, "test"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("weighted");
    }

    @Test
    void aGapNeedsItsSizes() {
        assertThatThrownBy(
                        () -> new EnvelopeElement("gap", Kind.GAP, 1, null, null, null, 0.001, 1.0, null, null, "test"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("gapDepth");
        assertThatThrownBy(() -> EnvelopeElement.gap("gap", 0.2, 1, 0.1, SlitMouth.IN_SURFACE, "test"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("gapWidth")
                .hasMessageContaining("100 mm");
    }

    @Test
    void whatIsNotNeededMustBeAValueAllTheSame() {
        assertThatThrownBy(() -> new EnvelopeElement(
                        "wall", Kind.SURFACE, 1, 10.0, FORTY, Double.NaN, null, null, null, null, "test"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("weighted");
        Spectrum silent = Spectrum.flat(BandSet.OCTAVE, Double.POSITIVE_INFINITY);
        assertThatThrownBy(() -> EnvelopeElement.small("vent", 1, silent, "test"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("loss");
    }

    @Test
    void anEnvelopeNeedsASurface() {
        EnvelopeElement vent = EnvelopeElement.small("vent", 1, FORTY, "test");
        assertThatThrownBy(() -> new Envelope(List.of(vent), null, null))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("at least one surface");
        assertThatThrownBy(() -> new Envelope(Collections.nCopies(101, WALL), null, null))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("at most 100");
    }

    @Test
    void aLevelNeedsItsSource() {
        assertThatThrownBy(() -> new Envelope(List.of(WALL), FORTY, null))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("outsideSource");
    }
}
