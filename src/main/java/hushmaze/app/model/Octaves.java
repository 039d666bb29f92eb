package hushmaze.app.model;

import hushmaze.project.Project;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The eight octave values of a spectrum or of absorption areas, one entry each. A spectrum in third octaves is shown in
 * octaves; typing one value then makes it a spectrum in octaves. A whole row may be typed or pasted into one entry.
 */
public final class Octaves {
    /** How the source of a value begins that the program filled in. */
    static final String ASSUMED = "Assumed";

    private final EditModel edit;
    private final Field field;
    private final Field source;
    private final boolean loss;

    /**
     * @param field a spectrum, or a list of eight values
     * @param source where the values are from; null if the project does not say
     * @param loss whether the values are losses, which third octaves are brought to octaves by otherwise than levels
     */
    public Octaves(EditModel edit, Field field, Field source, boolean loss) {
        this.edit = edit;
        this.field = field;
        this.source = source;
        this.loss = loss;
    }

    /** Names of the bands, lowest first. */
    public static List<String> bands() {
        return BandSet.OCTAVE.bands().stream().map(b -> b.label()).toList();
    }

    /** Whether there are values. */
    public boolean areThere() {
        return field.get(edit.project(), edit.path()) != null;
    }

    /** Whether the project has finer values than are shown. */
    public boolean areFiner() {
        return field.get(edit.project(), edit.path()) instanceof Spectrum s && s.bands() == BandSet.THIRD_OCTAVE;
    }

    /** Symbol of the unit all values are shown in. */
    public String unit() {
        return shownUnit().symbol();
    }

    /** One value, without its unit. */
    public String shown(int band) {
        return areThere() ? EntryText.brief(shownUnit().fromSi(values().get(band))) : "";
    }

    /** Takes what was typed for one band; gives back why not, if so. */
    public Optional<String> enter(int band, String label, String text) {
        if (text.strip().split("[\\s;]+").length >= BandSet.OCTAVE.size()) {
            return new BandsText(edit, field).enter(label, text);
        }
        String here = Texts.of("octaves.one", label, bands().get(band));
        try {
            List<Double> values = values();
            values.set(
                    band,
                    EntryText.parse(
                            field.name(), text, unitInFiles(), edit.project().units()));
            if (values.equals(values())) {
                return Optional.empty();
            }
            edit.edit(label, p -> with(p, values));
            return Optional.empty();
        } catch (InvalidValue e) {
            return Optional.of(Refusal.sentence(e, field, here));
        }
    }

    private Project with(Project project, List<Double> values) {
        int path = edit.path();
        Object now = isList() ? values : spectrum(values);
        if (source != null && source.get(project, path) instanceof String from && from.startsWith(ASSUMED)) {
            return source.with(field.with(project, path, now), path, Texts.of("source.typed"));
        }
        return field.with(project, path, now);
    }

    private static Spectrum spectrum(List<Double> values) {
        return Spectrum.of(BandSet.OCTAVE, values::get);
    }

    private boolean isList() {
        return field.type() == List.class;
    }

    private Unit unitInFiles() {
        return isList() ? field.unit() : Unit.DECIBEL;
    }

    private Unit shownUnit() {
        return EntryText.unit(unitInFiles(), edit.project().units());
    }

    private List<Double> values() {
        List<Double> all = new ArrayList<>();
        Object value = field.get(edit.project(), edit.path());
        if (value instanceof Spectrum spectrum) {
            for (double v : (loss ? spectrum.lossesInOctaves() : spectrum.levelsInOctaves()).values()) {
                all.add(v);
            }
        } else {
            ((List<?>) value).forEach(v -> all.add((Double) v));
        }
        return all;
    }
}
