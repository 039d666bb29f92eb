package hushmaze.store;

import hushmaze.measure.Recording;
import hushmaze.measure.RecordingPicture;
import hushmaze.quantity.InvalidValue;
import hushmaze.work.Progress;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;

/** A WAV recording in a file, which is called by its name without the folder in messages. */
public final class RecordingFile {
    private RecordingFile() {}

    /**
     * Reads what is to be seen of all of it.
     *
     * @param channel counted from 1
     * @throws InvalidValue with file, value and limit
     */
    public static RecordingPicture picture(Path file, int channel, Progress progress) {
        return with(file, (in, name) -> RecordingPicture.read(in, name, channel, progress));
    }

    /**
     * Measures a part of it.
     *
     * @throws InvalidValue with file, value and limit
     */
    public static Recording levels(Path file, Recording.Span span, Progress progress) {
        return with(file, (in, name) -> Recording.read(in, name, span, progress));
    }

    private interface Reading<T> {
        T read(InputStream in, String name) throws IOException;
    }

    private static <T> T with(Path file, Reading<T> reading) {
        String name = String.valueOf(file.getFileName());
        try (InputStream in = MeasuredFile.open(file)) {
            return reading.read(in, name);
        } catch (IOException e) {
            throw new InvalidValue(name, "a file that cannot be read", "a readable file", "");
        }
    }
}
