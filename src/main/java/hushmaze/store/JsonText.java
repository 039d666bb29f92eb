package hushmaze.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.json.JsonMapper;

/** Text to JSON tree and back. Numbers keep every digit; the text that is printed is the same on every system. */
final class JsonText {
    private static final int MAX_DEPTH = 40;

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(MAX_DEPTH)
                            .build())
                    .build())
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS, DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            // NaN and Infinity are let through here, so that they are refused later with the field's name.
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();

    private static final ObjectWriter WRITER = MAPPER.writer(printer());

    private JsonText() {}

    /**
     * The tree in a text.
     *
     * @param file its name for the message
     * @throws UnreadableFile if it is not JSON, with the line and column
     */
    static JsonNode parse(String file, String text) {
        if (text.isBlank()) {
            throw Problems.whole(file, "the file is empty");
        }
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException e) {
            throw Problems.whole(file, text(e));
        } catch (NumberFormatException e) {
            // The parser lets this one through for exponents beyond any number type.
            throw Problems.whole(file, "not valid JSON: a number has too large an exponent");
        }
    }

    /** A tree as indented text with a newline at its end. */
    static String print(JsonNode tree) {
        try {
            return WRITER.writeValueAsString(tree) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree could not be printed", e);
        }
    }

    private static String text(JsonProcessingException e) {
        if (e instanceof StreamConstraintsException) {
            return "this is no file of this program: it is nested more than " + MAX_DEPTH
                    + " deep, or has a number of more than 1000 digits";
        }
        String place = "line " + e.getLocation().getLineNr() + ", column "
                + e.getLocation().getColumnNr();
        if (e.getOriginalMessage().startsWith("Unexpected end-of-input")) {
            return "the file ends too early, " + place + "; it was cut off or not saved whole";
        }
        if (e instanceof MismatchedInputException) {
            return "not valid JSON, " + place + ": something follows after its end";
        }
        String reason = e.getOriginalMessage();
        int end = reason.indexOf('\n');
        return "not valid JSON, " + place + ": " + (end < 0 ? reason : reason.substring(0, end));
    }

    private static DefaultPrettyPrinter printer() {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(
                Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER));
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        return printer;
    }
}
