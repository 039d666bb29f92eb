package hushmaze.store;

import hushmaze.measure.BandLevels;
import hushmaze.measure.SpectrumText;
import hushmaze.quantity.InvalidValue;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads measured levels from a file. */
public final class MeasuredFile {
    private MeasuredFile() {}

    /**
     * Levels in bands from a text with the columns frequency and level.
     *
     * @throws InvalidValue with file, line, value and limit
     */
    public static BandLevels levels(Path file) {
        try (InputStream bytes = open(file)) {
            return SpectrumText.read(bytes, file.toString());
        } catch (IOException e) {
            throw new InvalidValue(file.toString(), "a file that cannot be read", "a readable file", "");
        }
    }

    private static InputStream open(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new InvalidValue(file.toString(), "a folder", "a file of levels", "");
        }
        if (Files.notExists(file)) {
            throw new InvalidValue(file.toString(), "a file that does not exist", "a file of levels", "");
        }
        return new BufferedInputStream(Files.newInputStream(file));
    }
}
