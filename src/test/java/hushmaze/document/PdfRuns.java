package hushmaze.document;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The lettering of a PDF page run by run, with where it is and how it is turned: read from the glyphs' matrices. */
final class PdfRuns extends PDFTextStripper {
    /**
     * Letters set in one go.
     *
     * @param text with plain spaces
     * @param upright whether it runs up the page
     * @param x middle from the left, points
     * @param y middle from the foot, points
     */
    record Run(String text, boolean upright, double x, double y) {}

    private final List<List<TextPosition>> groups = new ArrayList<>();

    private PdfRuns() {}

    /** The runs of a page, counted from 1. */
    static List<Run> of(PDDocument pdf, int page) throws IOException {
        PdfRuns runs = new PdfRuns();
        runs.setSuppressDuplicateOverlappingText(false);
        runs.setStartPage(page);
        runs.setEndPage(page);
        runs.getText(pdf);
        return runs.groups.stream().map(PdfRuns::run).toList();
    }

    @Override
    protected void processTextPosition(TextPosition letter) {
        List<TextPosition> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
        if (last.isEmpty() || !follows(last.get(last.size() - 1), letter)) {
            groups.add(new ArrayList<>());
        }
        groups.get(groups.size() - 1).add(letter);
    }

    private static boolean follows(TextPosition before, TextPosition letter) {
        double gap = letter.getXDirAdj() - before.getXDirAdj() - before.getWidthDirAdj();
        return before.getDir() == letter.getDir()
                && Math.abs(letter.getYDirAdj() - before.getYDirAdj()) < 0.1
                && Math.abs(gap) < 0.5;
    }

    private static Run run(List<TextPosition> letters) {
        StringBuilder text = new StringBuilder();
        letters.forEach(letter -> text.append(letter.getUnicode()));
        TextPosition first = letters.get(0);
        TextPosition last = letters.get(letters.size() - 1);
        boolean upright = first.getDir() == 90;
        double end = last.getWidthDirAdj();
        return new Run(
                text.toString().replace('\u00a0', ' '),
                upright,
                (first.getTextMatrix().getTranslateX() + last.getTextMatrix().getTranslateX() + (upright ? 0 : end))
                        / 2,
                (first.getTextMatrix().getTranslateY() + last.getTextMatrix().getTranslateY() + (upright ? end : 0))
                        / 2);
    }
}
