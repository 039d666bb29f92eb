package hushmaze.document;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.build.CutItem;
import hushmaze.build.Plate;
import hushmaze.build.PrintedSizes;
import hushmaze.document.PdfRuns.Run;
import hushmaze.drawing.Drawing;
import hushmaze.drawing.Page;
import hushmaze.drawing.Paper;
import hushmaze.drawing.SampleAssessment;
import hushmaze.drawing.SampleReadings;
import hushmaze.drawing.Shape;
import hushmaze.drawing.page.PathDrawing;
import hushmaze.project.Project;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.FirstLayout;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import hushmaze.store.SampleProjects;
import hushmaze.work.Progress;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

/**
 * Property: what is read back from the PDF by its text holds every size of the cut list, and the same project gives the same
 * bytes. Validation: page sizes against the papers' sizes in points.
 */
class PdfWriterTest {
    private static final FontMeasure MEASURE = new FontMeasure();

    private static final double POINTS_PER_METRE = 72 / 0.0254;
    /** Along a shorter side than this a figure has no room and may stand beyond it on a leader, turned the other way: 15 mm. */
    private static final double ROOM = 0.015 * POINTS_PER_METRE;
    /** Room two dimension lines with their figures take beside an outline: 20 mm. */
    private static final double DIMENSION_LINES = 0.02 * POINTS_PER_METRE;

    @Test
    void everySizeOfTheCutListIsOnThePartsDrawing() throws IOException {
        for (UnitSystem units : UnitSystem.values()) {
            Assessment assessment = SampleAssessment.twoPaths(units);
            for (PathResult result : assessment.paths()) {
                try (PDDocument pdf = Loader.loadPDF(bytes(assessment, result, Paper.A4, units))) {
                    List<String> pages = pages(pdf);
                    for (CutItem item : items(result)) {
                        String head = item.mark() + " – make " + item.quantity();
                        List<String> drawn =
                                pages.stream().filter(p -> p.contains(head)).toList();
                        assertThat(drawn).as(head).hasSize(1);
                        assertThat(drawn.get(0))
                                .contains(LengthFormat.bare(item.length(), units))
                                .contains(LengthFormat.bare(item.width(), units))
                                .contains(LengthFormat.thickness(item.thickness(), units));
                        Plate plate = PrintedSizes.of(result.solid(), result.cutList(), units)
                                .of(item);
                        stretches(plate, true)
                                .forEach(stretch ->
                                        assertThat(drawn.get(0)).contains(LengthFormat.bare(stretch, units)));
                        stretches(plate, false)
                                .forEach(stretch ->
                                        assertThat(drawn.get(0)).contains(LengthFormat.bare(stretch, units)));
                        String row = item.mark() + " " + item.quantity() + " "
                                + LengthFormat.bare(item.length(), units) + " "
                                + LengthFormat.bare(item.width(), units) + " "
                                + LengthFormat.fine(item.thickness(), units);
                        assertThat(pages).anyMatch(p -> p.contains(row));
                    }
                }
            }
        }
    }

    /**
     * The overall length stands level, over or under the middle of the outline, whose caption is below it; the width runs up
     * beside it, half the outline's length from there at the page's scale.
     */
    @Test
    void lengthIsPrintedAlongTheLengthAndWidthAlongTheWidth() throws IOException {
        int compared = 0;
        for (String name : SampleProjects.names()) {
            Project project = FirstLayout.complete(SampleProjects.read(name), Progress.NONE);
            Assessment assessment = Assessor.assess(project, Methods.ESTIMATE, Progress.NONE);
            for (PathResult result : assessment.paths()) {
                try (PDDocument pdf = Loader.loadPDF(bytes(assessment, result, Paper.A4, project.units()))) {
                    compared += sidesInPlace(pdf, result, project.units(), name);
                }
            }
        }
        assertThat(compared).isGreaterThan(50);
    }

    private static int sidesInPlace(PDDocument pdf, PathResult result, UnitSystem units, String name)
            throws IOException {
        int compared = 0;
        for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
            List<Run> runs = PdfRuns.of(pdf, page);
            List<Run> captions =
                    runs.stream().filter(r -> r.text().contains(" – make ")).toList();
            for (CutItem item : items(result)) {
                for (Run caption : captions) {
                    if (caption.text().equals(item.mark() + " – make " + item.quantity())) {
                        double shown = POINTS_PER_METRE / scale(runs);
                        double half = item.length() * shown / 2;
                        String length = LengthFormat.bare(item.length(), units);
                        String width = LengthFormat.bare(item.width(), units);
                        assertThat(runs)
                                .as("%s length %s of %s", name, length, caption)
                                .anyMatch(r -> (!r.upright() || item.length() * shown < ROOM)
                                        && r.text().equals(length)
                                        && beside(r, caption, 0));
                        assertThat(runs)
                                .as("%s width %s of %s", name, width, caption)
                                .anyMatch(r -> (r.upright() || item.width() * shown < ROOM)
                                        && r.text().equals(width)
                                        && beside(r, caption, half));
                        compared++;
                    }
                }
            }
        }
        return compared;
    }

    /** Whether a figure is above a caption and as far to its side as the edge of an outline, or up to two dimension lines on. */
    private static boolean beside(Run figure, Run caption, double side) {
        double aside = Math.abs(figure.x() - caption.x());
        return figure.y() > caption.y() && aside > side - DIMENSION_LINES && aside < side + DIMENSION_LINES;
    }

    /** How many times smaller than the part the page is. */
    private static double scale(List<Run> runs) {
        return runs.stream()
                .filter(r -> r.text().matches("1:[0-9]+"))
                .mapToDouble(r -> Double.parseDouble(r.text().substring(2)))
                .findFirst()
                .orElseThrow();
    }

    /** From edge to edge of a plate by way of its cut-outs and grooves, along its length or its width, m. */
    private static List<Double> stretches(Plate plate, boolean along) {
        TreeSet<Long> places = new TreeSet<>();
        DoubleConsumer add = place -> places.add(Math.round(place * 1e7));
        add.accept(0);
        add.accept(along ? plate.length() : plate.width());
        for (Cutout c : plate.cutouts()) {
            add.accept(along ? c.u0() : c.v0());
            add.accept(along ? c.u1() : c.v1());
        }
        for (Groove g : plate.grooves()) {
            add.accept(along ? g.u0() : g.v0());
            add.accept(along ? g.u1() : g.v1());
        }
        List<Double> stretches = new ArrayList<>();
        for (long place : places) {
            Long before = places.lower(place);
            if (before != null) {
                stretches.add((place - before) / 1e7);
            }
        }
        return stretches;
    }

    @Test
    void theSameProjectGivesTheSameBytes() throws IOException {
        Assessment one = SampleAssessment.twoPaths(UnitSystem.METRIC);
        Assessment two = SampleAssessment.twoPaths(UnitSystem.METRIC);
        assertThat(bytes(one, one.paths().get(0), Paper.A4, UnitSystem.METRIC))
                .isEqualTo(bytes(two, two.paths().get(0), Paper.A4, UnitSystem.METRIC));
    }

    @Test
    void theSameReadingsGiveTheSameBytes() throws IOException {
        Assessment one = SampleReadings.everything(UnitSystem.METRIC, BandSet.THIRD_OCTAVE);
        Assessment two = SampleReadings.everything(UnitSystem.METRIC, BandSet.THIRD_OCTAVE);
        assertThat(bytes(one, one.paths().get(0), Paper.A4, UnitSystem.METRIC))
                .isEqualTo(bytes(two, two.paths().get(0), Paper.A4, UnitSystem.METRIC));
    }

    /** Property: a reader that follows the structure finds every text of every page once, in order; pages carry sheet numbers. */
    @Test
    void textIsTaggedAndPagesAreNumbered() throws IOException {
        tagged(SampleAssessment.twoPaths(UnitSystem.METRIC));
        tagged(SampleReadings.everything(UnitSystem.METRIC, BandSet.OCTAVE));
    }

    private static void tagged(Assessment assessment) throws IOException {
        PathResult result = assessment.paths().get(0);
        Drawing drawing = new PathDrawing(assessment, result, Paper.A4, UnitSystem.METRIC, MEASURE).draw();
        try (PDDocument pdf = Loader.loadPDF(bytes(assessment, result, Paper.A4, UnitSystem.METRIC))) {
            assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(pdf.getDocumentCatalog().getPageLabels().getLabelsByPageIndices()[2])
                    .isEqualTo("3");
            PDStructureElement whole = (PDStructureElement)
                    pdf.getDocumentCatalog().getStructureTreeRoot().getKids().get(0);
            assertThat(whole.getKids()).hasSameSizeAs(drawing.pages());
            for (int i = 0; i < drawing.pages().size(); i++) {
                Page page = drawing.pages().get(i);
                PDStructureElement section =
                        (PDStructureElement) whole.getKids().get(i);
                assertThat(section.getTitle()).isEqualTo(page.title());
                PDFMarkedContentExtractor marked = new PDFMarkedContentExtractor();
                marked.processPage(pdf.getPage(i));
                List<String> read = marked.getMarkedContents().stream()
                        .filter(c -> "P".equals(c.getTag()))
                        .map(c -> c.getMCID() + " " + text(c))
                        .toList();
                List<Shape.Text> set = page.shapes().stream()
                        .filter(Shape.Text.class::isInstance)
                        .map(Shape.Text.class::cast)
                        .toList();
                assertThat(read).hasSameSizeAs(set);
                assertThat(section.getKids()).hasSameSizeAs(set);
                for (int k = 0; k < set.size(); k++) {
                    assertThat(read.get(k).replaceAll("[\\s\u00a0]", ""))
                            .isEqualTo((k + " "
                                            + MEASURE.printable(
                                                    set.get(k).text(),
                                                    set.get(k).weight()))
                                    .replaceAll("[\\s\u00a0]", ""));
                    PDStructureElement paragraph =
                            (PDStructureElement) section.getKids().get(k);
                    assertThat(paragraph.getKids()).containsExactly(k);
                }
            }
        }
    }

    private static String text(PDMarkedContent content) {
        return content.getContents().stream()
                .map(c -> ((TextPosition) c).getUnicode())
                .collect(Collectors.joining());
    }

    @Test
    void pagesHaveThePapersSizeAndFontsAreInside() throws IOException {
        Assessment assessment = SampleAssessment.twoPaths(UnitSystem.INCH);
        byte[] bytes = bytes(assessment, assessment.paths().get(0), Paper.LETTER, UnitSystem.INCH);
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            // Letter is 8.5 by 11 inches: 612 by 792 points, upright for text and lying for drawings.
            for (PDPage page : pdf.getPages()) {
                float w = page.getMediaBox().getWidth();
                float h = page.getMediaBox().getHeight();
                assertThat(List.of(Math.round(w), Math.round(h))).containsExactlyInAnyOrder(612, 792);
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).isTrue();
                }
            }
            assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Voice booth – Supply, west wall");
            assertThat(pdf.getDocumentCatalog().getDocumentOutline().children()).hasSize(pdf.getNumberOfPages());
        }
    }

    @Test
    void fontsHaveTheLettersTheDocumentsUse() {
        String needed = "Δ≤≥±×÷°Ø²³µ–—→−’·…½\u00a0";
        for (hushmaze.drawing.Weight weight : hushmaze.drawing.Weight.values()) {
            String printable = MEASURE.printable(needed, weight);
            assertThat(printable.substring(0, needed.length() - 1)).isEqualTo(needed.substring(0, needed.length() - 1));
            assertThat(MEASURE.printable("\u00a0", weight)).isNotEqualTo("?");
        }
        assertThat(MEASURE.printable("a\n漢", hushmaze.drawing.Weight.REGULAR)).isEqualTo("a ?");
    }

    private static Stream<CutItem> stream(PathResult result) {
        return result.cutList().items();
    }

    private static List<CutItem> items(PathResult result) {
        return stream(result).toList();
    }

    private static List<String> pages(PDDocument pdf) throws IOException {
        List<String> pages = new java.util.ArrayList<>();
        for (int i = 1; i <= pdf.getNumberOfPages(); i++) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            stripper.setStartPage(i);
            stripper.setEndPage(i);
            pages.add(stripper.getText(pdf).replace('\u00a0', ' ').replaceAll("\\s+", " "));
        }
        return pages;
    }

    private static byte[] bytes(Assessment assessment, PathResult result, Paper paper, UnitSystem units)
            throws IOException {
        Drawing drawing = new PathDrawing(assessment, result, paper, units, MEASURE).draw();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfWriter(MEASURE).write(drawing, out);
        return out.toByteArray();
    }
}
