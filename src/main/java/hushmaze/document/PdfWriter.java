package hushmaze.document;

import hushmaze.drawing.Drawing;
import hushmaze.drawing.Page;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Weight;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.Calendar;
import java.util.EnumMap;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/**
 * Writes a drawing as PDF with the fonts embedded. The same drawing always gives the same bytes: the dates are the
 * drawing's own and the file's identification is computed from its title and date.
 */
public final class PdfWriter {
    /** Points per millimetre. */
    private static final double POINTS = 72 / 25.4;

    private final FontMeasure measure;

    /**
     * @param measure with which the drawing was set
     */
    public PdfWriter(FontMeasure measure) {
        this.measure = measure;
    }

    /** Writes all pages; the stream is left open. */
    public void write(Drawing drawing, OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(
                    31L * drawing.title().hashCode() + drawing.date().toEpochDay());
            document.setDocumentInformation(information(drawing));
            document.getDocumentCatalog().setLanguage("en");
            Map<Weight, PDFont> fonts = new EnumMap<>(Weight.class);
            for (Weight weight : Weight.values()) {
                fonts.put(weight, PDType0Font.load(document, FontFiles.open(weight), true));
            }
            PDDocumentOutline outline = new PDDocumentOutline();
            document.getDocumentCatalog().setDocumentOutline(outline);
            PdfTags tags = new PdfTags(document);
            for (Page page : drawing.pages()) {
                outline.addLast(bookmark(page, add(document, page, fonts, tags)));
            }
            tags.end();
            outline.openNode();
            document.getDocumentCatalog().setPageLabels(numbered(document));
            document.save(out);
        }
    }

    /** Pages are called by the sheet numbers in their title blocks. */
    private static PDPageLabels numbered(PDDocument document) {
        PDPageLabelRange all = new PDPageLabelRange();
        all.setStyle(PDPageLabelRange.STYLE_DECIMAL);
        all.setStart(1);
        PDPageLabels labels = new PDPageLabels(document);
        labels.setLabelItem(0, all);
        return labels;
    }

    private PDPage add(PDDocument document, Page page, Map<Weight, PDFont> fonts, PdfTags tags) throws IOException {
        PDPage sheet = new PDPage(new PDRectangle((float) (page.width() * POINTS), (float) (page.height() * POINTS)));
        document.addPage(sheet);
        tags.begin(page, sheet);
        try (PDPageContentStream content = new PDPageContentStream(document, sheet)) {
            PdfPainter painter = new PdfPainter(content, page.height(), page.thinLine(), fonts, measure, tags);
            for (Shape shape : page.shapes()) {
                painter.paint(shape);
            }
            painter.end();
        }
        return sheet;
    }

    private static PDOutlineItem bookmark(Page page, PDPage sheet) {
        PDPageFitDestination there = new PDPageFitDestination();
        there.setPage(sheet);
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(page.title());
        item.setDestination(there);
        return item;
    }

    private static PDDocumentInformation information(Drawing drawing) {
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(drawing.title());
        information.setAuthor(drawing.author());
        information.setCreator("Hushmaze");
        information.setCreationDate(midnight(drawing.date()));
        information.setModificationDate(midnight(drawing.date()));
        return information;
    }

    private static Calendar midnight(LocalDate date) {
        Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        calendar.clear();
        calendar.set(date.getYear(), date.getMonthValue() - 1, date.getDayOfMonth());
        return calendar;
    }
}
