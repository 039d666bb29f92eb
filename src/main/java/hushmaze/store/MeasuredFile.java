package hushmaze.store;

import hushmaze.measure.Recording;
import hushmaze.measure.SpectrumText;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.InvalidValue;
import hushmaze.work.Progress;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/**
 * Measured levels from a file: a text with the columns frequency and level, or a WAV recording.
 *
 * @param file they are from
 * @param bands levels in bands
 * @param recording all of its levels; null if it was a text
 */
public record MeasuredFile(Path file, BandLevels bands, Recording recording) {
    private static final int BUFFER = 1 << 16;
    private static final byte[] RIFF = "RIFF".getBytes(StandardCharsets.US_ASCII);

    /**
     * Reads a file.
     *
     * @param span which part of a recording
     * @throws InvalidValue with file, line, value and limit
     */
    public static MeasuredFile read(Path file, Recording.Span span, Progress progress) {
        String name = file.toString();
        try (InputStream bytes = open(file)) {
            if (isRecording(file, bytes)) {
                Recording recording = Recording.read(bytes, name, span, progress);
                return new MeasuredFile(file, recording.bands(), recording);
            }
            return new MeasuredFile(file, SpectrumText.read(bytes, name), null);
        } catch (IOException e) {
            throw new InvalidValue(name, "a file that cannot be read", "a readable file", "");
        }
    }

    private static boolean isRecording(Path file, InputStream bytes) throws IOException {
        bytes.mark(RIFF.length);
        boolean riff = Arrays.equals(bytes.readNBytes(RIFF.length), RIFF);
        bytes.reset();
        return riff || file.toString().toLowerCase(Locale.ROOT).endsWith(".wav");
    }

    static InputStream open(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new InvalidValue(file.toString(), "a folder", "a file of levels", "");
        }
        if (Files.notExists(file)) {
            throw new InvalidValue(file.toString(), "a file that does not exist", "a file of levels", "");
        }
        return new BufferedInputStream(Files.newInputStream(file), BUFFER);
    }
}
