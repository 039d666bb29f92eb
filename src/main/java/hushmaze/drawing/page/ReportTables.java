package hushmaze.drawing.page;

import hushmaze.assess.AirComparison;
import hushmaze.assess.BandResult;
import hushmaze.assess.ComparedBand;
import hushmaze.assess.Comparison;
import hushmaze.assess.Finding;
import hushmaze.assess.MeasuredNeed;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Labels;
import hushmaze.drawing.draft.Table;
import hushmaze.drawing.draft.Table.Column;
import hushmaze.project.PathReadings;
import hushmaze.project.Reading;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.wording.CompareWording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The tables of a measurement: bands, findings, air, readings. */
final class ReportTables {
    private final Job job;
    private final CompareWording words;

    ReportTables(Job job) {
        this.job = job;
        this.words = new CompareWording(job.wording());
    }

    /** A row for every band. */
    Table bands(Comparison comparison, MeasuredNeed need) {
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.name(Labels.of("report.band")),
                        number("report.before"),
                        number("report.after"),
                        number("report.over"),
                        number("report.reduction"),
                        number("report.uncertainty"),
                        number("report.low"),
                        number("report.likely"),
                        number("report.high"),
                        Column.words(Labels.of("report.verdict")),
                        number("report.need"),
                        Column.name(Labels.of("report.standing"))));
        boolean octaves = comparison.bands() == BandSet.OCTAVE;
        List<BandResult> predicted = job.result().bands(comparison.bands());
        Figures f = job.figures();
        for (int i = 0; i < predicted.size(); i++) {
            ComparedBand row = comparison.rows().get(i);
            table.row(
                    row.band().label(),
                    f.db(row.before()),
                    f.db(row.after()),
                    f.db(row.overBackground()),
                    row.reduction() != null && row.atLeast()
                            ? Labels.of("report.atLeast", f.db(row.reduction()))
                            : f.db(row.reduction()),
                    f.db(row.uncertainty()),
                    f.db(row.low()),
                    f.db(row.likely()),
                    f.db(row.high()),
                    Labels.of("report.verdict." + row.verdict()),
                    f.db(predicted.get(i).needed()),
                    Labels.of("report.standing." + need.standings().get(i)));
        }
        if (!octaves) {
            table.dense();
        }
        return job.paper().large() ? table.whole() : table;
    }

    /** Figures under a head that may take two lines. */
    private static Column number(String key) {
        return new Column(Labels.of(key), Anchor.END, true);
    }

    /** The mean level of every round as it was read, beside noise and limit of the project. */
    Table levels(ReadLevels read) {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.name(Labels.of("report.band")));
        read.means().keySet().forEach(round -> columns.add(Column.number(words.round(round))));
        if (read.absolute()) {
            columns.add(Column.number(Labels.of("report.levels.noise")));
            columns.add(Column.number(Labels.of("report.levels.allowed")));
        }
        Table table = new Table(job.measure(), columns);
        for (int i = 0; i < read.set().size(); i++) {
            List<String> cells = new ArrayList<>();
            cells.add(read.set().bands().get(i).label());
            for (BandLevels mean : read.means().values()) {
                cells.add(job.figures().db(mean.covered(i) ? Double.valueOf(mean.level(i)) : null));
            }
            if (read.absolute()) {
                cells.add(job.figures().db(read.predicted().get(i).noise()));
                cells.add(job.figures().db(read.predicted().get(i).allowed()));
            }
            table.row(cells.toArray(String[]::new));
        }
        return table.dense();
    }

    /** What was found, and what to try next. */
    Table findings(Comparison comparison) {
        Table table = new Table(
                job.measure(),
                List.of(Column.words(Labels.of("report.finding")), Column.words(Labels.of("report.next"))));
        for (Finding finding : comparison.findings()) {
            table.row(words.finding(finding), words.next(finding));
        }
        return table;
    }

    /** What was measured of the air. */
    Table air(List<AirComparison.Line> lines) {
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.words(Labels.of("report.air.what")),
                        Column.name(Labels.of("report.air.measured")),
                        Column.name(Labels.of("report.air.predicted")),
                        Column.words(Labels.of("report.air.verdict"))));
        for (AirComparison.Line line : lines) {
            table.row(
                    words.airName(line.kind()),
                    Figures.trueMinus(words.airMeasured(line)),
                    Figures.trueMinus(words.airPredicted(line)),
                    words.airVerdict(line));
        }
        return table;
    }

    /** Every reading, round by round. */
    Table readings(PathReadings readings) {
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.name(Labels.of("report.readings.round")),
                        Column.words(Labels.of("report.readings.name")),
                        Column.words(Labels.of("report.readings.bands")),
                        Column.words(Labels.of("report.readings.source"))));
        readings.levels().stream()
                .sorted(Comparator.comparing(Reading::round))
                .forEach(reading -> table.row(
                        words.round(reading.round()), reading.name(), covered(reading.levels()), reading.source()));
        return table;
    }

    /** How many bands have a level, from which to which. */
    private static String covered(BandLevels levels) {
        List<Band> all = levels.bands().bands();
        List<Band> some = IntStream.range(0, all.size())
                .filter(levels::covered)
                .mapToObj(all::get)
                .toList();
        return Labels.of(
                levels.bands() == BandSet.OCTAVE ? "report.readings.octaves" : "report.readings.thirds",
                String.valueOf(some.size()),
                some.get(0).label(),
                some.get(some.size() - 1).label());
    }
}
