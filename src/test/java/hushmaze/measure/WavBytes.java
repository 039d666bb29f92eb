package hushmaze.measure;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.function.IntToDoubleFunction;

/** Writes WAVE files for tests, by the published layout of RIFF. */
public final class WavBytes {
    /** How samples are kept. */
    public enum Kind {
        PCM16(1, 16),
        PCM24(1, 24),
        PCM32(1, 32),
        FLOAT32(3, 32),
        EXTENSIBLE24(0xFFFE, 24);

        private final int tag;
        private final int bits;

        Kind(int tag, int bits) {
            this.tag = tag;
            this.bits = bits;
        }
    }

    private WavBytes() {}

    /** A file whose last channel has the samples; the others have half of them. */
    public static byte[] of(Kind kind, int rate, int channels, int frames, IntToDoubleFunction sample) {
        int bytes = kind.bits / 8;
        ByteBuffer data = ByteBuffer.allocate(frames * channels * bytes).order(ByteOrder.LITTLE_ENDIAN);
        for (int i = 0; i < frames; i++) {
            double x = sample.applyAsDouble(i);
            for (int c = 0; c < channels; c++) {
                put(data, kind, c == channels - 1 ? x : x / 2);
            }
        }
        return file(header(kind, rate, channels), data.array(), data.capacity());
    }

    private static void put(ByteBuffer data, Kind kind, double x) {
        if (kind == Kind.FLOAT32) {
            data.putFloat((float) x);
        } else if (kind.bits == 16) {
            data.putShort((short) Math.round(x * 32_767));
        } else if (kind.bits == 32) {
            data.putInt((int) Math.round(x * 2_147_483_647.0));
        } else {
            int whole = (int) Math.round(x * 8_388_607);
            data.put((byte) whole).put((byte) (whole >> 8)).put((byte) (whole >> 16));
        }
    }

    /** The chunk of the format. */
    public static byte[] header(Kind kind, int rate, int channels) {
        boolean extended = kind == Kind.EXTENSIBLE24;
        ByteBuffer format = ByteBuffer.allocate(extended ? 40 : 16).order(ByteOrder.LITTLE_ENDIAN);
        int frame = channels * kind.bits / 8;
        format.putShort((short) kind.tag)
                .putShort((short) channels)
                .putInt(rate)
                .putInt(rate * frame);
        format.putShort((short) frame).putShort((short) kind.bits);
        if (extended) {
            format.putShort((short) 22).putShort((short) 24).putInt(4).putShort((short) 1);
        }
        return format.array();
    }

    /** A file with an odd chunk between, with a claimed length of the samples. */
    public static byte[] file(byte[] format, byte[] data, long claimed) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        chunk(out, "RIFF", 0);
        out.writeBytes("WAVE".getBytes(StandardCharsets.US_ASCII));
        chunk(out, "LIST", 3);
        out.writeBytes(new byte[4]);
        chunk(out, "fmt ", format.length);
        out.writeBytes(format);
        chunk(out, "data", claimed);
        out.writeBytes(data);
        return out.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream out, String name, long size) {
        out.writeBytes(name.getBytes(StandardCharsets.US_ASCII));
        out.writeBytes(ByteBuffer.allocate(4)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt((int) size)
                .array());
    }
}
