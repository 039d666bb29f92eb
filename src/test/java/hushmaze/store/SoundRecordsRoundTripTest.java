package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import hushmaze.project.DuctRun;
import hushmaze.project.FanSound;
import hushmaze.project.MouthPosition;
import hushmaze.project.Outgoing;
import hushmaze.project.SharedDuct;
import hushmaze.project.Target;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Property: records of sources and receivers come back from a file the same to the last bit. Seeded. */
class SoundRecordsRoundTripTest {
    private static final int TIMES = 200;

    private final Random random = new Random(20261126);

    @Test
    void fans() {
        for (int i = 0; i < TIMES; i++) {
            assertSame(new FanSound("fan " + i, choice(FanSound.Side.values()), levels(), "test"), FanSound.class);
        }
    }

    @Test
    void receivers() {
        for (int i = 0; i < TIMES; i++) {
            Outgoing.Receiver receiver = choice(Outgoing.Receiver.values());
            boolean needed = receiver == Outgoing.Receiver.ROOM || random.nextBoolean();
            assertSame(
                    new Outgoing(
                            levels(),
                            receiver,
                            choice(MouthPosition.values()),
                            needed ? areas() : null,
                            between(0.1, 1000),
                            target(),
                            "test"),
                    Outgoing.class);
        }
    }

    @Test
    void sharedDucts() {
        for (int i = 0; i < TIMES; i++) {
            assertSame(
                    new SharedDuct(
                            "hall",
                            levels(),
                            random.nextBoolean() ? levels() : null,
                            between(0.0009, 9),
                            choice(MouthPosition.values()),
                            areas(),
                            between(0.1, 100),
                            run(),
                            target(),
                            "test"),
                    SharedDuct.class);
        }
    }

    @Test
    void unitsAreInTheNames() {
        JsonNode node = RecordWriter.write(run());
        assertThat(node.has("lengthM")).isTrue();
        assertThat(node.has("widthMm")).isTrue();
        assertThat(node.has("branchShares")).isTrue();
    }

    @Test
    void aMistakeInAFileIsNamedByItsField() {
        String text = "{\"kind\": \"ROUND_SHEET\", \"lengthM\": 3, \"widthMm\": 200, \"linerThicknessMm\": 25,"
                + " \"branchShares\": []}";
        Problems problems = new Problems("test.json");
        new RecordReader(problems).read(JsonText.parse("test.json", text), DuctRun.class, "run");
        assertThat(problems.count()).isEqualTo(1);
        assertThatThrownBy(problems::throwIfAny)
                .isInstanceOf(UnreadableFile.class)
                .hasMessageContaining("run.linerThicknessMm");
    }

    private static <T extends Record> void assertSame(T record, Class<T> type) {
        String text = JsonText.print(RecordWriter.write(record));
        Problems problems = new Problems("test.json");
        T read = new RecordReader(problems).read(JsonText.parse("test.json", text), type, "");
        problems.throwIfAny();
        assertThat(read).isEqualTo(record);
        assertThat(JsonText.print(RecordWriter.write(read))).isEqualTo(text);
    }

    private DuctRun run() {
        DuctRun.Kind kind = choice(DuctRun.Kind.values());
        boolean round = kind == DuctRun.Kind.ROUND_SHEET;
        List<Double> shares = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            shares.add(between(0.001, 1));
        }
        return new DuctRun(
                kind,
                between(0, 200),
                between(0.03, 3),
                round && random.nextBoolean() ? null : Double.valueOf(between(0.03, 3)),
                round || random.nextBoolean() ? null : Double.valueOf(between(0.003, 0.2)),
                shares);
    }

    private Target target() {
        return random.nextBoolean()
                ? new Target(Target.Kind.NC, between(15, 70), null, "test")
                : new Target(Target.Kind.SPECTRUM, null, levels(), "test");
    }

    private List<Double> areas() {
        List<Double> areas = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            areas.add(between(0.05, 5000));
        }
        return areas;
    }

    private Spectrum levels() {
        return Spectrum.of(choice(BandSet.values()), i -> between(-30, 160));
    }

    private double between(double low, double high) {
        return Math.min(high, low + random.nextDouble() * (high - low));
    }

    private <T> T choice(T[] values) {
        return values[random.nextInt(values.length)];
    }
}
