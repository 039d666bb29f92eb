package hushmaze.document;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.build.KeptOffcut;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Drawing;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Page;
import hushmaze.drawing.Paper;
import hushmaze.drawing.SampleAssessment;
import hushmaze.drawing.SampleReadings;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.Weight;
import hushmaze.drawing.page.PathDrawing;
import hushmaze.material.Board;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Mounting;
import hushmaze.project.Opening;
import hushmaze.project.PathReadings;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Reading.Scale;
import hushmaze.project.RoomReadings;
import hushmaze.project.VentPath;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.RandomBoxes;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Property: over seeded random boxes, papers and units nothing leaves the page's frame and no two texts overlap. */
class PathDrawingTest {
    private static final FontMeasure MEASURE = new FontMeasure();
    private static final double FILING = 20;
    private static final double MARGIN = 10;

    private record Case(int number, Box box, Opening.Surface surface, Mounting mounting) {}

    @Test
    void nothingLeavesTheFrameAndNoTextsOverlap() {
        RandomBoxes boxes = new RandomBoxes(2026);
        Random random = new Random(2027);
        List<Case> cases = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            Opening.Surface surface = Opening.Surface.values()[random.nextInt(3)];
            cases.add(new Case(i, boxes.next(), surface, mounting(random)));
        }
        cases.parallelStream().forEach(PathDrawingTest::nothingLeavesTheFrame);
    }

    private static void nothingLeavesTheFrame(Case one) {
        Paper paper = Paper.values()[one.number() % 4];
        UnitSystem units = UnitSystem.values()[one.number() / 4 % 2];
        Assessment assessment = SampleAssessment.of(units, one.box(), one.surface(), one.mounting());
        for (Page page : draw(assessment, 0, paper, units).pages()) {
            String where = "box " + one.number() + " on " + paper + " in " + units + ", " + page.title();
            insideFrame(page, where);
            textsApart(page, where);
            marksClearOfHoles(page, where);
        }
    }

    /** Into anything, or none. */
    private static Mounting mounting(Random random) {
        if (random.nextInt(4) == 0) {
            return null;
        }
        Mounting.Into[] into = Mounting.Into.values();
        return new Mounting(
                random.nextBoolean() ? Mounting.Into.STUDS : into[random.nextInt(into.length)],
                Mounting.Timber.SPRUCE_PINE_FIR,
                Mounting.StudScrew.values()[random.nextInt(5)],
                0.03 + 0.02 * random.nextDouble(),
                1 + random.nextInt(6),
                0.1 + 0.4 * random.nextDouble(),
                0.018 + 0.02 * random.nextDouble(),
                random.nextBoolean() ? 0.4064 : null,
                random.nextBoolean() ? 0.4 + random.nextDouble() : null,
                random.nextBoolean(),
                "invented for a test");
    }

    @Test
    void theSamplePathsToo() {
        for (Paper paper : Paper.values()) {
            for (UnitSystem units : UnitSystem.values()) {
                Assessment assessment = SampleAssessment.twoPaths(units);
                for (int path = 0; path < 2; path++) {
                    for (Page page : draw(assessment, path, paper, units).pages()) {
                        marksClearOfHoles(page, paper + " " + page.title());
                        insideFrame(page, paper + " " + page.title());
                        textsApart(page, paper + " " + page.title());
                    }
                }
            }
        }
    }

    /** The box of a path whose name is as long as may be, and the same box again, cut from what the first leaves. */
    @Test
    void offcutsAreToldOnThePagesOfBothBoxes() {
        Project sample = SampleAssessment.twoPaths(UnitSystem.METRIC).project();
        VentPath first = named(sample.paths().get(0), "wide ".repeat(12).strip());
        VentPath second = named(first, "the same once more");
        Project both = sample.withPaths(List.of(first, second));
        Assessment assessment = Assessor.assess(both, Methods.ESTIMATE, Progress.NONE);
        KeptOffcut kept = assessment.paths().get(1).layouts().stream()
                .flatMap(layout -> layout.keptOffcuts().stream())
                .findFirst()
                .orElseThrow();
        assertThat(kept.path()).isEqualTo(first.name());
        for (Paper paper : Paper.values()) {
            for (int path = 0; path < 2; path++) {
                for (Page page :
                        draw(assessment, path, paper, UnitSystem.METRIC).pages()) {
                    insideFrame(page, paper + " " + page.title());
                    textsApart(page, paper + " " + page.title());
                }
            }
        }
        assertThat(words(draw(assessment, 0, Paper.A4, UnitSystem.METRIC)))
                .contains("Keep " + kept.material())
                .contains("the box “" + second.name() + "” is cut from it");
        assertThat(words(draw(assessment, 1, Paper.A4, UnitSystem.METRIC)))
                .contains("nothing to buy, it is left over from sheet " + kept.sheet())
                .contains(": an offcut");
    }

    private static VentPath named(VentPath path, String name) {
        return new VentPath(name, path.purpose(), path.brief(), path.box());
    }

    private static String words(Drawing drawing) {
        return drawing.pages().stream()
                .flatMap(page -> texts(page).stream())
                .map(Shape.Text::text)
                .collect(Collectors.joining(" "));
    }

    @Test
    void projectsWithReadingsToo() {
        for (Paper paper : Paper.values()) {
            boolean metric = paper == Paper.A4 || paper == Paper.A3;
            UnitSystem units = metric ? UnitSystem.METRIC : UnitSystem.INCH;
            for (BandSet set : BandSet.values()) {
                reportIsNeat(SampleReadings.everything(units, set), paper, units);
            }
            PathReadings alone = SampleReadings.of(BandSet.THIRD_OCTAVE, Scale.FULL_SCALE, -20, i -> 25, -90);
            reportIsNeat(
                    SampleAssessment.measured(
                            units, alone.withLevels(alone.levels().subList(0, 1)), RoomReadings.NONE),
                    paper,
                    units);
        }
    }

    private static void reportIsNeat(Assessment assessment, Paper paper, UnitSystem units) {
        List<Page> report = draw(assessment, 0, paper, units).pages().stream()
                .filter(page -> page.title().startsWith(Labels.of("report.title")))
                .toList();
        assertThat(report).isNotEmpty();
        for (Page page : report) {
            insideFrame(page, paper + " in " + units);
            textsApart(page, paper + " in " + units);
        }
    }

    @Test
    void everyPageSaysWhichSheetItIs() {
        Drawing drawing = draw(SampleAssessment.twoPaths(UnitSystem.METRIC), 0, Paper.A4, UnitSystem.METRIC);
        for (int i = 0; i < drawing.pages().size(); i++) {
            String sheet = (i + 1) + " of " + drawing.pages().size();
            assertThat(texts(drawing.pages().get(i)))
                    .extracting(Shape.Text::text)
                    .contains(sheet);
        }
    }

    /**
     * By hand, as in the test of the notice: two layers of 18 mm, 200.263 clear. In 1/32 in the cover is 0.513 mm too large for
     * its frame; in millimetres it goes in. The project itself is in millimetres.
     */
    @Test
    void whatIsSaidOfPrintedSizesFollowsTheUnitsPrinted() {
        Board board = new Board("MDF 18 mm", 0.018, 740, 3.5e9, 0.02, false, "invented for a test");
        Port end = new Port(PortFace.END, 0.15, 0.1, 0);
        Box box = new Box(
                Box.Form.MAZE,
                1,
                0.200263,
                0.2,
                0.6,
                0,
                List.of(board, board),
                board,
                1,
                null,
                LinedFaces.NONE,
                end,
                end);
        Assessment assessment = SampleAssessment.of(UnitSystem.METRIC, box);
        assertThat(summary(draw(assessment, 0, Paper.LETTER, UnitSystem.INCH)))
                .contains("larger by up to 1/32 in than");
        assertThat(summary(draw(assessment, 0, Paper.A4, UnitSystem.METRIC))).doesNotContain("Cut to its printed size");
        Assessment inches = SampleAssessment.of(UnitSystem.INCH, box);
        assertThat(summary(draw(inches, 0, Paper.A4, UnitSystem.METRIC))).doesNotContain("Cut to its printed size");
    }

    private static String summary(Drawing drawing) {
        StringBuilder words = new StringBuilder();
        drawing.pages().stream()
                .filter(page -> page.title().startsWith(drawing.pages().get(0).title()))
                .flatMap(page -> texts(page).stream())
                .forEach(
                        text -> words.append(text.text().replace('\u00a0', ' ')).append(' '));
        return words.toString();
    }

    private static Drawing draw(Assessment assessment, int path, Paper paper, UnitSystem units) {
        return new PathDrawing(assessment, assessment.paths().get(path), paper, units, MEASURE).draw();
    }

    private static void insideFrame(Page page, String where) {
        Bounds frame = new Bounds(FILING, MARGIN, page.width() - MARGIN, page.height() - MARGIN);
        for (Shape shape : page.shapes()) {
            assertThat(frame.contains(shape.bounds(MEASURE)))
                    .as("%s: %s", where, shape)
                    .isTrue();
        }
    }

    private static void textsApart(Page page, String where) {
        List<Shape.Text> texts = texts(page);
        List<Bounds> boxes =
                texts.stream().map(t -> t.bounds(MEASURE).grown(-0.05)).toList();
        for (int i = 0; i < boxes.size(); i++) {
            for (int k = 0; k < i; k++) {
                if (boxes.get(i).overlaps(boxes.get(k))) {
                    assertThat(texts.get(i))
                            .as("%s: overlaps %s", where, texts.get(k))
                            .isNull();
                }
            }
        }
    }

    /** Marks written into parts are grey and bold; crosses of screw holes are thin lines of 2.2 mm. */
    private static void marksClearOfHoles(Page page, String where) {
        List<Bounds> crosses = page.shapes().stream()
                .filter(shape ->
                        shape instanceof Shape.Line line && line.stroke().equals(Stroke.THIN))
                .map(shape -> shape.bounds(MEASURE))
                .filter(line -> Math.abs(line.width() + line.height() - 2.2) < 1e-6)
                .toList();
        texts(page).stream()
                .filter(text -> text.ink() == Ink.GREY && text.weight() == Weight.SEMIBOLD)
                .forEach(text -> assertThat(crosses)
                        .as("%s: %s", where, text)
                        .noneMatch(text.bounds(MEASURE).grown(-0.3)::overlaps));
    }

    private static List<Shape.Text> texts(Page page) {
        return page.shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .map(Shape.Text.class::cast)
                .toList();
    }
}
