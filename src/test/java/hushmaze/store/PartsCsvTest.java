package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hushmaze.build.NestPart;
import hushmaze.quantity.InvalidValue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation: files written out here, with the pieces or the message they must give. */
class PartsCsvTest {
    @TempDir
    private Path folder;

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("parts.csv"), text);
    }

    @Test
    void readsAFileWithColumnNames() throws IOException {
        Path file =
                file("\uFEFFmark,quantity,lengthMm,widthMm,grain\r\nA,2,600.5,300,yes\r\n\r\n\"B, left\",1,20,10,\r\n");
        assertThat(PartsCsv.read(file, false))
                .containsExactly(
                        new NestPart("A", 2, 0.6005, 0.3, true), new NestPart("B, left", 1, 0.02, 0.01, false));
    }

    @Test
    void readsColumnsInAnyOrderAndFilesWithoutNames() throws IOException {
        assertThat(PartsCsv.read(file("lengthMm,widthMm,mark,quantity\n600,300,A,2\n"), false))
                .containsExactly(new NestPart("A", 2, 0.6, 0.3, false));
        assertThat(PartsCsv.read(file("A,2,600,300\nB,1,200,100,no"), true))
                .containsExactly(new NestPart("A", 2, 0.6, 0.3, true), new NestPart("B", 1, 0.2, 0.1, true));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "A,0,600,300       | parts.csv, line 2, quantity: 0 is not accepted; it must be from 1 to 20000",
                "A,2.5,600,300     | parts.csv, line 2, quantity: \"2.5\" is not accepted; it must be a whole number",
                "A,1,-600,300      | parts.csv, line 2, lengthMm: -600 mm is not accepted; it must be from 1 to 10000 mm",
                "A,1,600,0         | parts.csv, line 2, widthMm: 0 mm is not accepted; it must be from 1 to 10000 mm",
                "A,1,NaN,300       | parts.csv, line 2, lengthMm: not a number mm is not accepted",
                "A,1,1e999,300     | parts.csv, line 2, lengthMm: Infinity mm is not accepted",
                "A,1,wide,300      | parts.csv, line 2, lengthMm: \"wide\" is not accepted; it must be a number",
                "A,1,600           | parts.csv, line 2, line: 3 fields is not accepted; it must be 4 or 5",
                "A,1,600,300,maybe | parts.csv, line 2, grain: \"maybe\" is not accepted; it must be yes or no",
                ",1,600,300        | parts.csv, line 2, mark: a blank text is not accepted",
                "offcut,1,600,300  | parts.csv, line 2, mark: offcut is not accepted; it must be another word",
                "\"A,1,600,300     | parts.csv, line 2, line: a double quote that is not closed"
            })
    void refusesBadLines(String line, String message) throws IOException {
        Path file = file("mark,quantity,lengthMm,widthMm,grain\n" + line + "\n");
        assertThatThrownBy(() -> PartsCsv.read(file, false))
                .isInstanceOf(InvalidValue.class)
                .hasMessageStartingWith(message);
    }

    @Test
    void refusesWhatIsNotAListOfPieces() throws IOException {
        Path missing = folder.resolve("none.csv");
        assertThatThrownBy(() -> PartsCsv.read(missing, false))
                .hasMessageContaining("none.csv: a file that does not exist");
        Path empty = file("mark,quantity,lengthMm,widthMm\n");
        assertThatThrownBy(() -> PartsCsv.read(empty, false)).hasMessageContaining("parts.csv: no piece");
        Path noWidth = file("mark,quantity,lengthMm\nA,1,5\n");
        assertThatThrownBy(() -> PartsCsv.read(noWidth, false))
                .hasMessageContaining("line 1, header: no column widthMm");
        Path odd = file("mark,quantity,lengthMm,widthMm,colour\n");
        assertThatThrownBy(() -> PartsCsv.read(odd, false)).hasMessageContaining("column \"colour\"");
        Path twice = file("A,1,50,50\nA,1,60,50\n");
        assertThatThrownBy(() -> PartsCsv.read(twice, false)).hasMessageContaining("line 2, mark: \"A\", as in line 1");
        Path many = file("A,15000,50,50\nB,5001,60,50\n");
        assertThatThrownBy(() -> PartsCsv.read(many, false))
                .hasMessageContaining("line 2, quantity: 20001 pieces up to here")
                .hasMessageContaining("at most 20000");
        Path binary = Files.write(folder.resolve("binary.csv"), new byte[] {(byte) 0xc3, (byte) 0x28, 0});
        assertThatThrownBy(() -> PartsCsv.read(binary, false)).hasMessageContaining("cannot be read as text");
    }
}
