package hushmaze.drawing.page;

import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.build.PrintedSizes;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Paper;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Blocks;
import hushmaze.drawing.draft.Flow;
import hushmaze.drawing.draft.Lettering;
import hushmaze.drawing.draft.SheetFrame;
import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.UnitSystem;
import hushmaze.wording.Amounts;
import hushmaze.wording.Unbroken;
import hushmaze.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * What every page needs to know.
 *
 * @param assessment of the project
 * @param result of the path that is drawn
 * @param paper size
 * @param units of the figures
 * @param wording sentences about the assessment
 * @param measure widths of texts
 */
record Job(
        Assessment assessment, PathResult result, Paper paper, UnitSystem units, Wording wording, TextMeasure measure) {
    /** Keeps a fraction with its whole number at the end of a line. */
    private static final char NO_BREAK = '\u00a0';

    /** A length without its unit. */
    String bare(double metres) {
        return LengthFormat.bare(metres, units).replace(' ', NO_BREAK);
    }

    /** A length with its unit. */
    String length(double metres) {
        return LengthFormat.withUnit(metres, units).replace(' ', NO_BREAK);
    }

    /** A length that need not be kept to the millimetre, without its unit. */
    String coarse(double metres) {
        return LengthFormat.coarse(metres, units).replace(' ', NO_BREAK);
    }

    /** The same with its unit. */
    String coarseLength(double metres) {
        return coarse(metres) + (units == UnitSystem.INCH ? " in" : " mm");
    }

    /** A board's real thickness with its unit. */
    String thickness(double metres) {
        return LengthFormat.thickness(metres, units);
    }

    /** Amounts with their units. */
    Amounts amounts() {
        return wording.amounts();
    }

    /** What is printed for the items of the cut list. */
    PrintedSizes printed() {
        return PrintedSizes.of(result.solid(), result.cutList(), units);
    }

    /** Numbers of tables. */
    Figures figures() {
        return new Figures(units);
    }

    Blocks blocks() {
        return new Blocks(measure);
    }

    /** The sheet drawings are put on. */
    SheetFrame drawingSheet() {
        return new SheetFrame(paper, true);
    }

    /** The sheet text is put on: upright, unless the paper is large. */
    SheetFrame textSheet() {
        return new SheetFrame(paper, paper.large());
    }

    /** Sets blocks on as many text pages as they take. */
    List<Draft> textPages(String title, String type, List<Block> blocks) {
        return textPages(title, type, blocks, paper.large() ? 2 : 1);
    }

    /** Sets two groups of blocks, each on pages of its own, one after the other on a large page. */
    List<Draft> textPagesApart(String title, String type, List<Block> first, List<Block> second) {
        if (paper.large()) {
            List<Block> both = new ArrayList<>(first);
            both.addAll(second);
            return textPages(title, type, both);
        }
        List<Draft> pages = new ArrayList<>(textPages(title, type, first));
        pages.addAll(textPages(title, type, second));
        return pages;
    }

    /** Sets blocks in so many columns. */
    List<Draft> textPages(String title, String type, List<Block> blocks, int columns) {
        List<Draft> pages = new ArrayList<>();
        SheetFrame sheet = textSheet();
        for (Sketch content : Flow.pages(blocks, sheet.content(), columns)) {
            pages.add(new Draft(pages.isEmpty() ? title : continued(title, content), type, null, sheet, content));
        }
        return pages;
    }

    /** The title of a further page: with the first heading on it, so that it is found in a list of pages. */
    private static String continued(String title, Sketch content) {
        return content.shapes().stream()
                .filter(shape -> shape instanceof Shape.Text text
                        && text.weight() == Weight.SEMIBOLD
                        && text.size() == Lettering.HEADING
                        && text.text().chars().anyMatch(Character::isLowerCase))
                .map(shape -> Labels.of("page.continued", title, Unbroken.plain(((Shape.Text) shape).text())))
                .findFirst()
                .orElse(title);
    }

    /** A name with the sizes in it as the pages write sizes: "1200 × 600 mm slab" of "1200 x 600 mm slab". */
    static String named(String name) {
        return name.replaceAll("(?<=\\d) x (?=\\d)", " × ");
    }
}
