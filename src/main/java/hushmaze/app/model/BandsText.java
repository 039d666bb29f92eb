package hushmaze.app.model;

import hushmaze.project.Project;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Values of all bands in one entry: eight numbers for the octaves, or twenty-four for the third octaves. */
public final class BandsText {
    private final EditModel edit;
    private final Field field;

    /** @param field a spectrum, or a list of eight values */
    public BandsText(EditModel edit, Field field) {
        this.edit = edit;
        this.field = field;
    }

    /** The values, lowest band first, with blanks between and their unit at the end; nothing if they are absent. */
    public String shown() {
        Object value = field.get(edit.project(), edit.path());
        if (value == null) {
            return "";
        }
        Unit unit = EntryText.unit(unit(), edit.project().units());
        List<Double> all = new ArrayList<>();
        if (value instanceof Spectrum spectrum) {
            Arrays.stream(spectrum.values()).forEach(all::add);
        } else {
            ((List<?>) value).forEach(v -> all.add(unit.fromSi((Double) v)));
        }
        return all.stream().map(EntryText::brief).collect(Collectors.joining("  ", "", "  " + unit.symbol()));
    }

    private Unit unit() {
        return field.type() == List.class ? field.unit() : Unit.DECIBEL;
    }

    /** Takes what was typed; gives back why not, if so. */
    public Optional<String> enter(String label, String text) {
        Project project = edit.project();
        try {
            Object value = text.isBlank() && field.mayBeAbsent() ? null : value(text, project);
            return edit.set(field, label, value);
        } catch (InvalidValue e) {
            return Optional.of(Refusal.sentence(e, field, label));
        }
    }

    private Object value(String text, Project project) {
        String[] parts = text.strip().split("[\\s;]+");
        boolean unitGiven = parts.length > 1 && parts[parts.length - 1].matches("[^-+.,0-9].*");
        String ending = unitGiven ? " " + parts[parts.length - 1] : "";
        String[] words = unitGiven ? Arrays.copyOf(parts, parts.length - 1) : parts;
        boolean list = field.type() == List.class;
        boolean octaves = words.length == BandSet.OCTAVE.size();
        if (!octaves && (list || words.length != BandSet.THIRD_OCTAVE.size())) {
            throw new InvalidValue(
                    field.name(),
                    Texts.of("bands.count", String.valueOf(words.length)),
                    Texts.of(list ? "bands.eight" : "bands.eightOrThirds"),
                    "");
        }
        double[] values = Arrays.stream(words)
                .mapToDouble(w -> EntryText.parse(field.name(), w + ending, unit(), project.units()))
                .toArray();
        return list
                ? Arrays.stream(values).boxed().toList()
                : new Spectrum(octaves ? BandSet.OCTAVE : BandSet.THIRD_OCTAVE, values);
    }
}
