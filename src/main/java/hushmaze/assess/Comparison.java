package hushmaze.assess;

import hushmaze.measure.ReducedBand;
import hushmaze.measure.Reduction;
import hushmaze.project.Box;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import java.util.ArrayList;
import java.util.List;

/**
 * Measured against predicted for one path: each band against low, likely and high of the predicted insertion loss, and what
 * the whole points to.
 *
 * @param path name of the path
 * @param bands octaves or third octaves
 * @param rows one per band, lowest first
 * @param findings most telling first
 * @param withBackground whether the background was measured
 * @param levels what the levels before and after are
 */
public record Comparison(
        String path,
        BandSet bands,
        List<ComparedBand> rows,
        List<Finding> findings,
        boolean withBackground,
        Levels levels) {
    /** What levels before and after are worth. */
    public enum Levels {
        /** As the files give them. */
        AS_GIVEN,
        /** Of recordings without calibration: a sine at full scale is 0 dB. */
        FULL_SCALE,
        /** Of recordings with a stated offset or a calibrator. */
        CALIBRATED
    }

    private static final int RESONANCES = 3;

    public Comparison {
        rows = List.copyOf(rows);
        findings = List.copyOf(findings);
    }

    /**
     * Readings held against a path.
     *
     * @param predicted the path, assessed
     * @param before positions without the box, at least one
     * @param after positions with the box, at least one
     * @param floor positions with the source off; may be empty
     * @param afterFan positions with the box and its fan or the ventilation running; may be empty
     * @param soundSpeed in the path, m/s
     * @param levels what the levels are
     */
    public static Comparison of(
            PathResult predicted,
            List<BandLevels> before,
            List<BandLevels> after,
            List<BandLevels> floor,
            List<BandLevels> afterFan,
            double soundSpeed,
            Levels levels) {
        Reduction measured = Reduction.of(before, after, floor);
        List<BandResult> bands = measured.bands() == BandSet.OCTAVE ? predicted.octaves() : predicted.thirds();
        List<ComparedBand> rows = new ArrayList<>();
        for (int i = 0; i < bands.size(); i++) {
            rows.add(row(measured.rows().get(i), bands.get(i)));
        }
        List<Finding> findings = new ArrayList<>();
        if (!afterFan.isEmpty()) {
            FanRise.of(after, afterFan).ifPresent(findings::add);
        }
        Box box = predicted.path().box();
        double[] resonances = box.liner() == null ? new double[0] : resonances(box.clearLength(), soundSpeed);
        findings.addAll(Diagnosis.of(measured.bands(), rows, resonances));
        return new Comparison(predicted.path().name(), measured.bands(), rows, findings, !floor.isEmpty(), levels);
    }

    /** The first frequencies at which whole numbers of half waves fit into a length, Hz: n c / (2 L). */
    static double[] resonances(double length, double soundSpeed) {
        double[] hz = new double[RESONANCES];
        for (int n = 1; n <= hz.length; n++) {
            hz[n - 1] = n * soundSpeed / (2 * length);
        }
        return hz;
    }

    private static ComparedBand row(ReducedBand measured, BandResult predicted) {
        ComparedBand.Verdict verdict;
        if (measured.reduction() != null) {
            verdict = ComparedBand.verdict(
                    measured.reduction(),
                    measured.uncertainty(),
                    measured.atLeast(),
                    predicted.low(),
                    predicted.high());
        } else {
            // with both readings there but no difference, background hides the one without the box
            verdict =
                    measured.overBackground() == null ? ComparedBand.Verdict.NOT_MEASURED : ComparedBand.Verdict.HIDDEN;
        }
        return new ComparedBand(
                predicted.band(),
                measured.before(),
                measured.after(),
                measured.reduction(),
                measured.uncertainty(),
                measured.overBackground(),
                measured.atLeast(),
                predicted.low(),
                predicted.likely(),
                predicted.high(),
                verdict);
    }
}
