package hushmaze.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Reads files that come with the program, from the class path. */
final class BundledFile {
    private BundledFile() {}

    /**
     * The text of a file under {@code /presets/}.
     *
     * @throws UnreadableFile if it is not there or no text
     */
    static String text(String name) {
        try (InputStream stream = BundledFile.class.getResourceAsStream("/" + name)) {
            if (stream == null) {
                throw Problems.whole(name, "this file is missing from the program");
            }
            return FileBytes.text(name, stream.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }

    /** The record in such a file. */
    static <T extends Record> T read(String name, Class<T> type) {
        Problems problems = new Problems(name);
        T value = new RecordReader(problems).read(JsonText.parse(name, text(name)), type, "");
        problems.throwIfAny();
        return value;
    }
}
