package hushmaze.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** Property: a line for everything that is begun, and for the same thing only after two seconds. */
class ToldProgressTest {
    @Test
    void linesAreFewAndSayWhatIsDone() {
        StringWriter lines = new StringWriter();
        long[] now = {-5};
        ToldProgress progress = new ToldProgress(new PrintWriter(lines), () -> now[0]);
        progress.check(0, "room air");
        progress.check(0.1, "room air");
        progress.of("hall.wav").check(0.25, "recording");
        now[0] += 1_999_999_999L;
        progress.of("hall.wav").check(0.5, "recording");
        now[0] += 1;
        progress.of("hall.wav").check(0.75, "recording");
        progress.check(1, "room air");
        assertThat(lines.toString().lines())
                .containsExactly(
                        "  0 % room air", " 25 % hall.wav: recording", " 75 % hall.wav: recording", "100 % room air");
    }
}
