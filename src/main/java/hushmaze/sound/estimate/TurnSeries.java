package hushmaze.sound.estimate;

import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.sound.TermInput;
import java.util.ArrayList;
import java.util.List;

/**
 * The turns of a maze in the order of the air, each after {@link AshraeSquareElbow}.
 *
 * <p>Formula: the losses of turns add up when the straight between them is lined and at least one and a half widths long. Turns with a
 * bare straight between them, or one of half a width or less, count as one, per band the one that loses most. Between these the
 * loss is the mean of both, weighted by the length s of the lined straight: they are apart with the weight s/w - 1/2, each pair of
 * neighbours for itself.
 *
 * <p>Symbols: the width w is the wider of the two turns' widths in the plane of the turn.
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
    /** Widths of lined straight up to which two turns count as one. */
    static final double ONE_TURN_WIDTHS = 0.5;
    /** Widths of lined straight from which the losses of two turns add up. */
    static final double TWO_TURNS_WIDTHS = 1.5;

    private static final String SOURCE =
            "square turn by frequency times width, ASHRAE Handbook, HVAC Applications (from memory); turns with less than"
                    + " half a width of lined straight between them count as one, with one and a half as two";
    private static final double TOLERANCE = 1e-9;

    private final TermList list;
    private double lastWidth;
    private double linedBetween;
    private String between = "";
    private List<Run> runs = List.of();

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
            return liner >= AshraeSquareElbow.LINED_SHARE * width - TOLERANCE;
        }

        boolean lined() {
            return linedBeyond >= AshraeSquareElbow.LINED_WIDTHS * width - TOLERANCE;
        }

        double linedShare() {
            return AshraeSquareElbow.linedShare(liner, linedBeyond, width);
        }
    }

    /**
     * Turns that end with the last one and count as one.
     *
     * @param weight of this way to part the turns, 0 to 1; those of all runs add up to 1
     * @param most that one of them loses, octaves and thirds, dB
     */
    private record Run(double weight, BandLoss most) {}

    /** A straight between two turns; its length counts as far as it is lined, m. */
    void straight(String part, double lined) {
        between = part;
        linedBetween = lined;
    }

    /** Adds the next turn's term and gives what it is credited with. */
    Spectrum turn(Place place) {
        BandLoss alone = AshraeSquareElbow.loss(place.width(), place.linedShare(), place.part());
        double apart = apart(place);
        List<Run> longer = new ArrayList<>();
        BandLoss credited = alone.times(apart);
        if (apart > 0) {
            longer.add(new Run(apart, alone));
        }
        if (apart < 1) {
            for (Run run : runs) {
                double weight = run.weight() * (1 - apart);
                longer.add(new Run(weight, alone.atLeast(run.most())));
                credited = credited.plus(alone.beyond(run.most()).times(weight));
            }
        }
        runs = longer;
        list.add("turn", place.part(), SOURCE, credited, inputs(place, apart));
        sayWhatIsShort(place);
        lastWidth = place.width();
        return credited.thirds();
    }

    /** How far the turn stands apart from the turn before it, 0 to 1. */
    private double apart(Place place) {
        if (lastWidth == 0) {
            return 1;
        }
        double width = Math.max(lastWidth, place.width());
        double undisturbed = APART_WIDTHS * width;
        if (linedBetween < undisturbed - TOLERANCE) {
            list.add(Notice.of(
                    NoticeKind.TURNS_INTERFERE, Severity.WARNING, between, linedBetween, undisturbed, Unit.MILLIMETRE));
        }
        return Ramp.share(linedBetween / width, ONE_TURN_WIDTHS, TWO_TURNS_WIDTHS);
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

    private static List<TermInput> inputs(Place place, double apart) {
        return List.of(
                new TermInput("width", place.width(), Unit.MILLIMETRE),
                new TermInput("linerThickness", place.liner(), Unit.MILLIMETRE),
                new TermInput("linedBeyond", place.linedBeyond(), Unit.MILLIMETRE),
                new TermInput("lined", place.linedShare(), Unit.NUMBER),
                new TermInput("apart", apart, Unit.NUMBER));
    }
}
