package hushmaze.measure;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.io.IOException;
import java.io.InputStream;

/**
 * Samples of one channel of a WAVE file, block by block, full scale being one. Memory does not grow with the file.
 */
final class WavSamples {
    private static final double LARGEST = 1e6;
    private static final double FULL_SCALE = 0.9999;

    private final InputStream in;
    private final String name;
    private final WavHeader header;
    private final int channel;
    private final byte[] bytes;
    private long frame;
    private long overloads;

    /** @param channel counted from 1 */
    WavSamples(InputStream in, String name, int channel) throws IOException {
        this.in = in;
        this.name = name;
        this.header = WavHeader.read(in, name);
        this.channel = InvalidValue.within(name + ", channel", channel, 1, header.channels()) - 1;
        this.bytes = new byte[ThirdOctaveBank.BLOCK * frameBytes()];
    }

    WavHeader header() {
        return header;
    }

    /** Samples at full scale so far: the recording was overloaded there. */
    long overloads() {
        return overloads;
    }

    /** Goes on to a sample without looking at those before it. */
    void skipTo(long target) throws IOException {
        long wanted = Math.max(0, target - frame) * frameBytes();
        try {
            in.skipNBytes(wanted);
        } catch (IOException e) {
            throw new InvalidValue(name, "samples that end early", seconds(header.frames()) + " as its head says", "s");
        }
        frame += wanted / frameBytes();
    }

    /**
     * The next samples.
     *
     * @param from where they go, from this place on
     * @param most how many at most
     * @return how many; 0 at the end
     */
    int next(double[] samples, int from, int most) throws IOException {
        int wanted = (int) Math.min(Math.min(most, ThirdOctaveBank.BLOCK), header.frames() - frame);
        if (wanted <= 0) {
            return 0;
        }
        int got = in.readNBytes(bytes, 0, wanted * frameBytes()) / frameBytes();
        if (got < wanted) {
            throw new InvalidValue(
                    name,
                    "samples that end after " + seconds(frame + got) + " s",
                    seconds(header.frames()) + " as its head says",
                    "s");
        }
        int at = channel * header.bytes();
        for (int i = 0; i < got; i++, at += frameBytes()) {
            double sample = sample(at);
            if (!(Math.abs(sample) <= LARGEST)) {
                throw new InvalidValue(
                        name + ", sample at " + seconds(frame + i) + " s",
                        Double.toString(sample),
                        "a number up to 1000000",
                        "");
            }
            overloads += Math.abs(sample) >= FULL_SCALE ? 1 : 0;
            samples[from + i] = sample;
        }
        frame += got;
        return got;
    }

    private double sample(int at) {
        int top = bytes[at + header.bytes() - 1];
        if (header.bytes() == 2) {
            return (top << 8 | bytes[at] & 0xFF) / 32_768.0;
        }
        if (header.bytes() == 3) {
            return (top << 16 | (bytes[at + 1] & 0xFF) << 8 | bytes[at] & 0xFF) / 8_388_608.0;
        }
        int word = top << 24 | (bytes[at + 2] & 0xFF) << 16 | (bytes[at + 1] & 0xFF) << 8 | bytes[at] & 0xFF;
        return header.floating() ? Float.intBitsToFloat(word) : word / 2_147_483_648.0;
    }

    private int frameBytes() {
        return header.channels() * header.bytes();
    }

    private String seconds(long frames) {
        return InvalidValue.shown((double) frames / header.rate(), Unit.NUMBER);
    }
}
