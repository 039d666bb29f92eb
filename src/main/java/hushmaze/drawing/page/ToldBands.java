package hushmaze.drawing.page;

import hushmaze.assess.BandResult;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Told;
import hushmaze.drawing.Told.Item;
import hushmaze.project.VentPath;
import java.util.ArrayList;
import java.util.List;

/** What the bands of a path's charts tell: every figure, and where it comes from. */
final class ToldBands {
    private final Job job;
    private final List<BandResult> charted;

    ToldBands(Job job, List<BandResult> charted) {
        this.job = job;
        this.charted = charted;
    }

    /** Of the noise with and without the box. */
    Told levels(int number) {
        BandResult band = charted.get(number);
        VentPath path = job.result().path();
        return told(
                band,
                List.of(
                        item(
                                "chart.noise",
                                db(band.noise()),
                                path.brief().noise().source()),
                        item("chart.allowed", db(band.allowed()), Labels.of("told.allowed", target())),
                        range("chart.range", band.noise() - band.high(), band.level(), "told.levels"),
                        item("chart.likelyLevel", db(band.noise() - band.likely()), Labels.of("told.likelyLevel"))));
    }

    /** Of the reduction by the box. */
    Told losses(int number) {
        BandResult band = charted.get(number);
        List<Item> items = new ArrayList<>(whole(band));
        items.add(item("chart.likely", db(band.likely()), Labels.of("told.likely")));
        items.add(item("chart.path", db(band.path()), Labels.of("told.path." + best(band))));
        items.add(item("chart.estimate", db(band.estimate()), Labels.of("told.estimate")));
        items.add(item("chart.walls", db(band.walls()), Labels.of("told.walls")));
        return told(band, items);
    }

    /** Of the path by each method that was run. */
    Told methods(int number) {
        BandResult band = charted.get(number);
        List<Item> items = new ArrayList<>(whole(band));
        items.add(item("chart.estimate", db(band.estimate()), Labels.of("told.estimate")));
        if (band.quick() != null) {
            items.add(item("chart.quick", db(band.quick()), Labels.of("told.path.quick")));
        }
        if (band.wave() != null) {
            items.add(item("chart.wave", db(band.wave()), Labels.of("told.path.wave")));
        }
        items.add(item("chart.walls", db(band.walls()), Labels.of("told.walls")));
        return told(band, items);
    }

    private List<Item> whole(BandResult band) {
        return List.of(
                range("chart.lossRange", band.low(), band.high(), "told.range"),
                item("chart.needed", db(band.needed()), Labels.of("told.needed")));
    }

    private static String best(BandResult band) {
        if (band.wave() != null) {
            return "wave";
        }
        return band.quick() == null ? "estimate" : "quick";
    }

    private String target() {
        return job.wording().target(job.assessment().project().room().target());
    }

    private static Told told(BandResult band, List<Item> items) {
        return new Told(Labels.of("told.band", band.band().label()), items);
    }

    private static Item item(String name, String value, String source) {
        return new Item(Labels.of(name), value, source);
    }

    private Item range(String name, double low, double high, String source) {
        String figures =
                Labels.of("told.from", job.figures().db(low), job.figures().db(high));
        return item(name, figures, Labels.of(source));
    }

    private String db(double value) {
        return Labels.of("told.db", job.figures().db(value));
    }
}
