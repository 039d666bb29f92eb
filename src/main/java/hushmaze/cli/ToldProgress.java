package hushmaze.cli;

import hushmaze.work.Progress;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.LongSupplier;

/** Progress in lines: one whenever something else is done, and one every few seconds while the same goes on. */
final class ToldProgress implements Progress {
    private static final long PAUSE_NS = 2_000_000_000L;

    private final PrintWriter talk;
    private final LongSupplier clock;
    private String last = "";
    private long told;

    /** @param talk for those who wait, never the one for results */
    ToldProgress(PrintWriter talk) {
        this(talk, System::nanoTime);
    }

    /** @param clock in nanoseconds, from any instant */
    ToldProgress(PrintWriter talk, LongSupplier clock) {
        this.talk = talk;
        this.clock = clock;
    }

    @Override
    public void check(double fraction, String doing) {
        long now = clock.getAsLong();
        if (!doing.equals(last) || now - told >= PAUSE_NS) {
            last = doing;
            told = now;
            talk.printf(Locale.ROOT, "%3.0f %% %s%n", 100 * fraction, doing);
            talk.flush();
        }
    }

    /** The same with the name of what it is about before it: a file, say. */
    Progress of(Object subject) {
        return (fraction, doing) -> check(fraction, subject + ": " + doing);
    }
}
