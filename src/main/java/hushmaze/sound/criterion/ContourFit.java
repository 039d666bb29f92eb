package hushmaze.sound.criterion;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;

/**
 * A contour over third octaves shifted up against a loss in whole decibels as far as its rules allow: what the ratings of ISO
 * 717-1 and ASTM E413 have in common.
 *
 * @param number value of the shifted contour at 500 Hz, dB
 * @param deficiencies by how much the loss lies below the shifted contour, band by band, dB
 */
record ContourFit(int number, double[] deficiencies) {
    /** Most the deficiencies may add up to, dB. */
    static final double MOST_TOGETHER = 32;

    /** Slack for sums of tenths. */
    private static final double SLACK = 1e-9;

    private static final double EXTREME = 1e4;

    ContourFit {
        deficiencies = deficiencies.clone();
    }

    @Override
    public double[] deficiencies() {
        return deficiencies.clone();
    }

    /**
     * The highest fit.
     *
     * @param loss third octaves, dB, already rounded as the standard asks
     * @param firstBand index of the contour's first band
     * @param contour relative to its value at 500 Hz, dB
     * @param mostInOneBand largest single deficiency, dB; infinite for no such rule
     * @throws InvalidValue if no band has a finite loss, or one lets everything through without limit
     */
    static ContourFit highest(Spectrum loss, int firstBand, int[] contour, double mostInOneBand) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < contour.length; i++) {
            double above = loss.value(firstBand + i) - contour[i];
            if (above < Double.POSITIVE_INFINITY) {
                InvalidValue.within("loss", above, -EXTREME, EXTREME, Unit.DECIBEL);
                highest = Math.max(highest, above);
            }
        }
        if (highest == Double.NEGATIVE_INFINITY) {
            throw new InvalidValue("loss", "infinite in every band", "finite in at least one band", "dB");
        }
        int number = (int) Math.ceil(highest + MOST_TOGETHER) + 1;
        while (!allowed(loss, firstBand, contour, number, mostInOneBand)) {
            number--;
        }
        return new ContourFit(number, deficiencies(loss, firstBand, contour, number));
    }

    double sum() {
        double sum = 0;
        for (double deficiency : deficiencies) {
            sum += deficiency;
        }
        return sum;
    }

    double largest() {
        return deficiencies[worst()];
    }

    /** Index within the contour of the largest deficiency; 0 if there is none. */
    int worst() {
        int worst = 0;
        for (int i = 1; i < deficiencies.length; i++) {
            worst = deficiencies[i] > deficiencies[worst] ? i : worst;
        }
        return worst;
    }

    private static boolean allowed(Spectrum loss, int firstBand, int[] contour, int number, double mostInOneBand) {
        ContourFit fit = new ContourFit(number, deficiencies(loss, firstBand, contour, number));
        return fit.sum() <= MOST_TOGETHER + SLACK && fit.largest() <= mostInOneBand + SLACK;
    }

    private static double[] deficiencies(Spectrum loss, int firstBand, int[] contour, int number) {
        double[] below = new double[contour.length];
        for (int i = 0; i < below.length; i++) {
            below[i] = Math.max(0, number + contour[i] - loss.value(firstBand + i));
        }
        return below;
    }
}
