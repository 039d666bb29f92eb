package hushmaze.store;

import hushmaze.measure.Recording;
import hushmaze.measure.SpectrumText;
import hushmaze.project.Reading;
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
    /** Characters of a file's name that are kept. */
    private static final int MOST_OF_NAME = 60;

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

    /**
     * As a reading of a project; what is too low to be heard by any microphone is left out.
     *
     * @param offset level of a sine at full scale of a recording, dB; null if it is not known
     * @param where what else there is to say of where the levels are from
     * @throws InvalidValue if nothing of it can be used
     */
    public Reading reading(Reading.Round round, Double offset, String where) {
        Reading.Scale scale = Reading.Scale.AS_GIVEN;
        BandLevels levels = bands;
        if (recording != null) {
            scale = offset == null ? Reading.Scale.FULL_SCALE : Reading.Scale.CALIBRATED;
            levels = bands.plus(offset == null ? 0 : offset);
        }
        String name = file.getFileName().toString();
        String shorter = name.substring(0, Math.min(name.length(), MOST_OF_NAME));
        return new Reading(shorter, round, scale, levels.above(Reading.LOWEST), where);
    }

    /**
     * Whether a file is a recording; a text otherwise.
     *
     * @throws InvalidValue if it cannot be read
     */
    public static boolean isRecording(Path file) {
        try (InputStream bytes = open(file)) {
            return isRecording(file, bytes);
        } catch (IOException e) {
            throw new InvalidValue(file.toString(), "a file that cannot be read", "a readable file", "");
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
