package hushmaze.air.need;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.air.AirState;
import hushmaze.air.Need;
import hushmaze.air.need.Co2Course.Sample;
import hushmaze.air.need.Co2Course.Span;
import hushmaze.quantity.InvalidValue;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> and <em>property</em> tests of carbon dioxide over a timetable. */
class Co2CourseTest {
    private static final double PERSON = 5.2e-6;
    private static final double OUTDOOR = 420e-6;

    private static Co2Course course(double leakage, Span... spans) {
        return new Co2Course(30, PERSON, OUTDOOR, OUTDOOR, leakage, List.of(spans));
    }

    /** Validation: two people, 30 m³, computed independently from the mass balance; 15, 30, 60 and 120 minutes, ppm. */
    @ParameterizedTest(name = "{0} L/s")
    @CsvSource({
        "5, 2500, 710, 959, 1358, 1874",
        "10, 1460, 690, 889, 1147, 1366",
        "15, 1113, 671, 831, 999, 1094",
        "20, 940, 655, 783, 893, 936",
    })
    void carbonDioxide(double litres, double steady, double t15, double t30, double t60, double t120) {
        // a fifth of the air leaks in
        Co2Course course = course(0.2 * litres / 1000, new Span(7200, 2, 0.8 * litres / 1000));
        assertThat(course.steadyLevels().get(0).orElseThrow() * 1e6).isCloseTo(steady, within(0.51));
        double[] expected = {t15, t30, t60, t120};
        int[] minutes = {15, 30, 60, 120};
        for (int i = 0; i < expected.length; i++) {
            assertThat(course.levelAt(60.0 * minutes[i]) * 1e6).isCloseTo(expected[i], within(0.51));
        }
        assertThat(course.highest() * 1e6).isCloseTo(t120, within(0.51));
    }

    /**
     * Validation: worked example of a reference on concentration in rooms (read): 100 people at 0.05 m³/h, 500 m³, one air
     * change an hour, one hour, clean at the start and at the inlet: 0.006 m³/m³, exactly 0.00632.
     */
    @Test
    void cinema() {
        Co2Course cinema = new Co2Course(500, 0.05 / 3600, 0, 0, 0, List.of(new Span(3600, 100, 500 / 3600.0)));
        assertThat(cinema.levelAt(3600)).isCloseTo(0.00632, within(6e-6));
    }

    /** Validation, by hand: sealed +1248 ppm an hour, so 1000 ppm after 1673 s and 1500 ppm after 3115 s. */
    @Test
    void fanOff() {
        Co2Course course = course(0, new Span(1800, 0, 0), new Span(3600, 2, 0), new Span(3600, 0, 0.5));
        assertThat(course.firstReaches(1000e-6)).hasValueCloseTo(1800 + 580.0 / 1248 * 3600, within(1.0));
        assertThat(course.firstReaches(1500e-6)).hasValueCloseTo(1800 + 1080.0 / 1248 * 3600, within(1.0));
        assertThat(course.firstReaches(1700e-6)).isEmpty();
        assertThat(course.firstReaches(400e-6)).hasValue(0);
        assertThat(course.highest() * 1e6).isCloseTo(1668, within(0.51));
        assertThat(course.steadyLevels().get(1)).isEmpty();
        assertThat(course.steadyLevels().get(2)).hasValueCloseTo(OUTDOOR, within(1e-12));
        assertThat(course.levelAt(course.duration())).isCloseTo(OUTDOOR, within(1e-9));
    }

    private static List<Span> timetable(Random random) {
        List<Span> spans = new ArrayList<>();
        int n = 1 + random.nextInt(6);
        for (int i = 0; i < n; i++) {
            double flow = random.nextInt(3) == 0 ? 0 : 0.03 * random.nextDouble();
            spans.add(new Span(60 + 7200 * random.nextDouble(), random.nextInt(5), flow));
        }
        return spans;
    }

    /** Property: no jump where spans meet; splitting a span changes nothing; curve and levels are the same course. */
    @Test
    void continuous() {
        Random random = new Random(21);
        for (int i = 0; i < 300; i++) {
            List<Span> spans = timetable(random);
            double leakage = 0.002 * random.nextDouble();
            Co2Course course = new Co2Course(30, PERSON, OUTDOOR, 800e-6, leakage, spans);
            List<Span> halves = new ArrayList<>();
            double share = 0.1 + 0.8 * random.nextDouble();
            for (Span s : spans) {
                halves.add(new Span(s.duration() * share, s.people(), s.flow()));
                halves.add(new Span(s.duration() * (1 - share), s.people(), s.flow()));
            }
            Co2Course split = new Co2Course(30, PERSON, OUTDOOR, 800e-6, leakage, halves);
            double end = Math.min(course.duration(), split.duration());
            for (int k = 0; k <= 40; k++) {
                double t = Math.min(end, end * k / 40);
                assertThat(split.levelAt(t)).isCloseTo(course.levelAt(t), within(1e-12));
            }
            double begin = 0;
            for (Span s : spans.subList(0, spans.size() - 1)) {
                begin += s.duration();
                assertThat(course.levelAt(begin + 1e-3)).isCloseTo(course.levelAt(begin - 1e-3), within(1e-8));
            }
            for (Sample sample : course.curve(7)) {
                assertThat(sample.level()).isCloseTo(course.levelAt(sample.time()), within(1e-12));
                assertThat(sample.level()).isLessThanOrEqualTo(course.highest() + 1e-15);
            }
        }
    }

    /** Property: within one span it is the formula of the need, it goes towards its steady level, and limits are met. */
    @Test
    void oneSpan() {
        Random random = new Random(22);
        for (int i = 0; i < 500; i++) {
            int people = 1 + random.nextInt(4);
            double flow = 0.001 + 0.03 * random.nextDouble();
            double start = 400e-6 + 2e-3 * random.nextDouble();
            Co2Course course = new Co2Course(30, PERSON, OUTDOOR, start, 0.001, List.of(new Span(1e6, people, flow)));
            Need need = new Need(30, people * PERSON, OUTDOOR, 0, AirState.of(500, 25));
            double t = 2e4 * random.nextDouble();
            assertThat(course.levelAt(t)).isCloseTo(need.co2After(start, flow + 0.001, t), within(1e-15));
            double steady = course.steadyLevels().get(0).orElseThrow();
            assertThat(Math.abs(course.levelAt(2 * t) - steady))
                    .isLessThanOrEqualTo(Math.abs(course.levelAt(t) - steady) + 1e-15);
            assertThat(course.levelAt(1e6)).isCloseTo(steady, within(1e-9));
            OptionalDouble reached = course.firstReaches(1000e-6);
            if (start < 1000e-6) {
                assertThat(reached.isPresent()).isEqualTo(course.highest() >= 1000e-6);
                reached.ifPresent(s -> assertThat(course.levelAt(s)).isCloseTo(1000e-6, within(1e-10)));
            }
        }
    }

    @Test
    void refusesTheImpossible() {
        assertThatThrownBy(() -> course(0)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> new Span(0, 1, 0)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> course(0, new Span(60, 1, 0)).levelAt(61)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> course(0, new Span(1e9, 400, 0)))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("levelAfterSpan1");
    }
}
