package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hushmaze.project.Envelope;
import hushmaze.project.EnvelopeElement;
import hushmaze.project.SlitMouth;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Property: an envelope written and read is the same envelope, to the last bit of every field. Seeded. */
class EnvelopeRoundTripTest {
    @Test
    void writtenAndReadIsTheSame() {
        Random random = new Random(20261203);
        for (int i = 0; i < 200; i++) {
            Envelope envelope = envelope(random);
            String text = JsonText.print(RecordWriter.write(envelope));
            Envelope read = read(text);
            assertThat(read).isEqualTo(envelope);
            assertThat(JsonText.print(RecordWriter.write(read))).isEqualTo(text);
        }
    }

    @Test
    void namesInTheFileCarryTheirUnits() {
        Envelope envelope = new Envelope(
                List.of(
                        EnvelopeElement.surface("wall", 10, Spectrum.flat(BandSet.OCTAVE, 40), "test"),
                        EnvelopeElement.gap("gap", 0.002, 4, 0.12, SlitMouth.ALONG_EDGE, "test")),
                null,
                null);
        assertThat(JsonText.print(RecordWriter.write(envelope)))
                .contains("\"areaM2\": 10", "\"gapWidthMm\": 2", "\"gapLengthM\": 4", "\"gapDepthMm\": 120")
                .contains("\"gapMouth\": \"ALONG_EDGE\"")
                .doesNotContain("null");
    }

    @Test
    void whatIsMissingIsNamedWithItsPlace() {
        String door = "{\"name\": \"door\", \"kind\": \"SURFACE\", \"count\": 1, \"areaM2\": 2, \"source\": \"test\"}";
        assertThatThrownBy(() -> read("{\"elements\": [" + door + "]}"))
                .isInstanceOf(UnreadableFile.class)
                .hasMessageContaining("elements[0].weightedDb");
        String gap = "{\"name\": \"gap\", \"kind\": \"GAP\", \"count\": 1, \"gapWidthMm\": 1, \"source\": \"test\"}";
        assertThatThrownBy(() -> read("{\"elements\": [" + gap + "]}"))
                .isInstanceOf(UnreadableFile.class)
                .hasMessageContaining("elements[0].gapLengthM");
        assertThatThrownBy(() -> read("{\"elements\": []}"))
                .isInstanceOf(UnreadableFile.class)
                .hasMessageContaining("at least one surface");
    }

    private static Envelope read(String text) {
        Problems problems = new Problems("test");
        Envelope envelope = new RecordReader(problems).read(JsonText.parse("test", text), Envelope.class, "");
        problems.throwIfAny();
        return envelope;
    }

    private static Envelope envelope(Random random) {
        List<EnvelopeElement> elements = new ArrayList<>();
        elements.add(element(random, EnvelopeElement.Kind.SURFACE));
        for (int i = 0; i < random.nextInt(4); i++) {
            elements.add(element(random, EnvelopeElement.Kind.values()[random.nextInt(3)]));
        }
        boolean known = random.nextBoolean();
        return new Envelope(
                elements,
                known ? levels(random) : null,
                known || random.nextBoolean() ? "measured " + random.nextInt() : null);
    }

    private static EnvelopeElement element(Random random, EnvelopeElement.Kind kind) {
        boolean gap = kind == EnvelopeElement.Kind.GAP;
        boolean spectrum = random.nextBoolean();
        boolean more = random.nextBoolean();
        return new EnvelopeElement(
                "element " + random.nextInt(),
                kind,
                1 + random.nextInt(1000),
                kind == EnvelopeElement.Kind.SURFACE || more ? between(random, 1e-4, 1000) : null,
                spectrum ? levels(random) : null,
                !spectrum && !gap || more ? between(random, 0, 120) : null,
                gap || more ? between(random, 1e-6, 0.1) : null,
                gap || more ? between(random, 0.001, 200) : null,
                gap || more ? between(random, 0.001, 2) : null,
                gap || more ? SlitMouth.values()[random.nextInt(2)] : null,
                "test");
    }

    private static Spectrum levels(Random random) {
        return Spectrum.of(BandSet.values()[random.nextInt(2)], i -> between(random, -10, 120));
    }

    private static Double between(Random random, double low, double high) {
        return low + random.nextDouble() * (high - low);
    }
}
