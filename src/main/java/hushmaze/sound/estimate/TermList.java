package hushmaze.sound.estimate;

import hushmaze.project.Opening;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Solid;
import hushmaze.sound.LossTerm;
import hushmaze.sound.estimate.EndReflection.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** The terms of one estimate while they are gathered. */
final class TermList {
    private static final String MOUTHS_SOURCE =
            "end reflection after ASHRAE RP-1314 (constants from memory), box less bare opening";

    private final double soundSpeed;
    private final List<LossTerm> terms = new ArrayList<>();
    private final List<PathEstimate.Leg> legs = new ArrayList<>();
    private final List<Notice> notices = new ArrayList<>();

    TermList(double soundSpeed) {
        this.soundSpeed = soundSpeed;
    }

    double soundSpeed() {
        return soundSpeed;
    }

    void add(String key, String part, String source, BandLoss loss) {
        terms.add(new LossTerm(key, part, source, loss.octaves(), loss.thirds()));
        loss.notices().forEach(this::add);
    }

    /** Adds a term whose formula holds at any frequency in Hz. */
    void add(String key, String part, String source, DoubleUnaryOperator lossAt) {
        Spectrum thirds = Spectrum.ofFrequency(BandSet.THIRD_OCTAVE, lossAt);
        // The middle third of an octave has the octave's own centre.
        Spectrum octaves = Spectrum.of(BandSet.OCTAVE, i -> thirds.value(3 * i + 1));
        terms.add(new LossTerm(key, part, source, octaves, thirds));
    }

    void add(PathEstimate.Leg leg) {
        legs.add(leg);
    }

    /** Adds a notice; what would be said alike of several passes is said once, of the shortest run. */
    void add(Notice notice) {
        if (notice.kind() == NoticeKind.LINER_OUTSIDE_RANGE || notice.kind() == NoticeKind.RUN_SHORTER_THAN_RANGE) {
            for (int i = 0; i < notices.size(); i++) {
                if (notices.get(i).kind() == notice.kind()) {
                    notices.set(i, notice.value() < notices.get(i).value() ? notice : notices.get(i));
                    return;
                }
            }
        }
        notices.add(notice);
    }

    void addMouths(Solid solid, Opening opening) {
        List<PortPlace> mouths = switch (opening.kind()) {
            case REGISTER -> List.of(solid.roomPort());
            case WALL_OPENING -> List.of(solid.openingPort(), solid.roomPort());
            case IN_DUCT -> List.of();
        };
        if (mouths.isEmpty()) {
            return;
        }
        double bare = opening.area();
        add("mouths", "", MOUTHS_SOURCE, f -> {
            double sum = 0;
            for (PortPlace mouth : mouths) {
                sum += EndReflection.loss(f, mouth.area(), soundSpeed, Setting.FLUSH)
                        - EndReflection.loss(f, bare, soundSpeed, Setting.FLUSH);
            }
            return sum;
        });
    }

    PathEstimate estimate() {
        double[] octaves = new double[BandSet.OCTAVE.size()];
        double[] thirds = new double[BandSet.THIRD_OCTAVE.size()];
        for (LossTerm term : terms) {
            addTo(octaves, term.octaves());
            addTo(thirds, term.thirds());
        }
        if (terms.stream().anyMatch(t -> t.key().equals("lining") || t.key().equals("turn"))) {
            notices.add(Notice.of(NoticeKind.OCTAVES_INTERPOLATED, Severity.NOTE, ""));
        }
        return new PathEstimate(
                terms,
                legs,
                new Spectrum(BandSet.OCTAVE, octaves),
                new Spectrum(BandSet.THIRD_OCTAVE, thirds),
                notices);
    }

    private static void addTo(double[] sums, Spectrum loss) {
        for (int i = 0; i < sums.length; i++) {
            sums[i] += loss.value(i);
        }
    }
}
