package hushmaze.drawing.page;

import hushmaze.assess.BandResult;
import hushmaze.assess.PathResult;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Blocks;
import hushmaze.drawing.draft.SpectrumChart;
import hushmaze.drawing.draft.SpectrumChart.Range;
import hushmaze.drawing.draft.SpectrumChart.Series;
import hushmaze.drawing.draft.Table;
import hushmaze.drawing.draft.Table.Column;
import hushmaze.project.Opening;
import hushmaze.project.Target;
import hushmaze.quantity.Band;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;

/** The summary: what the box is, the verdicts, sound, air, what to buy, and what to look at before building. */
final class SummaryPages {
    private static final double CHART = 47;
    private static final double LOWEST_LEVEL = -10;
    /** Room of the chart of losses above what the box has of them, dB. */
    private static final double ABOVE = 9;

    /** Half of what margins are printed to, dB. */
    private static final double HALF_A_STEP = 0.05;

    private static final Stroke MAIN = new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.BLACK);
    private static final Stroke LIMIT = new Stroke(true, Stroke.Pattern.DASHED, Ink.ALERT);
    private static final Stroke LIKELY = new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.ACCENT);
    private static final Stroke PATH = new Stroke(false, Stroke.Pattern.CHAIN, Ink.BLACK);
    private static final Stroke ESTIMATE = new Stroke(false, Stroke.Pattern.CONTINUOUS, Ink.BLACK);
    private static final Stroke QUICK = new Stroke(true, Stroke.Pattern.CHAIN, Ink.BLACK);
    private static final Stroke WAVE = new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.ACCENT);
    private static final Stroke WALLS = new Stroke(false, Stroke.Pattern.DOTTED, Ink.BLACK);

    private final Job job;
    private final PathResult result;
    private final Blocks blocks;
    /** Bands of the charts. */
    private final List<BandResult> charted;

    SummaryPages(Job job) {
        this(job, job.result().thirds());
    }

    /** With charts in other bands of the same result. */
    SummaryPages(Job job, List<BandResult> charted) {
        this.job = job;
        this.charted = charted;
        this.result = job.result();
        this.blocks = job.blocks();
    }

    List<Draft> pages() {
        List<Block> all = new ArrayList<>();
        all.add(blocks.title(Labels.of("summary.heading", result.path().name())));
        all.add(blocks.paragraph(whatItIs()));
        all.addAll(VerdictBlock.of(job));
        notices(all, Severity.STOP, List.of());
        notices(all, Severity.WARNING, ask());
        all.add(blocks.heading(Labels.of("summary.levels")));
        all.add(blocks.chart(1, CHART, levels()::draw, Labels.of("summary.levels.remark")));
        all.add(blocks.heading(Labels.of("summary.loss")));
        all.add(blocks.chart(1, CHART, losses()::draw, Labels.of("summary.loss.remark")));
        all.add(blocks.heading(Labels.of("summary.octaves")));
        all.add(octaves());
        if (madeUpFor()) {
            all.add(blocks.remark(Labels.of("octaves.remark")));
        }
        all.addAll(new RouteBlocks(job).all());
        all.addAll(new AirBlocks(job).all());
        all.addAll(new ShoppingBlocks(job).all());
        all.addAll(new TermBlocks(job).all());
        all.addAll(new RoomBlocks(job).all());
        notices(all, Severity.NOTE, List.of());
        return job.textPages(Labels.of("summary.title"), Labels.of("type.summary"), all);
    }

    private String whatItIs() {
        PathResult.Fits fits = result.fits();
        Opening opening = result.path().brief().opening();
        return Labels.of(
                "summary.whatItIs",
                Labels.of("purpose." + lower(result.path().purpose())),
                job.assessment().project().room().name(),
                job.amounts().flow(result.path().brief().flow()),
                Labels.of("opening." + lower(opening.kind())),
                job.amounts().sizes(opening.width(), opening.height()),
                job.amounts().sizes(fits.width(), fits.height(), fits.depth()),
                job.wording().box(result.path().box()),
                job.amounts().mass(result.buildable().mass()));
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private List<Double> each(Function<BandResult, Double> value) {
        return SpectrumChart.each(charted, value);
    }

    private List<Band> bands() {
        return charted.stream().map(BandResult::band).toList();
    }

    SpectrumChart levels() {
        return new SpectrumChart(
                bands(),
                LOWEST_LEVEL,
                new Range(Labels.of("chart.range"), each(b -> b.noise() - b.high()), each(BandResult::level)),
                List.of(
                        new Series(Labels.of("chart.noise"), MAIN, false, each(BandResult::noise)),
                        new Series(Labels.of("chart.allowed"), LIMIT, true, each(BandResult::allowed)),
                        new Series(Labels.of("chart.likelyLevel"), LIKELY, false, each(b -> b.noise() - b.likely()))),
                job.measure());
    }

    SpectrumChart losses() {
        List<Series> series = new ArrayList<>();
        series.add(new Series(Labels.of("chart.needed"), LIMIT, true, each(BandResult::needed)));
        series.add(new Series(Labels.of("chart.likely"), LIKELY, false, each(BandResult::likely)));
        series.add(new Series(Labels.of("chart.path"), PATH, false, each(BandResult::path)));
        series.add(new Series(Labels.of("chart.estimate"), ESTIMATE, false, each(BandResult::estimate)));
        series.add(new Series(Labels.of("chart.walls"), WALLS, false, each(BandResult::walls)));
        return losses(series);
    }

    /** The path by each method that was run, and the walls beside it. */
    SpectrumChart methods() {
        List<Series> series = new ArrayList<>();
        series.add(new Series(Labels.of("chart.needed"), LIMIT, true, each(BandResult::needed)));
        series.add(new Series(Labels.of("chart.estimate"), ESTIMATE, false, each(BandResult::estimate)));
        add(series, "chart.quick", QUICK, BandResult::quick);
        add(series, "chart.wave", WAVE, BandResult::wave);
        series.add(new Series(Labels.of("chart.walls"), WALLS, false, each(BandResult::walls)));
        return losses(series);
    }

    /** Lines before the range of the box. */
    private SpectrumChart losses(List<Series> series) {
        return new SpectrumChart(
                bands(),
                LOWEST_LEVEL,
                highestLoss(),
                new Range(Labels.of("chart.lossRange"), each(BandResult::low), each(BandResult::high)),
                series,
                job.measure());
    }

    /** A little above all that is asked of the box or expected of it: the path alone may lose more than can ever be measured. */
    private double highestLoss() {
        return ABOVE
                + charted.stream()
                        .mapToDouble(b -> Math.max(b.needed(), b.high()))
                        .filter(Double::isFinite)
                        .max()
                        .orElse(0);
    }

    /** Only where the method was run in some band. */
    private void add(List<Series> series, String name, Stroke stroke, Function<BandResult, Double> value) {
        if (charted.stream().map(value).anyMatch(Objects::nonNull)) {
            series.add(new Series(Labels.of(name), stroke, false, each(value)));
        }
    }

    private Block octaves() {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.name(Labels.of("octaves.band")));
        result.octaves().forEach(b -> columns.add(Column.number(b.band().label())));
        Table table = new Table(job.measure(), columns);
        row(table, "octaves.noise", BandResult::noise);
        row(table, "octaves.allowed", BandResult::allowed);
        row(table, "octaves.needed", BandResult::needed);
        row(table, "octaves.low", BandResult::low);
        row(table, "octaves.likely", BandResult::likely);
        row(table, "octaves.high", BandResult::high);
        row(table, "octaves.path", BandResult::estimate);
        row(table, "octaves.quick", BandResult::quick);
        row(table, "octaves.wave", BandResult::wave);
        row(table, "octaves.walls", BandResult::walls);
        row(table, "octaves.level", BandResult::level);
        table.strong(cells("octaves.margin", BandResult::margin));
        return table;
    }

    /** Whether a margin is printed below zero although the target, one weighted number, is kept. */
    private boolean madeUpFor() {
        boolean weighted = job.assessment().project().room().target().kind() == Target.Kind.DBA;
        return weighted && result.quiet().ok() && result.octaves().stream().anyMatch(b -> b.margin() < -HALF_A_STEP);
    }

    private void row(Table table, String key, Function<BandResult, Double> value) {
        if (result.octaves().stream().map(value).anyMatch(Objects::nonNull)) {
            table.row(cells(key, value));
        }
    }

    private String[] cells(String key, Function<BandResult, Double> value) {
        List<String> cells = new ArrayList<>();
        cells.add(Labels.of(key));
        result.octaves().forEach(b -> cells.add(job.figures().db(value.apply(b))));
        return cells.toArray(String[]::new);
    }

    /** What others have to allow before anything is bought; of ductwork a notice says so. */
    private List<String> ask() {
        boolean ducted = result.path().brief().opening().beyond() == Opening.Beyond.DUCTWORK;
        return ducted ? List.of() : List.of(Labels.of("notices.ask"));
    }

    /** @param first what is said before the notices */
    private void notices(List<Block> all, Severity severity, List<String> first) {
        List<String> sentences = new ArrayList<>(first);
        for (List<Notice> notices : List.of(result.notices(), job.assessment().notices())) {
            notices.stream()
                    .filter(n -> n.severity() == severity)
                    .map(job.wording()::notice)
                    .filter(s -> !sentences.contains(s))
                    .forEach(sentences::add);
        }
        if (!sentences.isEmpty()) {
            all.add(blocks.heading(Labels.of("notices." + lower(severity))));
            sentences.forEach(s -> all.add(blocks.bullet(s, severity == Severity.STOP ? Ink.ALERT : Ink.BLACK)));
        }
    }
}
