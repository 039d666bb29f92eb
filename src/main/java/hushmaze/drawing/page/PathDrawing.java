package hushmaze.drawing.page;

import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Drawing;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Page;
import hushmaze.drawing.Paper;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.CheckSquare;
import hushmaze.drawing.draft.Lettering;
import hushmaze.drawing.draft.ScaleBar;
import hushmaze.drawing.draft.TitleBlockDraft;
import hushmaze.drawing.draft.Wrap;
import hushmaze.project.Project;
import hushmaze.quantity.UnitSystem;
import hushmaze.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** The whole document set of one path. */
public final class PathDrawing {
    /** Distance of the square that checks the print from the title block, mm. */
    private static final double SQUARE_OFF = 5;

    private final Job job;

    /**
     * @param result one of the assessment's paths
     * @param units of all figures, and of what is said of them
     * @param measure widths of texts
     */
    public PathDrawing(Assessment assessment, PathResult result, Paper paper, UnitSystem units, TextMeasure measure) {
        Assessment shown = assessment.in(units);
        PathResult own = units == assessment.project().units()
                ? result
                : shown.paths().get(assessment.paths().indexOf(result));
        this.job = new Job(shown, own, paper, units, new Wording(units), measure);
    }

    /**
     * All pages: summary, arrangement, exploded view, cut list, parts, sheets, joints, assembly, fixing, measuring, what was
     * measured if anything was, changes, cautions, methods.
     */
    public Drawing draw() {
        List<Draft> drafts = new ArrayList<>();
        drafts.addAll(new SummaryPages(job).pages());
        drafts.addAll(ArrangementPages.of(job));
        drafts.addAll(new ExplodedPages(job).pages());
        drafts.addAll(new CutListPages(job).pages());
        PartPages parts = new PartPages(job);
        drafts.addAll(parts.of(job.result().cutList().boards(), Labels.of("type.panel")));
        drafts.addAll(parts.of(job.result().cutList().liners(), Labels.of("type.liner")));
        drafts.addAll(new SheetPages(job).pages());
        drafts.addAll(new JointPages(job).pages());
        drafts.addAll(new AssemblyPages(job).pages());
        drafts.addAll(new FixingPages(job).pages());
        drafts.addAll(new MeasuringPages(job).pages());
        drafts.addAll(new ReportPages(job).pages());
        drafts.addAll(new SensitivityPages(job).pages());
        drafts.addAll(new WordPages(job).pages());
        List<Page> pages = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            pages.add(page(drafts.get(i), i + 1, drafts.size()));
        }
        Project project = job.assessment().project();
        return new Drawing(
                title(), project.titleBlock().creator(), project.titleBlock().date(), pages);
    }

    /** Whether a page of the set is the one that the part of a mark is drawn on. */
    public static boolean shows(Page page, String mark) {
        return PartPages.marks(page.title()).contains(mark);
    }

    private String title() {
        return job.assessment().project().name() + " – " + job.result().path().name();
    }

    private Page page(Draft draft, int number, int of) {
        Sketch sketch = new Sketch();
        sketch.add(draft.content(), 0, 0);
        String scale = draft.scale() == null ? "–" : draft.scale().label();
        boolean firstAngle = job.units() == UnitSystem.METRIC;
        TitleBlockDraft.draw(
                sketch,
                job.measure(),
                draft.sheet(),
                job.assessment().project().titleBlock(),
                new TitleBlockDraft.Fields(title(), draft.title(), draft.type(), scale, number, of, firstAngle));
        if (draft.scale() != null) {
            foot(sketch, draft);
        }
        return Page.of(
                draft.title(),
                draft.sheet().width(),
                draft.sheet().height(),
                draft.sheet().paper().thinLine(),
                sketch.shapes());
    }

    /** Scale bar, square to check the print with, and the unit of the dimensions, left of the title block. */
    private void foot(Sketch sketch, Draft draft) {
        Bounds foot = draft.sheet().foot();
        double x = foot.x0() + 6;
        Sketch square = CheckSquare.of(draft.scale(), job.units());
        Bounds size = square.bounds(job.measure());
        sketch.add(square, foot.x1() - SQUARE_OFF - size.x1(), foot.y0() + 5);
        double room = foot.width() - 14 - SQUARE_OFF - size.width();
        sketch.add(ScaleBar.of(draft.scale(), job.units(), room - 8), x, foot.y0() + 5);
        double y = foot.y0() + 16;
        String words = Labels.of(job.units() == UnitSystem.INCH ? "foot.inches" : "foot.millimetres");
        for (String line : Wrap.lines(words, room, Lettering.SMALL, Weight.REGULAR, job.measure())) {
            sketch.text(x, y, line, Lettering.SMALL, Weight.REGULAR, Anchor.START, Ink.GREY);
            y += Lettering.SMALL * Lettering.LEADING;
        }
    }
}
