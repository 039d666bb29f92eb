package hushmaze.assess;

import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * What a pattern of bands below the predicted range points to. A cause is named only where the pattern is the one that cause
 * makes; else it is said that none fits. Rules and limits are our own, from how gaps, bare passes and small rooms behave; no
 * source.
 */
final class Diagnosis {
    private static final double FROM_1_KHZ = 900;
    private static final double LOW_TO = 280;
    private static final double MIDDLE = 550;
    /** A standard deviation up to this is flat, dB. */
    private static final double FLAT = 3;
    /** One part of the spectrum stands out from another by this, dB. */
    private static final double STANDS_OUT = 3;
    /** A few decibels. */
    private static final double FEW = 5;
    /** Readings closer than this to the background are near it, dB. */
    private static final double NEAR = 10;
    /** So many bands, as a share, make a pattern. */
    private static final double MOST = 0.75;

    private static final int LEAST_HIGH = 3;
    private static final int LEAST_DIPS = 2;
    private static final int AROUND = 2;

    private final BandSet set;
    private final List<ComparedBand> rows;
    private final double[] resonances;
    private final List<ComparedBand> judged;
    private final List<ComparedBand> below;

    private Diagnosis(BandSet set, List<ComparedBand> rows, double[] resonances) {
        this.set = set;
        this.rows = rows;
        this.resonances = resonances;
        this.judged = rows.stream().filter(ComparedBand::judged).toList();
        this.below = judged.stream().filter(ComparedBand::below).toList();
    }

    /**
     * @param resonances of a lined pass were it bare, Hz; none to leave them out
     */
    static List<Finding> of(BandSet set, List<ComparedBand> rows, double[] resonances) {
        return new Diagnosis(set, rows, resonances).findings();
    }

    private List<Finding> findings() {
        List<Finding> found = new ArrayList<>();
        if (judged.isEmpty()) {
            found.add(finding(Finding.Kind.NOTHING_TO_JUDGE, rows, null));
        } else if (below.isEmpty()) {
            found.add(good());
        } else {
            found.addAll(causes());
        }
        List<ComparedBand> hidden = rows.stream()
                .filter(r -> r.verdict() == ComparedBand.Verdict.HIDDEN)
                .toList();
        if (!hidden.isEmpty()) {
            found.add(finding(Finding.Kind.BACKGROUND_HIDES, hidden, null));
        }
        return found;
    }

    private Finding good() {
        List<ComparedBand> more = judged.stream()
                .filter(r -> r.verdict() == ComparedBand.Verdict.ABOVE_HIGH)
                .toList();
        return 2 * more.size() >= judged.size()
                ? finding(Finding.Kind.MORE_THAN_PREDICTED, more, -mean(more, ComparedBand::shortfall))
                : finding(Finding.Kind.AS_PREDICTED, judged, null);
    }

    private List<Finding> causes() {
        List<Finding> causes = new ArrayList<>();
        if (sameEverywhere()) {
            causes.add(finding(Finding.Kind.SAME_EVERYWHERE, judged, mean(judged, ComparedBand::shortfall)));
            return causes;
        }
        if (flatAbove1kHz()) {
            List<ComparedBand> high = part(hz -> hz >= FROM_1_KHZ);
            causes.add(finding(Finding.Kind.GAP_OR_THIN_PANEL, high, mean(high, ComparedBand::shortfall)));
        }
        List<ComparedBand> dips = dips();
        if (dips.size() >= LEAST_DIPS) {
            causes.add(finding(Finding.Kind.LINER_MISSING, dips, mean(dips, ComparedBand::shortfall)));
        }
        if (causes.isEmpty()) {
            causes.add(noCause());
        }
        return causes;
    }

    private Finding noCause() {
        double most =
                below.stream().mapToDouble(r -> r.low() - r.reduction()).max().orElseThrow();
        boolean low = below.stream().allMatch(r -> r.band().centreHz() <= LOW_TO);
        if (low && most <= FEW) {
            boolean near = below.stream().allMatch(r -> r.overBackground() != null && r.overBackground() < NEAR);
            return finding(near ? Finding.Kind.LOW_NEAR_BACKGROUND : Finding.Kind.LOW_FEW_MODES, below, most);
        }
        boolean few = set == BandSet.THIRD_OCTAVE && below.size() <= 2;
        return finding(few ? Finding.Kind.SINGLE_BANDS : Finding.Kind.UNEXPLAINED, below, most);
    }

    private boolean sameEverywhere() {
        List<ComparedBand> low = part(hz -> hz < MIDDLE);
        List<ComparedBand> high = part(hz -> hz >= FROM_1_KHZ);
        return low.size() >= LEAST_HIGH
                && high.size() >= LEAST_HIGH
                && below.size() >= MOST * judged.size()
                && spread(judged, ComparedBand::shortfall) <= FLAT
                && Math.abs(mean(low, ComparedBand::shortfall) - mean(high, ComparedBand::shortfall)) < STANDS_OUT;
    }

    private boolean flatAbove1kHz() {
        List<ComparedBand> high = part(hz -> hz >= FROM_1_KHZ);
        long belowHigh = high.stream().filter(ComparedBand::below).count();
        if (high.size() < LEAST_HIGH || belowHigh < MOST * high.size()) {
            return false;
        }
        boolean flat = spread(high, ComparedBand::shortfall) <= FLAT || spread(high, ComparedBand::reduction) <= FLAT;
        List<ComparedBand> low = part(hz -> hz < MIDDLE);
        boolean onlyHigh =
                low.isEmpty() || mean(high, ComparedBand::shortfall) - mean(low, ComparedBand::shortfall) >= STANDS_OUT;
        return flat && onlyHigh;
    }

    /** Bands below the range at resonances of a bare pass that stand out from the bands around that are not. */
    private List<ComparedBand> dips() {
        List<ComparedBand> dips = new ArrayList<>();
        if (set == BandSet.OCTAVE || resonances.length == 0) {
            return dips;
        }
        List<Integer> places = new ArrayList<>();
        for (double hz : resonances) {
            int place = place(hz);
            if (place >= 0 && !places.contains(place)) {
                places.add(place);
            }
        }
        for (int place : places) {
            List<ComparedBand> around = new ArrayList<>();
            for (int i = Math.max(0, place - AROUND); i <= Math.min(rows.size() - 1, place + AROUND); i++) {
                if (!places.contains(i) && rows.get(i).judged()) {
                    around.add(rows.get(i));
                }
            }
            ComparedBand here = rows.get(place);
            boolean standsOut = here.below()
                    && !around.isEmpty()
                    && here.shortfall() - mean(around, ComparedBand::shortfall) >= STANDS_OUT;
            if (standsOut) {
                dips.add(here);
            }
        }
        return dips;
    }

    private int place(double hz) {
        for (int i = 0; i < rows.size(); i++) {
            Band band = rows.get(i).band();
            if (hz >= band.lowerHz() && hz < band.upperHz()) {
                return i;
            }
        }
        return -1;
    }

    private List<ComparedBand> part(Predicate<Double> where) {
        return judged.stream().filter(r -> where.test(r.band().centreHz())).toList();
    }

    private static double mean(List<ComparedBand> bands, ToDoubleFunction<ComparedBand> value) {
        return bands.stream().mapToDouble(value).average().orElseThrow();
    }

    private static double spread(List<ComparedBand> bands, ToDoubleFunction<ComparedBand> value) {
        double mean = mean(bands, value);
        double squares = bands.stream()
                .mapToDouble(b -> (value.applyAsDouble(b) - mean) * (value.applyAsDouble(b) - mean))
                .sum();
        return Math.sqrt(squares / bands.size());
    }

    private static Finding finding(Finding.Kind kind, List<ComparedBand> bands, Double amount) {
        return new Finding(
                kind, bands.get(0).band(), bands.get(bands.size() - 1).band(), amount);
    }
}
