package hushmaze.drawing.draft;

import hushmaze.drawing.Bounds;
import hushmaze.drawing.Paper;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;

/**
 * A sheet of paper with its frame: 20 mm for filing on the left, 10 mm on the other sides (ISO 5457, from memory), and a
 * strip for the title block along the foot.
 *
 * @param paper size
 * @param landscape whether the long side lies along the foot
 */
public record SheetFrame(Paper paper, boolean landscape) {
    private static final double FILING = 20;
    private static final double MARGIN = 10;
    private static final double INSET = 4.5;

    /** Width of the sheet, mm. */
    public double width() {
        return landscape ? paper.longSide() : paper.shortSide();
    }

    /** Height of the sheet, mm. */
    public double height() {
        return landscape ? paper.shortSide() : paper.longSide();
    }

    /** The frame. */
    public Bounds frame() {
        return new Bounds(FILING, MARGIN, width() - MARGIN, height() - MARGIN);
    }

    /** What the title block leaves, with some air inside the frame. */
    public Bounds content() {
        Bounds f = frame();
        return new Bounds(f.x0() + INSET, f.y0() + INSET, f.x1() - INSET, f.y1() - TitleBlockDraft.HEIGHT - INSET);
    }

    /** The foot left of the title block, or null if the block takes all of it. */
    public Bounds foot() {
        Bounds f = frame();
        double room = f.width() - TitleBlockDraft.WIDTH;
        if (room < TitleBlockDraft.LEAST_FOOT) {
            return null;
        }
        return new Bounds(f.x0(), f.y1() - TitleBlockDraft.HEIGHT, f.x0() + room, f.y1());
    }

    /** Draws the frame line. */
    void draw(Sketch sketch) {
        sketch.rectangle(frame(), Stroke.OUTLINE, null);
    }
}
