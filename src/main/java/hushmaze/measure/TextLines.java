package hushmaze.measure;

import hushmaze.quantity.InvalidValue;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * The lines of a text of unknown kind, one at a time: UTF-8 or UTF-16, with or without a mark of byte order, and one-byte
 * texts, whose letters beyond ASCII do not matter here. Anything else is refused, as are lines no table has.
 */
final class TextLines {
    private static final int LOOKED_AT = 512;
    private static final int LONGEST_LINE = 10_000;
    private static final int MOST_LINES = 1_000_000;

    private final String name;
    private final BufferedReader reader;
    private int number;

    TextLines(InputStream bytes, String name) throws IOException {
        this.name = name;
        PushbackInputStream input = new PushbackInputStream(bytes, LOOKED_AT);
        byte[] head = input.readNBytes(LOOKED_AT);
        Charset charset = charset(head);
        int mark = markLength(head);
        input.unread(head, mark, head.length - mark);
        this.reader = new BufferedReader(new InputStreamReader(input, charset));
    }

    /** The next line without its end; null after the last. */
    String next() throws IOException {
        StringBuilder line = new StringBuilder();
        int c = reader.read();
        if (c < 0) {
            return null;
        }
        number++;
        require(number <= MOST_LINES, "more than " + MOST_LINES + " lines", "at most as many lines");
        while (c >= 0 && c != '\n' && c != '\r') {
            require(c >= ' ' || c == '\t' || c == '\f', "control characters, as in a binary file", "a text file");
            line.append((char) c);
            require(line.length() <= LONGEST_LINE, "more than " + LONGEST_LINE + " characters", "a short line");
            c = reader.read();
        }
        if (c == '\r') {
            skipLineFeed();
        }
        return line.toString();
    }

    /** Number of the line last given, from 1. */
    int number() {
        return number;
    }

    /** A problem of the line last given. */
    InvalidValue problem(String field, String given, String limit, String unit) {
        return new InvalidValue(name + ", line " + number + ", " + field, given, limit, unit);
    }

    private void skipLineFeed() throws IOException {
        reader.mark(1);
        if (reader.read() != '\n') {
            reader.reset();
        }
    }

    private void require(boolean good, String given, String limit) {
        if (!good) {
            throw new InvalidValue(name + ", line " + number, given, limit, "");
        }
    }

    private static int markLength(byte[] head) {
        if (starts(head, 0xEF, 0xBB, 0xBF)) {
            return 3;
        }
        return starts(head, 0xFE, 0xFF) || starts(head, 0xFF, 0xFE) ? 2 : 0;
    }

    private Charset charset(byte[] head) {
        if (starts(head, 0xFF, 0xFE)) {
            return StandardCharsets.UTF_16LE;
        }
        if (starts(head, 0xFE, 0xFF)) {
            return StandardCharsets.UTF_16BE;
        }
        int even = 0;
        int odd = 0;
        for (int i = 0; i < head.length; i++) {
            if (head[i] == 0) {
                even += 1 - i % 2;
                odd += i % 2;
            }
        }
        if (even == 0 && odd == 0) {
            return StandardCharsets.UTF_8;
        }
        // Every other byte of plain text in UTF-16 is zero.
        boolean low = even == 0 && odd >= head.length / 4;
        boolean big = odd == 0 && even >= head.length / 4;
        if (!low && !big) {
            throw new InvalidValue(name, "a binary file", "a text file", "");
        }
        return low ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
    }

    private static boolean starts(byte[] head, int... mark) {
        if (head.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((head[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }
}
