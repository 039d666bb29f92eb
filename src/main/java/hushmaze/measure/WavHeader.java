package hushmaze.measure;

import hushmaze.quantity.InvalidValue;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * The head of a WAVE file: what follows are samples, least significant byte first, channel after channel.
 *
 * @param floating whether samples are floating point of 32 bits; whole numbers otherwise
 * @param channels number of channels
 * @param rate sampling rate, Hz
 * @param bytes of one sample of one channel: 2, 3 or 4
 * @param frames samples of each channel that the head says there are
 */
record WavHeader(boolean floating, int channels, int rate, int bytes, long frames) {
    private static final int PCM = 1;
    private static final int FLOAT = 3;
    private static final int EXTENSIBLE = 0xFFFE;
    private static final int MOST_CHANNELS = 64;
    private static final int LOWEST_RATE = 4000;
    private static final int HIGHEST_RATE = 768_000;
    private static final int PLAIN_FORMAT = 16;
    private static final int EXTENDED_FORMAT = 40;
    private static final int SUB_FORMAT_AT = 24;
    private static final int MOST_CHUNKS = 1000;

    /**
     * Reads up to the first sample.
     *
     * @throws InvalidValue if this is no WAVE file with samples that can be read
     */
    static WavHeader read(InputStream in, String name) throws IOException {
        try {
            return chunks(in, name);
        } catch (EOFException e) {
            throw new InvalidValue(name, "a file that ends before its first sample", "a whole WAV file", "");
        }
    }

    private static WavHeader chunks(InputStream in, String name) throws IOException {
        String riff = word(in);
        number(in);
        String wave = word(in);
        if (!riff.equals("RIFF") || !wave.equals("WAVE")) {
            throw new InvalidValue(name, "no RIFF WAVE file", "a WAV file", "");
        }
        ByteBuffer format = null;
        for (int i = 0; i < MOST_CHUNKS; i++) {
            String kind = word(in);
            long size = number(in);
            if (kind.equals("data")) {
                if (format == null) {
                    throw new InvalidValue(name, "samples before their format", "a WAV file with a chunk \"fmt \"", "");
                }
                return of(format, size, name);
            }
            if (kind.equals("fmt ")) {
                if (size < PLAIN_FORMAT || size > 1000) {
                    throw new InvalidValue(name, "a format of " + size + " bytes", "16, 18 or 40 bytes", "");
                }
                format = ByteBuffer.wrap(in.readNBytes((int) size)).order(ByteOrder.LITTLE_ENDIAN);
                if (format.capacity() < size) {
                    throw new EOFException();
                }
                in.skipNBytes(size % 2);
            } else {
                in.skipNBytes(size + size % 2);
            }
        }
        throw new InvalidValue(name, "more than " + MOST_CHUNKS + " chunks before the samples", "a WAV file", "");
    }

    private static WavHeader of(ByteBuffer format, long size, String name) {
        int kind = format.getShort(0) & 0xFFFF;
        int channels = format.getShort(2) & 0xFFFF;
        long rate = format.getInt(4) & 0xFFFF_FFFFL;
        int frameBytes = format.getShort(12) & 0xFFFF;
        int bits = format.getShort(14) & 0xFFFF;
        if (kind == EXTENSIBLE && format.capacity() >= EXTENDED_FORMAT) {
            kind = format.getShort(SUB_FORMAT_AT) & 0xFFFF;
        }
        within(name + ", channels", channels, 1, MOST_CHANNELS);
        within(name + ", sampling rate, Hz", rate, LOWEST_RATE, HIGHEST_RATE);
        boolean whole = kind == PCM && (bits == 16 || bits == 24 || bits == 32);
        if (!whole && !(kind == FLOAT && bits == 32)) {
            throw new InvalidValue(
                    name,
                    "format " + kind + " with " + bits + " bits",
                    "PCM of 16, 24 or 32 bits or floating point of 32 bits",
                    "");
        }
        int bytes = bits / 8;
        if (frameBytes != channels * bytes) {
            throw new InvalidValue(
                    name, frameBytes + " bytes a frame", channels * bytes + " for its channels and bits", "");
        }
        long frames = size / frameBytes;
        if (frames == 0) {
            throw new InvalidValue(name, "no sample", "at least one", "");
        }
        return new WavHeader(kind == FLOAT, channels, (int) rate, bytes, frames);
    }

    private static void within(String field, long value, long min, long max) {
        if (value < min || value > max) {
            throw new InvalidValue(field, Long.toString(value), "from " + min + " to " + max, "");
        }
    }

    private static String word(InputStream in) throws IOException {
        return new String(four(in), StandardCharsets.ISO_8859_1);
    }

    private static long number(InputStream in) throws IOException {
        return ByteBuffer.wrap(four(in)).order(ByteOrder.LITTLE_ENDIAN).getInt() & 0xFFFF_FFFFL;
    }

    private static byte[] four(InputStream in) throws IOException {
        byte[] four = in.readNBytes(4);
        if (four.length < 4) {
            throw new EOFException();
        }
        return four;
    }
}
