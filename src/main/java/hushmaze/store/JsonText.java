package hushmaze.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
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
        } catch (JsonEOFException e) {
            throw Problems.whole(file, "the file ends too early, " + place(e) + "; it was cut off or not saved whole");
        } catch (JsonProcessingException e) {
            throw Problems.whole(file, "not valid JSON, " + place(e) + ": " + reason(e));
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

    private static String place(JsonProcessingException e) {
        return "line " + e.getLocation().getLineNr() + ", column "
                + e.getLocation().getColumnNr();
    }

    private static String reason(JsonProcessingException e) {
        if (!(e instanceof JsonParseException)) {
            return "something follows after its end, or it is nested more than " + MAX_DEPTH + " deep";
        }
        String text = e.getOriginalMessage();
        int end = text.indexOf('\n');
        return end < 0 ? text : text.substring(0, end);
    }

    private static DefaultPrettyPrinter printer() {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(
                Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER));
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        return printer;
    }
}
