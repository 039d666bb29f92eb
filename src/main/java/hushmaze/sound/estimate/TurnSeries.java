package hushmaze.sound.estimate;

import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.sound.TermInput;
import java.util.List;

/**
 * The turns of a maze in the order of the air, each after {@link AshraeSquareElbow}.
 *
 * <p>Formula: the losses of turns add up when the straight between them is lined and at least one width long. Turns with a
 * bare or a shorter straight between them count as one, per band the one that loses most.
 *
 * <p>Symbols: the width is the wider of the two turns' widths in the plane of the turn.
 *
 * <p>Source: our own judgement from two rigid mitre bends in a row, computed by mode matching (60 modes): together they lose
 * from nothing to far more than twice one bend, as the straight between them resonates or not.
 *
 * <p>Range: below two widths of lined straight there is a notice.
 *
 * <p>Accuracy: that of the single turn at best.
 *
 * <p>Differs from the source: a rule of thumb in place of a computation of waves.
 */
final class TurnSeries {
    /** Widths of lined straight from which two turns are taken not to disturb each other. */
    static final double APART_WIDTHS = 2;
    /** Widths of lined straight below which two turns count as one. */
    static final double ONE_TURN_WIDTHS = 1;

    private static final String SOURCE =
            "square turn by frequency times width, ASHRAE Handbook, HVAC Applications (from memory); turns with less than"
                    + " one width of lined straight between them count as one";
    private static final double TOLERANCE = 1e-9;

    private final TermList list;
    private double lastWidth;
    private double linedBetween;
    private String between = "";
    private BandLoss most = BandLoss.none();

    TurnSeries(TermList list) {
        this.list = list;
    }

    /**
     * A turn as it stands in its surroundings.
     *
     * @param part what it is called
     * @param width clear, in the plane of the turn, m
     * @param liner thinnest of the liners around it, m; zero if a face is bare
     * @param linedBeyond shortest lined straight that goes on from it, m
     */
    record Place(String part, double width, double liner, double linedBeyond) {
        boolean thick() {
            return AshraeSquareElbow.lines(liner, width);
        }

        boolean lined() {
            return thick() && linedBeyond >= AshraeSquareElbow.LINED_WIDTHS * width - TOLERANCE;
        }
    }

    /** A straight between two turns; its length counts as far as it is lined, m. */
    void straight(String part, double lined) {
        between = part;
        linedBetween = lined;
    }

    /** Adds the next turn's term and gives what it is credited with. */
    Spectrum turn(Place place) {
        BandLoss alone = AshraeSquareElbow.loss(place.width(), place.lined(), place.part());
        BandLoss before = joined(place) ? most : BandLoss.none();
        BandLoss credited = new BandLoss(
                more(alone.octaves(), before.octaves()), more(alone.thirds(), before.thirds()), alone.notices());
        most = new BandLoss(
                before.octaves().plus(credited.octaves()), before.thirds().plus(credited.thirds()), List.of());
        list.add("turn", place.part(), SOURCE, credited, inputs(place));
        sayWhatIsShort(place);
        lastWidth = place.width();
        return credited.thirds();
    }

    /** Whether the turn counts as one with the turn before it. */
    private boolean joined(Place place) {
        if (lastWidth == 0) {
            return false;
        }
        double width = Math.max(lastWidth, place.width());
        double apart = APART_WIDTHS * width;
        if (linedBetween < apart - TOLERANCE) {
            list.add(Notice.of(
                    NoticeKind.TURNS_INTERFERE, Severity.WARNING, between, linedBetween, apart, Unit.MILLIMETRE));
        }
        return linedBetween < ONE_TURN_WIDTHS * width - TOLERANCE;
    }

    private static Spectrum more(Spectrum loss, Spectrum than) {
        return Spectrum.of(loss.bands(), i -> Math.max(0, loss.value(i) - than.value(i)));
    }

    private void sayWhatIsShort(Place place) {
        double width = place.width();
        if (place.liner() > 0 && !place.thick()) {
            double asked = AshraeSquareElbow.LINED_SHARE * width;
            list.add(Notice.of(
                    NoticeKind.TURN_LINER_THIN, Severity.NOTE, place.part(), place.liner(), asked, Unit.MILLIMETRE));
        } else if (place.thick() && !place.lined()) {
            double asked = AshraeSquareElbow.LINED_WIDTHS * width;
            list.add(Notice.of(
                    NoticeKind.TURN_LINING_SHORT,
                    Severity.NOTE,
                    place.part(),
                    place.linedBeyond(),
                    asked,
                    Unit.MILLIMETRE));
        }
    }

    private static List<TermInput> inputs(Place place) {
        return List.of(
                new TermInput("width", place.width(), Unit.MILLIMETRE),
                new TermInput("linerThickness", place.liner(), Unit.MILLIMETRE),
                new TermInput("linedBeyond", place.linedBeyond(), Unit.MILLIMETRE),
                new TermInput("lined", place.lined() ? 1 : 0, Unit.NUMBER));
    }
}
