package hushmaze.assess;

import hushmaze.measure.ReducedBand;
import hushmaze.measure.Reduction;
import hushmaze.project.Box;
import hushmaze.project.PathReadings;
import hushmaze.project.Reading;
import hushmaze.project.Reading.Round;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
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
 * @param scale what the levels before and after count from
 */
public record Comparison(
        String path,
        BandSet bands,
        List<ComparedBand> rows,
        List<Finding> findings,
        boolean withBackground,
        Reading.Scale scale) {
    private static final int RESONANCES = 3;

    public Comparison {
        rows = List.copyOf(rows);
        findings = List.copyOf(findings);
    }

    /**
     * Readings held against a path.
     *
     * @param predicted the path, assessed
     * @param readings of it: at least one without the box and one with it; those with the source off and with the air on may be missing
     * @param soundSpeed in the path, m/s
     * @throws InvalidValue if a round that is needed is missing
     */
    public static Comparison of(PathResult predicted, PathReadings readings, double soundSpeed) {
        List<BandLevels> after = needed(readings, Round.WITH_BOX);
        List<BandLevels> floor = readings.of(Round.SOURCE_OFF);
        List<BandLevels> afterFan = readings.of(Round.WITH_AIR);
        Reduction measured = Reduction.of(needed(readings, Round.WITHOUT_BOX), after, floor);
        List<BandResult> bands = predicted.bands(measured.bands());
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
        return new Comparison(
                predicted.path().name(), measured.bands(), rows, findings, !floor.isEmpty(), readings.scale());
    }

    private static List<BandLevels> needed(PathReadings readings, Round round) {
        if (!readings.has(round)) {
            throw new InvalidValue("readings", "none of the round " + round, "at least one reading", "");
        }
        return readings.of(round);
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
