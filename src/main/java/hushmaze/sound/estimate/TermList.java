package hushmaze.sound.estimate;

import hushmaze.project.Opening;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Solid;
import hushmaze.sound.LossTerm;
import hushmaze.sound.TermInput;
import java.util.ArrayList;
import java.util.List;

/** The terms of one estimate while they are gathered. */
final class TermList {
    private final EstimateTables tables;
    private final List<LossTerm> terms = new ArrayList<>();
    private final List<PathEstimate.Leg> legs = new ArrayList<>();
    private final List<Notice> notices = new ArrayList<>();

    TermList(EstimateTables tables) {
        this.tables = tables;
    }

    EstimateTables tables() {
        return tables;
    }

    double soundSpeed() {
        return tables.soundSpeed();
    }

    void add(String key, String part, String source, BandLoss loss, List<TermInput> inputs) {
        terms.add(new LossTerm(key, part, source, loss.octaves(), loss.thirds(), inputs));
        loss.notices().forEach(this::add);
    }

    void add(PathEstimate.Leg leg) {
        legs.add(leg);
    }

    /**
     * Adds a notice. What holds for several parts is said once: with the number furthest from its limit, naming all parts,
     * parted by commas.
     */
    void add(Notice notice) {
        for (int i = 0; i < notices.size(); i++) {
            if (sayTheSame(notices.get(i), notice)) {
                notices.set(i, together(notices.get(i), notice));
                return;
            }
        }
        notices.add(notice);
    }

    private static boolean sayTheSame(Notice one, Notice other) {
        return one.kind() == other.kind() && Math.signum(distance(one)) == Math.signum(distance(other));
    }

    private static Notice together(Notice one, Notice other) {
        Notice worse = Math.abs(distance(other)) > Math.abs(distance(one)) ? other : one;
        String part =
                List.of(one.part().split(", ")).contains(other.part()) ? one.part() : one.part() + ", " + other.part();
        return new Notice(worse.kind(), worse.severity(), part, worse.value(), worse.limit(), worse.unit());
    }

    /** How far a notice's value is above its limit, as a share of the limit; zero without a value. */
    private static double distance(Notice notice) {
        return notice.value() == null || notice.limit() == null
                ? 0
                : (notice.value() - notice.limit()) / Math.abs(notice.limit());
    }

    /** Adds what the mouths of a box lose more than those of the bare opening. */
    void addMouths(Solid solid, Opening opening) {
        new Mouths(solid, opening, soundSpeed()).addTo(this);
    }

    PathEstimate estimate() {
        double[] octaves = new double[BandSet.OCTAVE.size()];
        double[] thirds = new double[BandSet.THIRD_OCTAVE.size()];
        for (LossTerm term : terms) {
            addTo(octaves, term.octaves());
            addTo(thirds, term.thirds());
        }
        if (terms.stream().anyMatch(t -> t.key().equals("lining") || t.key().equals("turn"))) {
            notices.add(Notice.of(NoticeKind.TERMS_INTERPOLATED, Severity.NOTE, ""));
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
