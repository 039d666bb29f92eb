package hushmaze.drawing.page;

import hushmaze.assess.Assessment;
import hushmaze.assess.BandResult;
import hushmaze.assess.Comparison;
import hushmaze.assess.PathResult;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Page;
import hushmaze.drawing.Paper;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.FanChart;
import hushmaze.drawing.draft.Lettering;
import hushmaze.drawing.draft.Scale;
import hushmaze.drawing.draft.SpectrumChart;
import hushmaze.drawing.draft.WayChart;
import hushmaze.drawing.draft.Wrap;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.wording.Wording;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Single views of one path for a screen: as on the printed pages, but without frame and title block, and of any size. */
public final class ScreenPages {
    private static final double MARGIN = 4;
    private static final double BETWEEN = 8;
    private static final int SMALLEST_PICTURE = 200;
    private static final double LARGER = 1.2;

    private static final double SMALLEST_EXPLODED = 110;

    /** A chart lower than this has more legend than lines, mm. */
    private static final double LEAST_CHART = 58;

    private static final double MOST_LARGER = 1.5;
    /** Height of a heading with the room below it, mm. */
    private static final double HEAD = Lettering.HEADING * Lettering.LEADING + 1.5;
    /** A narrower chart of two would be figures more than bars, mm. */
    private static final double LEAST_WAY = 120;

    private final Job job;
    /** The parts pulled apart, once they were asked for. */
    private BoxPicture apart;

    /**
     * @param result one of the assessment's paths
     * @param units of all figures
     * @param measure widths of texts
     */
    public ScreenPages(Assessment assessment, PathResult result, UnitSystem units, TextMeasure measure) {
        this.job = new Job(assessment, result, Paper.A4, units, new Wording(units), measure);
    }

    /** The plan with its dimensions and the way of the air, as large as the room allows, mm. */
    public Page plan(double width, double height) {
        return placedPlan(width, height).page();
    }

    /** The plan, with what it takes to find places of the box on it. */
    public PlacedPlan placedPlan(double width, double height) {
        for (int denominator = largest(width, height); denominator < SMALLEST_PICTURE; denominator++) {
            Scale scale = new Scale(denominator);
            Sketch plan = new BoxViews(job).plan(scale);
            Bounds bounds = plan.bounds(job.measure());
            if (bounds.width() <= width - 2 * MARGIN && bounds.height() <= height - 2 * MARGIN) {
                Page page = centred(Labels.of("view.plan"), width, height, plan, bounds);
                return new PlacedPlan(
                        page, width / 2 - bounds.centreX(), height / 2 - bounds.centreY(), scale.paper(1));
            }
        }
        return placedPlan(LARGER * width, LARGER * height);
    }

    /** The cross section. */
    public Page section(double width, double height) {
        return views(Labels.of("view.section"), width, height, scale -> List.of(new BoxViews(job).crossSection(scale)));
    }

    /** The faces with openings in them, seen from outside. */
    public Page faces(double width, double height) {
        return views(Labels.of("arrangement.title"), width, height, scale -> {
            BoxViews box = new BoxViews(job);
            return box.facesWithPorts().stream()
                    .map(face -> box.elevation(face, scale))
                    .toList();
        });
    }

    /** All parts pulled apart, with their marks. */
    public Page exploded(double width, double height) {
        ExplodedPages pages = new ExplodedPages(job);
        if (apart == null) {
            apart = pages.picture();
        }
        // a page too small for its lettering is drawn larger, and shown smaller
        double times = Math.max(1, SMALLEST_EXPLODED / Math.min(width, height));
        double wide = times * width;
        double high = times * height;
        Sketch all = pages.alone(apart, wide - 2 * MARGIN, high - 2 * MARGIN);
        return centred(Labels.of("exploded.title"), wide, high, all, all.bounds(job.measure()));
    }

    /** Noise at the microphone with and without the box, above the reduction by the box, in third octaves. */
    public Page spectra(double width, double height) {
        return spectra(job.result().thirds(), width, height);
    }

    /** The same in octaves. */
    public Page octaves(double width, double height) {
        return spectra(job.result().octaves(), width, height);
    }

    /** The reduction by each method that was run, in third octaves. */
    public Page methods(double width, double height) {
        SpectrumChart methods = new SummaryPages(job).methods();
        ToldBands told = new ToldBands(job, job.result().thirds());
        Sketch sketch = new Sketch();
        chart(
                sketch,
                Labels.of("summary.methods"),
                MARGIN,
                height - 2 * MARGIN,
                h -> methods.draw(width - 2 * MARGIN, h, told::methods));
        return page(Labels.of("summary.methods"), width, height, sketch);
    }

    /** How many times larger two charts are drawn, and then shown smaller, where there is little room for them. */
    private static double larger(double height) {
        double least = 2 * LEAST_CHART + BETWEEN + 2 * MARGIN;
        return Math.min(MOST_LARGER, Math.max(1, least / height));
    }

    private Page spectra(List<BandResult> bands, double givenWidth, double givenHeight) {
        double times = larger(givenHeight);
        double width = times * givenWidth;
        double height = times * givenHeight;
        SummaryPages charts = new SummaryPages(job, bands);
        ToldBands told = new ToldBands(job, bands);
        Sketch sketch = new Sketch();
        double each = (height - 2 * MARGIN - BETWEEN) / 2;
        double room = width - 2 * MARGIN;
        chart(
                sketch,
                Labels.of("summary.levels"),
                MARGIN,
                each,
                h -> charts.levels().draw(room, h, told::levels));
        chart(
                sketch,
                Labels.of("summary.loss"),
                MARGIN + each + BETWEEN,
                each,
                h -> charts.losses().draw(room, h, told::losses));
        return page(Labels.of("summary.levels"), width, height, sketch);
    }

    /** The measured reduction with its uncertainty over the predicted range. */
    public Page reduction(Comparison comparison, double width, double height) {
        Sketch sketch = new Sketch()
                .add(
                        new ReportCharts(job).reduction(comparison).draw(width - 2 * MARGIN, height - 2 * MARGIN),
                        MARGIN,
                        MARGIN);
        return page(Labels.of("report.title"), width, height, sketch);
    }

    /** Pressure over the flow of the path, above carbon dioxide in the room; the latter alone when the room has no answer. */
    public Page air(double givenWidth, double givenHeight) {
        double times = larger(givenHeight);
        double width = times * givenWidth;
        double height = times * givenHeight;
        AirCharts charts = new AirCharts(job);
        Sketch sketch = new Sketch();
        double each = (height - 2 * MARGIN - BETWEEN) / 2;
        double room = width - 2 * MARGIN;
        ToldAir told = new ToldAir(job);
        Optional<FanChart> pressure = charts.pressure();
        pressure.ifPresent(
                c -> chart(sketch, charts.pressureTitle(), MARGIN, each, h -> c.draw(room, h, told::pressures)));
        double below = pressure.isPresent() ? MARGIN + each + BETWEEN : MARGIN;
        chart(sketch, charts.co2Title(), below, each, h -> charts.co2().draw(room, h, told::co2));
        return page(charts.co2Title(), width, height, sketch);
    }

    /** How fast the air is along its way and what pressure that takes. */
    public Page airWay(double givenWidth, double givenHeight) {
        AirWay way = new AirWay(job);
        WayChart chart = way.chart();
        double words = Lettering.TABLE * Lettering.LEADING;
        double least = chart.leastHeight() + HEAD + 2 * words + 2 * MARGIN;
        double times = Math.max(1, Math.max(least / givenHeight, LEAST_WAY / givenWidth));
        double width = times * givenWidth;
        double height = times * givenHeight;
        double room = width - 2 * MARGIN;
        List<String> remark = Wrap.lines(way.remark(), room, Lettering.TABLE, Weight.REGULAR, job.measure());
        double below = remark.size() * words + BETWEEN / 2;
        Sketch sketch = new Sketch();
        Sketch drawn = chart.draw(room, height - HEAD - below - 2 * MARGIN);
        heading(sketch, Labels.of("air.way"), MARGIN);
        sketch.add(drawn, MARGIN, MARGIN + HEAD);
        double y = MARGIN + HEAD + drawn.bounds(job.measure()).y1() + BETWEEN / 2;
        for (String line : remark) {
            y += words;
            sketch.text(MARGIN, y, line, Lettering.TABLE, Weight.REGULAR, Anchor.START, Ink.BLACK);
        }
        return page(Labels.of("air.way"), width, height, sketch);
    }

    private static void chart(Sketch on, String title, double y, double height, Function<Double, Sketch> chart) {
        heading(on, title, y);
        on.add(chart.apply(height - HEAD), MARGIN, y + HEAD);
    }

    private static void heading(Sketch on, String title, double y) {
        on.text(MARGIN, y + Lettering.HEADING, title, Lettering.HEADING, Weight.SEMIBOLD, Anchor.START, Ink.BLACK);
    }

    private Page views(String title, double width, double height, Function<Scale, List<Sketch>> views) {
        for (int denominator = largest(width, height); denominator < SMALLEST_PICTURE; denominator++) {
            List<Sketch> drawn = views.apply(new Scale(denominator));
            for (boolean stacked : new boolean[] {false, true}) {
                Sketch all = together(drawn, stacked);
                Bounds bounds = all.bounds(job.measure());
                if (bounds.width() <= width - 2 * MARGIN && bounds.height() <= height - 2 * MARGIN) {
                    return centred(title, width, height, all, bounds);
                }
            }
        }
        // Too little room for the lettering itself: a larger page, which the screen shows smaller.
        return views(title, LARGER * width, LARGER * height, views);
    }

    /** Larger pictures than this cannot fit, whatever the lettering takes. */
    private int largest(double width, double height) {
        Cuboid outer = job.result().solid().outer();
        double across = Math.min(outer.size(Axis.X), outer.size(Axis.Y)) * 1000 / width;
        double up = Math.min(outer.size(Axis.Y), outer.size(Axis.Z)) * 1000 / height;
        return Math.max(1, (int) Math.floor(Math.max(across, up)));
    }

    private Sketch together(List<Sketch> views, boolean stacked) {
        Sketch all = new Sketch();
        double at = 0;
        double middle = Double.NaN;
        for (Sketch view : views) {
            Bounds b = view.bounds(job.measure());
            double centre = stacked ? b.centreX() : b.centreY();
            middle = Double.isNaN(middle) ? centre : middle;
            all.add(view, stacked ? middle - centre : at - b.x0(), stacked ? at - b.y0() : middle - centre);
            at += (stacked ? b.height() : b.width()) + BETWEEN;
        }
        return all;
    }

    private Page centred(String title, double width, double height, Sketch all, Bounds bounds) {
        Sketch placed = new Sketch().add(all, width / 2 - bounds.centreX(), height / 2 - bounds.centreY());
        return page(title, width, height, placed);
    }

    private Page page(String title, double width, double height, Sketch sketch) {
        return Page.of(title, width, height, job.paper().thinLine(), sketch.shapes());
    }
}
