package hushmaze.drawing.page;

import hushmaze.assess.BandResult;
import hushmaze.assess.ComparedBand;
import hushmaze.assess.Comparison;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.draft.SpectrumChart;
import hushmaze.drawing.draft.SpectrumChart.Range;
import hushmaze.drawing.draft.SpectrumChart.Readings;
import hushmaze.drawing.draft.SpectrumChart.Series;
import hushmaze.project.PathReadings;
import hushmaze.quantity.BandLevels;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The charts of a measurement: the reduction over the predicted range, and the levels of every round. */
final class ReportCharts {
    private static final double LOWEST_LOSS = -10;
    /** Recordings without calibration are far below zero. */
    private static final double LOWEST_LEVEL = -140;

    private static final Stroke NEEDED = new Stroke(true, Stroke.Pattern.DASHED, Ink.ALERT);
    private static final Stroke LIKELY = new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.ACCENT);
    private static final Stroke NOISE = new Stroke(false, Stroke.Pattern.CHAIN, Ink.BLACK);
    private static final List<Stroke> ROUNDS = List.of(
            new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.BLACK),
            new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.ACCENT),
            new Stroke(true, Stroke.Pattern.DOTTED, Ink.BLACK),
            new Stroke(true, Stroke.Pattern.CHAIN, Ink.ACCENT));

    private final Job job;

    ReportCharts(Job job) {
        this.job = job;
    }

    /** The measured reduction with its uncertainty over the predicted range. */
    SpectrumChart reduction(Comparison comparison) {
        List<ComparedBand> rows = comparison.rows();
        List<BandResult> bands = job.result().bands(comparison.bands());
        return new SpectrumChart(
                comparison.bands().bands(),
                LOWEST_LOSS,
                new Range(
                        Labels.of("report.chart.range"),
                        rows.stream().map(ComparedBand::low).toList(),
                        rows.stream().map(ComparedBand::high).toList()),
                List.of(
                        new Series(
                                Labels.of("report.chart.needed"),
                                NEEDED,
                                false,
                                bands.stream().map(BandResult::needed).toList()),
                        new Series(
                                Labels.of("report.chart.likely"),
                                LIKELY,
                                false,
                                rows.stream().map(ComparedBand::likely).toList())),
                new Readings(
                        Labels.of("report.chart.measured"),
                        Labels.of("report.chart.atLeast"),
                        SpectrumChart.each(rows, ComparedBand::reduction),
                        SpectrumChart.each(rows, ComparedBand::uncertainty),
                        rows.stream().map(ComparedBand::atLeast).toList()),
                job.measure());
    }

    /** The mean level of every round as it was read, beside noise and limit of the project where levels count from something. */
    SpectrumChart levels(PathReadings readings) {
        ReadLevels read = ReadLevels.of(job, readings);
        List<Series> series = new ArrayList<>();
        read.means()
                .forEach((round, level) -> series.add(new Series(
                        Labels.of("report.levels." + round), ROUNDS.get(round.ordinal()), true, values(level))));
        if (read.absolute()) {
            List<BandResult> bands = read.predicted();
            series.add(new Series(
                    Labels.of("report.levels.noise"),
                    NOISE,
                    false,
                    bands.stream().map(BandResult::noise).toList()));
            series.add(new Series(
                    Labels.of("report.levels.allowed"),
                    NEEDED,
                    false,
                    bands.stream().map(BandResult::allowed).toList()));
        }
        return new SpectrumChart(read.set().bands(), LOWEST_LEVEL, null, series, job.measure());
    }

    private static List<Double> values(BandLevels levels) {
        return IntStream.range(0, levels.bands().size())
                .mapToObj(i -> levels.covered(i) ? levels.level(i) : Double.NaN)
                .toList();
    }
}
