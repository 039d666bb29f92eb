package hushmaze.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Validation: gauges of wood screws as tables give them in thousandths of an inch: No. 6 0.138, No. 8 0.164, No. 10 0.190, No. 14 0.242. */
class FastenerNamesTest {
    private static final double THOU = 2.54e-5;

    @Test
    void gaugesAsInTheTable() {
        assertThat(FastenerNames.gauge(138 * THOU)).hasValue(6);
        assertThat(FastenerNames.gauge(164 * THOU)).hasValue(8);
        assertThat(FastenerNames.gauge(190 * THOU)).hasValue(10);
        assertThat(FastenerNames.gauge(242 * THOU)).hasValue(14);
        // 5/32 in, 3.97 mm, is 0.2 mm less than a No. 8, to a hair
        assertThat(FastenerNames.gauge(0.00398)).hasValue(8);
        // less than any gauge, and more
        assertThat(FastenerNames.gauge(0.0005)).isEmpty();
        assertThat(FastenerNames.gauge(0.02)).isEmpty();
    }
}
