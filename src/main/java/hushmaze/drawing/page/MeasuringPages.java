package hushmaze.drawing.page;

import hushmaze.assess.BandResult;
import hushmaze.assess.PathResult;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.FormTable;
import hushmaze.drawing.draft.FormTable.Column;
import hushmaze.drawing.draft.Lettering;
import hushmaze.project.Opening;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A sheet to take to the room: how to measure before and after the box is fitted, and forms to write the readings into, with
 * what was predicted printed beside them.
 *
 * <p>Background noise: a reading less than 6 dB above the background is a limit only, up to 15 dB it is corrected by
 * L = 10 lg(10^(L1/10) - 10^(L0/10)); L1 the reading, L0 the background, dB. Source: practice of ISO 10140-4, ISO 16283-1 (which
 * corrects up to 10 dB) and ISO 3744 (which corrects up to 15 dB), from memory; 0.46 dB at 10 dB and 1.26 dB at 6 dB as in the
 * title of Ecma TR/107. Distances of microphones: ISO 16283-1, from memory.
 */
final class MeasuringPages {
    /** Least difference to the background at which a reading is more than a limit, and that from which it needs no correction, dB. */
    private static final int LEAST = 6;

    private static final int CLEAR = 15;
    /** Least distances of a place to measure at, m: to other places, to walls and things, to the mouth and the source. */
    private static final double APART = 0.7;

    private static final double FROM_WALLS = 0.5;
    private static final double FROM_SOURCE = 1;
    /** Height of a row to write in, mm; of one with a third of the bands. */
    private static final double HAND = 7;

    private static final double HAND_THIRDS = 5.3;
    /** Height of a line with fields, and distance of its two halves, mm. */
    private static final double FIELD = 7.4;

    private static final double GUTTER = 6;
    /** Least height of the squared field, and height of its squares, mm. */
    private static final double PLAN = 100;

    private static final double SQUARE = 5;
    /** Places in the mouth the velocity is read at. */
    private static final int PLACES = 9;
    /** Steps a manometer must show, Pa, and in inches of water. */
    private static final double FINE = 0.1;

    private static final double FINE_INCH = 0.001;

    private final Job job;
    private final PathResult result;

    MeasuringPages(Job job) {
        this.job = job;
        this.result = job.result();
    }

    List<Draft> pages() {
        List<Block> words = new ArrayList<>();
        words.add(job.blocks().title(Labels.of("measuring.title")));
        words.add(job.blocks().paragraph(Labels.of("measuring.explained")));
        how(words);
        meaning(words);
        bullets(words, "measuring.phone");
        words.add(job.blocks().remark(Labels.of("measuring.sources")));
        List<Block> forms = new ArrayList<>();
        fields(forms);
        readings(forms);
        air(forms);
        if (inThirds()) {
            plan(forms);
        }
        return job.textPagesApart(Labels.of("measuring.title"), Labels.of("type.measuring"), words, forms);
    }

    private void how(List<Block> all) {
        all.add(job.blocks().heading(Labels.of("measuring.how")));
        String distance = distance(job.assessment().project().room().microphoneDistance());
        String clear = distance(FROM_SOURCE);
        boolean duct = result.path().brief().opening().beyond() == Opening.Beyond.DUCTWORK;
        all.add(job.blocks()
                .bullet(duct ? Labels.of("measuring.how.source.duct") : Labels.of("measuring.how.source", clear)));
        all.add(job.blocks()
                .bullet(Labels.of("measuring.how.places", distance, distance(APART), distance(FROM_WALLS), clear)));
        all.add(job.blocks().bullet(Labels.of("measuring.how.room")));
        all.add(job.blocks().bullet(Labels.of("measuring.how.rounds")));
        all.add(job.blocks().bullet(Labels.of("measuring.how.level")));
    }

    private void meaning(List<Block> all) {
        all.add(job.blocks().heading(Labels.of("measuring.meaning")));
        all.add(job.blocks().bullet(Labels.of("measuring.meaning.loss")));
        String corrections = IntStream.range(LEAST, CLEAR)
                .mapToObj(d -> Labels.of(
                        d == LEAST ? "measuring.correction" : "measuring.correction.next", String.valueOf(d), taken(d)))
                .collect(Collectors.joining(", "));
        all.add(job.blocks()
                .bullet(Labels.of(
                        "measuring.meaning.background",
                        String.valueOf(CLEAR),
                        String.valueOf(LEAST),
                        corrections,
                        taken(LEAST))));
        all.add(job.blocks().bullet(Labels.of("measuring.meaning.example")));
        all.add(job.blocks().bullet(Labels.of("measuring.meaning.range")));
        all.add(job.blocks().bullet(Labels.of("measuring.meaning.others")));
    }

    private String taken(int difference) {
        return job.figures().fixed(correction(difference), 1);
    }

    /** What the background adds to a sound that stands with it so far above the background, dB. */
    static double correction(double difference) {
        return -10 * Math.log10(1 - Math.pow(10, -difference / 10));
    }

    private void bullets(List<Block> all, String group) {
        all.add(job.blocks().heading(Labels.of(group)));
        Labels.list(group).forEach(text -> all.add(job.blocks().bullet(text)));
    }

    private void fields(List<Block> all) {
        all.add(job.blocks().heading(Labels.of("measuring.fields")));
        List<String> labels = Labels.list("measuring.fields");
        int lines = (labels.size() + 1) / 2;
        all.add(job.blocks().figure(0, lines * FIELD, width -> {
            Sketch sketch = new Sketch();
            double column = (width - GUTTER) / 2;
            for (int i = 0; i < labels.size(); i++) {
                double x = i % 2 * (column + GUTTER);
                double y = (i / 2 + 1) * FIELD - 1.5;
                double word = job.measure().width(labels.get(i), Lettering.TABLE, Weight.REGULAR);
                sketch.text(x, y, labels.get(i), Lettering.TABLE, Anchor.START);
                sketch.line(x + word + 1.5, y + 0.7, x + column, y + 0.7, Stroke.THIN);
            }
            return sketch;
        }));
    }

    /** Whether the project's noise is in thirds of octaves; else it is in octaves. */
    private boolean inThirds() {
        return result.path().brief().noise().levels().bands().fraction() == BandSet.THIRD_OCTAVE.fraction();
    }

    private static List<Column> readingsColumns() {
        return List.of(
                new Column(Labels.of("octaves.band"), 0),
                new Column(Labels.of("measuring.background"), 1),
                new Column(Labels.of("measuring.open"), 1),
                new Column(Labels.of("measuring.box"), 1),
                new Column(Labels.of("measuring.blocked"), 1),
                new Column(Labels.of("measuring.loss"), 1),
                new Column(Labels.of("measuring.low"), 0),
                new Column(Labels.of("measuring.likely"), 0),
                new Column(Labels.of("measuring.high"), 0),
                new Column(Labels.of("measuring.needed"), 0),
                new Column(Labels.of("measuring.noise"), 0));
    }

    private void readings(List<Block> all) {
        boolean thirds = inThirds();
        all.add(job.blocks().heading(Labels.of("measuring.readings")));
        FormTable table = new FormTable(job.measure(), thirds ? HAND_THIRDS : HAND, readingsColumns());
        Figures f = job.figures();
        for (BandResult b : thirds ? result.thirds() : result.octaves()) {
            table.row(
                    b.band().label(),
                    null,
                    null,
                    null,
                    null,
                    null,
                    f.db(b.low()),
                    f.db(b.likely()),
                    f.db(b.high()),
                    f.db(b.needed()),
                    f.db(b.noise()));
        }
        all.add(table);
        all.add(job.blocks().remark(Labels.of("measuring.readings.remark")));
    }

    /** The velocities in the mouth, place by place. */
    private Block places() {
        List<Column> nine = new ArrayList<>();
        nine.add(new Column(Labels.of("measuring.air.velocity", job.figures().velocityUnit()), 3));
        String[] without = new String[PLACES + 1];
        String[] with = new String[PLACES + 1];
        without[0] = Labels.of("measuring.air.placesWithout");
        with[0] = Labels.of("measuring.air.placesWith");
        for (int i = 1; i <= PLACES; i++) {
            nine.add(new Column(String.valueOf(i), 1));
        }
        return new FormTable(job.measure(), HAND, nine).row(without).row(with);
    }

    private void air(List<Block> all) {
        all.add(job.blocks().heading(Labels.of("measuring.air")));
        all.add(places());
        double mouth = result.solid().roomPort().area();
        double flow = result.pathAir().flow();
        FormTable table = new FormTable(
                job.measure(),
                HAND,
                List.of(
                        new Column(Labels.of("measuring.air.what"), 3),
                        new Column(Labels.of("measuring.air.without"), 1),
                        new Column(Labels.of("measuring.air.with"), 1),
                        new Column(Labels.of("measuring.air.expected"), 0)));
        table.row(Labels.of("measuring.air.mean"), null, null, job.amounts().velocity(flow / mouth));
        double opening = result.path().brief().opening().area();
        table.row(Labels.of("measuring.air.area"), area(opening), area(mouth), area(mouth));
        table.row(Labels.of("measuring.air.flow"), null, null, job.amounts().flow(flow));
        Double pressure = job.assessment().room().pressure();
        String door = pressure == null ? "–" : job.amounts().pressure(pressure);
        table.row(Labels.of("measuring.air.door"), null, null, door);
        all.add(table);
        Labels.list("measuring.air").forEach(text -> all.add(job.blocks().bullet(text)));
        double step = job.units() == UnitSystem.INCH ? Unit.INCH_OF_WATER.toSi(FINE_INCH) : FINE;
        all.add(job.blocks()
                .bullet(Labels.of("measuring.air.tube", job.amounts().pressure(step))));
    }

    /** Squares to sketch the room on, where the bands take a page for themselves and leave the next one free. */
    private void plan(List<Block> all) {
        all.add(job.blocks().heading(Labels.of("measuring.plan")));
        all.add(job.blocks().filling(0, PLAN, (width, height) -> {
            Sketch sketch = new Sketch();
            long columns = Math.round(width / SQUARE);
            double pitch = width / columns;
            int rows = (int) (height / pitch);
            for (int i = 0; i <= columns; i++) {
                sketch.line(i * pitch, 0, i * pitch, rows * pitch, Stroke.RULE);
            }
            for (int i = 0; i <= rows; i++) {
                sketch.line(0, i * pitch, width, i * pitch, Stroke.RULE);
            }
            return sketch;
        }));
    }

    private String distance(double metres) {
        return job.amounts().distance(metres);
    }

    /** An area to as many places as a flow worked out from it needs. */
    private String area(double si) {
        return job.units() == UnitSystem.INCH
                ? job.figures().fixed(Unit.SQUARE_FOOT.fromSi(si), 3) + " ft²"
                : job.figures().fixed(si, 4) + " m²";
    }
}
