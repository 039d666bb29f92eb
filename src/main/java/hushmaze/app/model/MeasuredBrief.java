package hushmaze.app.model;

import hushmaze.measure.NetLevels;
import hushmaze.project.Noise;
import hushmaze.project.PathReadings;
import hushmaze.project.Reading;
import hushmaze.project.Reading.Round;
import hushmaze.project.Reading.Scale;
import hushmaze.project.Room;
import hushmaze.project.VentPath;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is asked, taken from what was measured: the noise through the bare opening, and the room's own. */
public final class MeasuredBrief {
    private static final Field NOISE = Field.of("path.brief.noise");
    private static final Field OWN = Field.of("room.ownNoise");

    private final EditModel edit;

    MeasuredBrief(EditModel edit) {
        this.edit = edit;
    }

    private VentPath path() {
        return edit.project().paths().get(edit.path());
    }

    private PathReadings readings() {
        return path().readingsOrNone();
    }

    /** Whether levels without the box can be the noise of the path: they must be levels, not differences. */
    public boolean mayUseAsNoise() {
        return mayUse(Round.WITHOUT_BOX);
    }

    /** Whether levels with the source off can be the room's own noise. */
    public boolean mayUseAsOwnNoise() {
        return mayUse(Round.SOURCE_OFF);
    }

    /** Whether there are levels that cannot be given to the brief because they only count from full scale. */
    public boolean isUncalibrated() {
        return !readings().levels().isEmpty() && readings().scale() == Scale.FULL_SCALE;
    }

    private boolean mayUse(Round round) {
        return readings().has(round) && readings().scale() != Scale.FULL_SCALE;
    }

    /** Makes the levels without the box, less the background, the noise of the path at the microphone. */
    public Optional<String> useAsNoise() {
        NetLevels net =
                NetLevels.of(readings().of(Round.WITHOUT_BOX), readings().of(Round.SOURCE_OFF));
        Noise old = path().brief().noise();
        List<String> said = new ArrayList<>();
        Spectrum levels = filled(net.levels(), old.levels(), said).orElseThrow();
        if (!net.most().isEmpty()) {
            said.add(Texts.of("measured.noise.most", bands(net.most())));
        }
        said.add(0, Texts.of("measured.noise.source", positions(Round.WITHOUT_BOX)));
        Noise noise = new Noise(levels, Noise.Place.AT_MICROPHONE, null, cut(String.join(" ", said)));
        int at = edit.path();
        return edit.change(
                NOISE, Texts.of("measured.noise"), Texts.of("edit.measured.noise"), p -> NOISE.with(p, at, noise));
    }

    /** Makes the levels with the source off the room's own noise. */
    public Optional<String> useAsOwnNoise() {
        BandLevels mean = BandLevels.mean(readings().of(Round.SOURCE_OFF));
        Room room = edit.project().room();
        Optional<Spectrum> levels = filled(mean, room.ownNoise(), new ArrayList<>());
        if (levels.isEmpty()) {
            return Optional.of(Texts.of("measured.own.missing", bands(mean.missing())));
        }
        return edit.change(
                OWN,
                Texts.of("measured.own"),
                Texts.of("edit.measured.own"),
                p -> OWN.with(p, edit.path(), levels.get()));
    }

    /** Levels in every band; those that were not measured stay as they were, which is said. Nothing if there were none. */
    private static Optional<Spectrum> filled(BandLevels measured, Spectrum before, List<String> said) {
        List<Band> missing = measured.missing();
        if (!missing.isEmpty() && before == null) {
            return Optional.empty();
        }
        boolean thirds = measured.bands() == BandSet.THIRD_OCTAVE;
        Spectrum old = before == null ? null : thirds ? before.levelsInThirds() : before.levelsInOctaves();
        if (!missing.isEmpty()) {
            said.add(Texts.of("measured.noise.kept", bands(missing)));
        }
        return Optional.of(
                Spectrum.of(measured.bands(), i -> measured.covered(i) ? tenth(measured.level(i)) : old.value(i)));
    }

    /** A level as it is read: to a tenth of a decibel. */
    private static double tenth(double level) {
        return Math.round(level * 10) / 10.0;
    }

    private static String bands(List<Band> bands) {
        return bands.stream().map(Band::label).collect(Collectors.joining(", "));
    }

    private String positions(Round round) {
        return readings().levels().stream()
                .filter(r -> r.round() == round)
                .map(Reading::name)
                .collect(Collectors.joining(", "));
    }

    private static String cut(String source) {
        return source.length() <= EditModel.LONGEST_SOURCE
                ? source
                : source.substring(0, EditModel.LONGEST_SOURCE - 1) + "…";
    }
}
