package hushmaze.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.Iterator;
import java.util.List;

/**
 * A spectrum in a file: {@code {"bands": "octave", "valuesDb": [...]}}, lowest band first, {@code octave} 63 Hz to 8 kHz
 * or {@code thirdOctave} 50 Hz to 10 kHz. Every value must be finite; measured levels have null for a band without one.
 */
final class SpectrumJson {
    private static final String BANDS = "bands";
    static final String VALUES = "valuesDb";
    private static final String OCTAVE = "octave";
    private static final String THIRD_OCTAVE = "thirdOctave";
    private static final List<String> FIELDS = List.of(BANDS, VALUES);
    private static final String WANTED_BANDS = "one of \"" + OCTAVE + "\", \"" + THIRD_OCTAVE + "\"";
    /** What a spectrum must look like, for messages. */
    static final String WANTED =
            "an object {\"" + BANDS + "\": \"" + OCTAVE + "\" or \"" + THIRD_OCTAVE + "\", \"" + VALUES + "\": [...]}";

    private final Problems problems;
    private final ScalarReader scalars;

    SpectrumJson(Problems problems, ScalarReader scalars) {
        this.problems = problems;
        this.scalars = scalars;
    }

    /** The spectrum, or null with the problems noted. */
    Spectrum read(JsonNode node, String path) {
        BandLevels all = levels(node, path, false);
        return all == null ? null : Spectrum.of(all.bands(), all::level);
    }

    /** The measured levels, or null with the problems noted. */
    BandLevels readLevels(JsonNode node, String path) {
        return levels(node, path, true);
    }

    /** @param gaps whether bands may have no value */
    private BandLevels levels(JsonNode node, String path, boolean gaps) {
        if (!node.isObject()) {
            problems.refuse(path, node, WANTED);
            return null;
        }
        int before = problems.count();
        RecordReader.refuseUnknown(problems, node, FIELDS, path);
        BandSet bands = bands(node.path(BANDS), path + "." + BANDS);
        boolean[] covered = new boolean[node.path(VALUES).size()];
        for (int i = 0; i < covered.length; i++) {
            covered[i] = !gaps || !node.path(VALUES).path(i).isNull();
        }
        double[] values = values(node.path(VALUES), bands, path + "." + VALUES, covered);
        return problems.count() == before ? new BandLevels(bands, values, covered) : null;
    }

    static ObjectNode write(Spectrum spectrum) {
        ObjectNode node = headed(spectrum.bands());
        ArrayNode values = node.putArray(VALUES);
        for (double value : spectrum.values()) {
            values.add(RecordWriter.number(value, Unit.DECIBEL));
        }
        return node;
    }

    static ObjectNode write(BandLevels levels) {
        ObjectNode node = headed(levels.bands());
        ArrayNode values = node.putArray(VALUES);
        for (int i = 0; i < levels.bands().size(); i++) {
            if (levels.covered(i)) {
                values.add(RecordWriter.number(levels.level(i), Unit.DECIBEL));
            } else {
                values.addNull();
            }
        }
        return node;
    }

    private static ObjectNode headed(BandSet bands) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put(BANDS, bands == BandSet.OCTAVE ? OCTAVE : THIRD_OCTAVE);
        return node;
    }

    private BandSet bands(JsonNode node, String path) {
        if (node.isMissingNode()) {
            problems.add(path, "missing; it must be " + WANTED_BANDS);
            return null;
        }
        if (OCTAVE.equals(node.textValue())) {
            return BandSet.OCTAVE;
        }
        if (THIRD_OCTAVE.equals(node.textValue())) {
            return BandSet.THIRD_OCTAVE;
        }
        problems.refuse(path, node, WANTED_BANDS);
        return null;
    }

    private double[] values(JsonNode node, BandSet bands, String path, boolean... covered) {
        String wanted = bands == null ? "a list of numbers in dB" : "a list of " + bands.size() + " numbers in dB";
        if (node.isMissingNode()) {
            problems.add(path, "missing; it must be " + wanted);
        } else if (!node.isArray()) {
            problems.refuse(path, node, wanted);
        } else if (bands != null && node.size() != bands.size()) {
            problems.refuse(path, node.size() + " values", bands.size() + " values, " + range(bands), "");
        }
        double[] values = new double[node.size()];
        Iterator<JsonNode> elements = node.elements();
        for (int i = 0; node.isArray() && i < values.length; i++) {
            JsonNode element = elements.next();
            Double value = !covered[i] ? null : scalars.number(element, Unit.DECIBEL, path + "[" + i + "]");
            values[i] = value == null ? 0 : value;
        }
        return values;
    }

    private static String range(BandSet bands) {
        return bands.bands().get(0).label() + " Hz to "
                + bands.bands().get(bands.size() - 1).label() + " Hz";
    }
}
