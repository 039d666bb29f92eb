package hushmaze.measure;

import hushmaze.work.Progress;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Locale;
import java.util.Random;

/**
 * Benchmark: an hour of noise at 48 kHz, 16 bits, one channel, made while it is read; run with -Xmx256m.
 *
 * <p>On two cores, little other work beside it: levels of the whole hour in 4.0 to 4.7 s, 13.3 s when it was one thread and filters with
 * all their coefficients; with other work on both cores 5.8 to 7.2 s, with the picture as much. A cancel takes less than 1 ms.
 */
public final class RecordingBench {
    private static final int RATE = 48_000;
    private static final int SECONDS = 3600;

    private RecordingBench() {}

    /** Prints seconds, memory, and how long a cancel takes. */
    public static void main(String[] args) throws IOException {
        int[] calls = new int[1];
        long start = System.nanoTime();
        Recording recording = Recording.read(new Noise(), "noise", Recording.Span.ALL, (f, doing) -> calls[0]++);
        say("levels", start, recording, calls[0]);
        start = System.nanoTime();
        RecordingPicture picture = RecordingPicture.read(new Noise(), "noise", 1, (f, doing) -> calls[0]++);
        say("picture of " + picture.columns() + " columns", start, picture.whole(), calls[0]);
        long[] asked = new long[1];
        try {
            Recording.read(new Noise(), "noise", Recording.Span.ALL, (fraction, doing) -> {
                asked[0] = System.nanoTime();
                if (fraction > 0.01) {
                    throw new Progress.Cancelled();
                }
            });
        } catch (Progress.Cancelled e) {
            System.out.printf(Locale.ROOT, "cancelled after %.1f ms%n", (System.nanoTime() - asked[0]) / 1e6);
        }
    }

    private static void say(String what, long start, Recording recording, int calls) {
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(
                Locale.ROOT,
                "%s of %d s in %.1f s, %d reports of progress, heap %d of %d MB, A %.2f dB%n",
                what,
                SECONDS,
                (System.nanoTime() - start) / 1e9,
                calls,
                (runtime.totalMemory() - runtime.freeMemory()) >> 20,
                runtime.maxMemory() >> 20,
                recording.weighted().get(Weighting.A).leq());
    }

    /** The bytes of the file: its head, then one second of noise over and over. */
    private static final class Noise extends InputStream {
        private final byte[] head;
        private final byte[] second = new byte[2 * RATE];
        private long at;

        Noise() {
            byte[] format = WavBytes.header(WavBytes.Kind.PCM16, RATE, 1);
            head = WavBytes.file(format, new byte[0], 2L * RATE * SECONDS);
            ByteBuffer samples = ByteBuffer.wrap(second).order(ByteOrder.LITTLE_ENDIAN);
            Random random = new Random(7);
            for (int i = 0; i < RATE; i++) {
                samples.putShort((short) (3000 * random.nextGaussian()));
            }
        }

        @Override
        public int read() {
            int value = at < head.length ? head[(int) at] : second[(int) ((at - head.length) % second.length)];
            at++;
            return value & 0xFF;
        }

        @Override
        public int read(byte[] bytes, int from, int length) {
            int n = 0;
            while (n < length) {
                int place = (int) (at < head.length ? at : (at - head.length) % second.length);
                byte[] source = at < head.length ? head : second;
                int part = Math.min(length - n, source.length - place);
                System.arraycopy(source, place, bytes, from + n, part);
                n += part;
                at += part;
            }
            return n;
        }
    }
}
