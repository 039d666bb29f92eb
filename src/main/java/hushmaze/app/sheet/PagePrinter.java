package hushmaze.app.sheet;

import hushmaze.app.model.Message;
import hushmaze.app.model.Texts;
import hushmaze.app.sheet.PrintPlan.Sheet;
import hushmaze.drawing.Drawing;
import hushmaze.drawing.Page;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Group;
import javafx.scene.transform.Scale;
import javafx.scene.transform.Translate;
import javafx.stage.Window;

/** Prints the pages of a drawing at true size, or says that it did not. */
public final class PagePrinter {
    private static final double POINTS_PER_MM = 72 / 25.4;

    private final PrinterJob job;
    private final Drawing drawing;

    private PagePrinter(PrinterJob job, Drawing drawing) {
        this.job = job;
        this.drawing = drawing;
    }

    /** Whether there is a printer at all. */
    public static boolean isThere() {
        return Printer.getDefaultPrinter() != null || !Printer.getAllPrinters().isEmpty();
    }

    /**
     * Asks for the printer in the system's own dialog, on the window's thread.
     *
     * @return the work of printing, which needs no window; nothing if it was called off
     */
    public static Optional<Supplier<Message>> ask(Drawing drawing, Window over) {
        PrinterJob job = PrinterJob.createPrinterJob();
        if (job == null) {
            return Optional.of(() -> new Message(true, Texts.of("print.none")));
        }
        job.getJobSettings().setJobName(drawing.pages().get(0).title());
        if (!job.showPrintDialog(over)) {
            job.cancelJob();
            return Optional.empty();
        }
        return Optional.of(new PagePrinter(job, drawing)::print);
    }

    private Message print() {
        List<Page> pages = drawing.pages();
        Printer printer = job.getPrinter();
        PrintPlan worst = null;
        for (int i = 0; i < pages.size(); i++) {
            PrintPlan plan = plan(pages.get(i));
            worst = worst == null || plan.scale() < worst.scale() ? plan : worst;
            PageLayout layout = printer.createPageLayout(
                    paper(plan.sheet()),
                    plan.across() ? PageOrientation.LANDSCAPE : PageOrientation.PORTRAIT,
                    Printer.MarginType.HARDWARE_MINIMUM);
            if (!job.printPage(layout, placed(pages.get(i), plan, layout))) {
                job.cancelJob();
                return new Message(
                        true,
                        Texts.of(
                                "print.failed",
                                printer.getName(),
                                String.valueOf(i + 1),
                                String.valueOf(pages.size())));
            }
        }
        if (!job.endJob()) {
            return new Message(true, Texts.of("print.refused", printer.getName()));
        }
        return done(printer, worst);
    }

    private Message done(Printer printer, PrintPlan worst) {
        String count = String.valueOf(drawing.pages().size());
        if (worst.trueSize()) {
            return new Message(false, Texts.of("print.done", count, printer.getName()));
        }
        String percent = String.format(Locale.ROOT, "%.0f", worst.scale() * 100);
        return new Message(
                true,
                Texts.of("print.fitted", count, printer.getName(), worst.sheet().name(), percent));
    }

    private PrintPlan plan(Page page) {
        PageLayout chosen = job.getJobSettings().getPageLayout();
        double margin = Math.max(
                Math.max(chosen.getLeftMargin(), chosen.getRightMargin()),
                Math.max(chosen.getTopMargin(), chosen.getBottomMargin()));
        Collection<Paper> papers = job.getPrinter().getPrinterAttributes().getSupportedPapers();
        return PrintPlan.of(
                page.width(),
                page.height(),
                sheet(chosen.getPaper()),
                papers.stream().map(PagePrinter::sheet).toList(),
                margin / POINTS_PER_MM);
    }

    private static Sheet sheet(Paper paper) {
        return new Sheet(paper.getName(), paper.getWidth() / POINTS_PER_MM, paper.getHeight() / POINTS_PER_MM);
    }

    private Paper paper(Sheet sheet) {
        Paper chosen = job.getJobSettings().getPageLayout().getPaper();
        return job.getPrinter().getPrinterAttributes().getSupportedPapers().stream()
                .filter(paper -> sheet(paper).equals(sheet))
                .findFirst()
                .orElse(chosen);
    }

    /** At true size the page's corner lies on the paper's, else the page begins where printing is possible. */
    private static Group placed(Page page, PrintPlan plan, PageLayout layout) {
        Group nodes = PageNodes.of(page);
        double scale = POINTS_PER_MM * plan.scale();
        if (plan.trueSize()) {
            nodes.getTransforms().add(new Translate(-layout.getLeftMargin(), -layout.getTopMargin()));
        }
        nodes.getTransforms().add(new Scale(scale, scale));
        return new Group(nodes);
    }
}
