package hushmaze.app.guide;

import hushmaze.app.model.FirstBox;
import hushmaze.app.model.FirstBox.Furnished;
import hushmaze.app.model.FirstBox.WayOut;
import hushmaze.app.model.Question;
import hushmaze.app.model.Texts;
import hushmaze.app.sheet.PageSource;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Page;
import hushmaze.drawing.Paper;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Arrow;
import hushmaze.drawing.draft.DimensionChain.Side;
import hushmaze.drawing.draft.Hatching;
import hushmaze.drawing.draft.Lettering;
import hushmaze.drawing.draft.SpectrumChart;
import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.material.Sheet;
import hushmaze.project.Opening;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.criterion.TargetCurve;
import hushmaze.sound.room.RoomLevel;
import hushmaze.wording.Amounts;
import java.util.ArrayList;
import java.util.List;

/** What the numbers of a step mean, drawn to scale; the number being answered stands out. */
final class GuidePicture implements PageSource {
    private static final double MARGIN = 6;
    /** Room for a dimension beside a drawing, mm. */
    private static final double BESIDE = 16;

    private static final double CAPTION = Lettering.TEXT;
    private static final double WALL = 3;
    private static final double PERSON = 0.22;
    private static final int MOST_DRAWN = 12;
    private static final Stroke AIR = new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.ACCENT);
    private static final Stroke AROUND = new Stroke(false, Stroke.Pattern.DASHED, Ink.BLACK);

    private final FirstBox box;
    private final Question.Step step;
    private final TextMeasure widths;
    private final Question looked;

    GuidePicture(FirstBox box, Question.Step step, Question looked, TextMeasure widths) {
        this.box = box;
        this.step = step;
        this.looked = looked;
        this.widths = widths;
    }

    @Override
    public Page page(double width, double height) {
        Sketch sketch = new Sketch();
        Bounds area = new Bounds(0, 0, width, height).grown(-MARGIN);
        switch (step) {
            case ROOM -> room(sketch, area);
            case OPENING -> opening(sketch, area);
            case SOUND -> sound(sketch, area);
            case SPACE -> space(sketch, area);
            case MATERIALS -> materials(sketch, area);
        }
        return Page.of(Texts.of("guide.step." + step), width, height, Paper.A4.thinLine(), sketch.shapes());
    }

    private Measure measure(Sketch on) {
        return new Measure(on, box, looked, widths);
    }

    private static void caption(Sketch on, double x, double y, String key) {
        on.text(x, y, Texts.of(key), CAPTION, Weight.SEMIBOLD, Anchor.START, Ink.GREY);
    }

    /** The floor from above, over the room from the side. */
    private void room(Sketch on, Bounds area) {
        double length = box.number(Question.ROOM_LENGTH);
        double width = box.number(Question.ROOM_WIDTH);
        double high = box.number(Question.ROOM_HEIGHT);
        double captions = 2 * (CAPTION + 3);
        double scale =
                Math.min((area.width() - BESIDE) / length, (area.height() - captions - 2 * BESIDE) / (width + high));
        double left = area.x0() + BESIDE + (area.width() - BESIDE - length * scale) / 2;
        double top = area.y0() + CAPTION + 3;
        Bounds floor = new Bounds(left, top, left + length * scale, top + width * scale);
        double below = floor.y1() + BESIDE + CAPTION + 3;
        Bounds side = new Bounds(left, below, floor.x1(), below + high * scale);
        caption(on, left, top - 2.5, "guide.fromAbove");
        caption(on, left, below - 2.5, "guide.fromSide");
        soft(on, floor);
        soft(on, side);
        people(on, floor, side, scale);
        on.rectangle(floor, Stroke.OUTLINE, null);
        on.rectangle(side, Stroke.OUTLINE, null);
        Measure measure = measure(on);
        measure.draw(Question.ROOM_LENGTH, Side.BELOW, floor.y1(), floor.x0(), floor.x1());
        measure.draw(Question.ROOM_WIDTH, Side.LEFT, floor.x0(), floor.y0(), floor.y1());
        measure.draw(Question.ROOM_HEIGHT, Side.LEFT, side.x0(), side.y0(), side.y1());
    }

    /** What swallows sound along the walls: nothing, two walls, or all of them. */
    private void soft(Sketch on, Bounds room) {
        Furnished furnished = (Furnished) box.get(Question.FURNISHED);
        double thick = 2.2;
        Stroke line = Stroke.RULE.in(measure(on).isLooked(Question.FURNISHED) ? Ink.ACCENT : Ink.LIGHT);
        List<Bounds> pieces = new ArrayList<>();
        if (furnished != Furnished.BARE) {
            pieces.add(new Bounds(room.x0() + 6, room.y1() - thick, room.x1() - 6, room.y1()));
        }
        if (furnished == Furnished.MOSTLY_SOFT) {
            pieces.add(new Bounds(room.x0() + 6, room.y0(), room.x1() - 6, room.y0() + thick));
            pieces.add(new Bounds(room.x0(), room.y0() + 6, room.x0() + thick, room.y1() - 6));
            pieces.add(new Bounds(room.x1() - thick, room.y0() + 6, room.x1(), room.y1() - 6));
        }
        for (Bounds piece : pieces) {
            Hatching.CROSSED.fill(on, piece, line);
        }
    }

    private void people(Sketch on, Bounds floor, Bounds side, double scale) {
        int count = (int) Math.min(MOST_DRAWN, box.number(Question.PEOPLE));
        boolean pointed = measure(on).isLooked(Question.PEOPLE) || measure(on).isLooked(Question.DOING);
        Ink ink = pointed ? Ink.ACCENT : Ink.GREY;
        int rows = count > 4 ? 2 : 1;
        int inRow = (count + rows - 1) / rows;
        double head = Math.min(PERSON / 2 * scale, Math.min(floor.width() / inRow, floor.height() / rows) / 5);
        for (int i = 0; i < count; i++) {
            double x = floor.x0() + floor.width() * (i % inRow + 0.5) / inRow;
            double y = floor.y0() + floor.height() * (i / inRow + 0.5) / rows;
            on.rectangle(new Bounds(x - 2.1 * head, y - 0.8 * head, x + 2.1 * head, y + 0.8 * head), null, Ink.PALE);
            on.dot(x, y, head, ink);
            if (i < inRow) {
                figure(on, x, side.y1(), Math.min(1.2 * scale, 0.8 * side.height()), ink);
            }
        }
    }

    /** Somebody who sits, seen from the side. */
    private static void figure(Sketch on, double x, double floor, double tall, Ink ink) {
        on.dot(x, floor - 0.9 * tall, 0.1 * tall, ink);
        double half = 0.1 * tall;
        on.rectangle(new Bounds(x - half, floor - 0.76 * tall, x + half, floor - 0.3 * tall), null, ink);
        on.rectangle(new Bounds(x - half, floor - 0.4 * tall, x + 3.2 * half, floor - 0.28 * tall), null, ink);
        on.rectangle(new Bounds(x + 2.2 * half, floor - 0.3 * tall, x + 3.2 * half, floor), null, ink);
    }

    /** The room from the side with its ways of air, over the opening seen from the front. */
    private void opening(Sketch on, Bounds area) {
        double half = area.height() * 0.46;
        Bounds upper = new Bounds(area.x0(), area.y0(), area.x1(), area.y0() + half);
        caption(on, area.x0() + 2, area.y0() + CAPTION, "guide.ways");
        ways(on, upper);
        double top = upper.y1() + BESIDE / 2 + CAPTION;
        caption(on, area.x0() + 2, top, "guide.openingFront");
        double wide = box.number(Question.OPENING_WIDTH);
        double high = box.number(Question.OPENING_HEIGHT);
        double roomWide = area.width() - 3 * BESIDE;
        double roomHigh = area.y1() - top - BESIDE - 10;
        double scale = Math.min(roomWide / wide, roomHigh / high);
        double x = area.centreX() - wide * scale / 2;
        double y = top + 8 + (roomHigh - high * scale) / 2;
        Bounds hole = new Bounds(x, y, x + wide * scale, y + high * scale);
        on.rectangle(hole.grown(2.5), Stroke.THIN.in(Ink.GREY), Ink.PALE);
        on.rectangle(hole, Stroke.OUTLINE, Ink.WHITE);
        Measure measure = measure(on);
        measure.draw(Question.OPENING_WIDTH, Side.BELOW, hole.y1(), hole.x0(), hole.x1());
        measure.draw(Question.OPENING_HEIGHT, Side.LEFT, hole.x0(), hole.y0(), hole.y1());
    }

    private void ways(Sketch on, Bounds area) {
        Bounds room = new Bounds(
                area.x0() + area.width() * 0.28, area.y0() + 16, area.x1() - area.width() * 0.28, area.y1() - 14);
        on.rectangle(room.grown(WALL), null, Ink.LIGHT);
        on.rectangle(room, Stroke.OUTLINE, Ink.WHITE);
        on.text(room.centreX(), room.centreY() + 1, Texts.of("guide.room"), CAPTION, Anchor.MIDDLE);
        Measure measure = measure(on);
        boolean pointed = measure.isLooked(Question.OPENING_BEYOND)
                || measure.isLooked(Question.OPENING_SURFACE)
                || measure.isLooked(Question.OPENING_KIND);
        Opening.Surface surface = (Opening.Surface) box.get(Question.OPENING_SURFACE);
        String from = Texts.word((Opening.Beyond) box.get(Question.OPENING_BEYOND));
        boolean duct = box.get(Question.OPENING_KIND) == Opening.Kind.REGISTER;
        double gap = 5;
        double across = room.x0() + room.width() * 0.28;
        double middle = room.y0() + room.height() * 0.3;
        switch (surface) {
            case WALL -> {
                way(on, room.x0() - WALL, middle - gap, room.x0(), middle + gap);
                duct(on, duct, room.x0() - WALL - 12, middle - gap, room.x0() - WALL, middle + gap, false);
                Arrow.line(on, room.x0() - 13, middle, room.x0() + 11, middle, AIR);
                words(on, from, room.x0() - WALL - 3, middle - gap - 2.5, Anchor.END, pointed);
            }
            case FLOOR -> {
                way(on, across - gap, room.y1(), across + gap, room.y1() + WALL);
                duct(on, duct, across - gap, room.y1() + WALL, across + gap, room.y1() + 12, true);
                Arrow.line(on, across, room.y1() + 12, across, room.y1() - 9, AIR);
                words(on, from, across - gap - 2.5, room.y1() + WALL + 6, Anchor.END, pointed);
            }
            case CEILING -> {
                way(on, across - gap, room.y0() - WALL, across + gap, room.y0());
                duct(on, duct, across - gap, room.y0() - 12, across + gap, room.y0() - WALL, true);
                Arrow.line(on, across, room.y0() - 12, across, room.y0() + 9, AIR);
                words(on, from, across + gap + 2.5, room.y0() - WALL - 2, Anchor.START, pointed);
            }
        }
        wayOut(on, room, gap);
    }

    private void wayOut(Sketch on, Bounds room, double gap) {
        WayOut out = (WayOut) box.get(Question.WAY_OUT);
        boolean pointed = measure(on).isLooked(Question.WAY_OUT);
        double y = room.y0() + room.height() * 0.68;
        if (out == WayOut.NONE_YET) {
            words(on, Texts.of("guide.noWayOut"), room.x1() + WALL + 3, y, Anchor.START, true);
            return;
        }
        way(on, room.x1(), y - gap, room.x1() + WALL, y + gap);
        Arrow.line(on, room.x1() - 11, y, room.x1() + 13, y, AIR);
        Opening.Beyond to = out == WayOut.INDOORS ? Opening.Beyond.INDOORS : Opening.Beyond.OUTDOORS;
        words(on, Texts.word(to), room.x1() + WALL + 3, y - gap - 2.5, Anchor.START, pointed);
    }

    private static void words(Sketch on, String words, double x, double y, Anchor anchor, boolean pointed) {
        on.text(
                x,
                y,
                words,
                CAPTION,
                pointed ? Weight.SEMIBOLD : Weight.REGULAR,
                anchor,
                pointed ? Ink.ACCENT : Ink.BLACK);
    }

    private static void way(Sketch on, double x0, double y0, double x1, double y1) {
        on.rectangle(new Bounds(x0, y0, x1, y1), null, Ink.WHITE);
    }

    private static void duct(Sketch on, boolean is, double x0, double y0, double x1, double y1, boolean upright) {
        if (!is) {
            return;
        }
        if (upright) {
            on.line(x0, y0, x0, y1, Stroke.OUTLINE).line(x1, y0, x1, y1, Stroke.OUTLINE);
        } else {
            on.line(x0, y0, x1, y0, Stroke.OUTLINE).line(x0, y1, x1, y1, Stroke.OUTLINE);
        }
    }

    /** The noise at the listener over what is allowed. */
    private void sound(Sketch on, Bounds area) {
        Spectrum noise = RoomLevel.atMicrophone(box.noise(), box.room(), BandSet.OCTAVE);
        Spectrum allowed = TargetCurve.of(box.target()).octaves();
        List<Band> bands = new ArrayList<>();
        List<Double> levels = new ArrayList<>();
        List<Double> limits = new ArrayList<>();
        List<Double> highest = new ArrayList<>();
        for (int i = 0; i < noise.size(); i++) {
            bands.add(BandSet.OCTAVE.bands().get(i));
            levels.add(noise.value(i));
            limits.add(allowed.value(i));
            highest.add(Math.max(noise.value(i), allowed.value(i)));
        }
        boolean target = measure(on).isLooked(Question.TARGET);
        SpectrumChart chart = new SpectrumChart(
                bands,
                0,
                new SpectrumChart.Range(Texts.of("guide.toTakeAway"), limits, highest),
                List.of(
                        new SpectrumChart.Series(
                                Texts.of("guide.heard"),
                                new Stroke(true, Stroke.Pattern.CONTINUOUS, target ? Ink.BLACK : Ink.ACCENT),
                                false,
                                levels),
                        new SpectrumChart.Series(
                                Texts.of("guide.allowed"),
                                new Stroke(target, Stroke.Pattern.DASHED, target ? Ink.ACCENT : Ink.BLACK),
                                true,
                                limits)),
                widths);
        caption(on, area.x0() + 2, area.y0() + CAPTION, "guide.chart");
        double high = Math.min(area.height() - 10, area.width() * 0.8);
        double top = area.y0() + 8 + (area.height() - 10 - high) / 2;
        on.add(chart.draw(area.width(), high), area.x0(), top);
    }

    /** The space from the front, beside what is seen from the side. */
    private void space(Sketch on, Bounds area) {
        double wide = box.number(Question.SPACE_WIDTH);
        double high = box.number(Question.SPACE_HEIGHT);
        double deep = box.number(Question.SPACE_DEPTH);
        double between = BESIDE + 10;
        double scale = Math.min(
                (area.width() - BESIDE - between) / (wide + deep), (area.height() - BESIDE - 2 * CAPTION - 6) / high);
        double left = area.x0() + BESIDE + (area.width() - BESIDE - between - (wide + deep) * scale) / 2;
        double top = area.y0() + 2 * CAPTION + (area.height() - BESIDE - 2 * CAPTION - high * scale) / 2;
        Bounds front = new Bounds(left, top, left + wide * scale, top + high * scale);
        double wall = front.x1() + between;
        Bounds side = new Bounds(wall, top, wall + deep * scale, front.y1());
        caption(on, front.x0(), top - 3, "guide.front");
        caption(on, side.x0() - WALL, top - 3, "guide.side");
        on.rectangle(front, AROUND, Ink.PALE);
        hole(on, front, scale);
        on.rectangle(new Bounds(side.x0() - WALL, side.y0(), side.x0(), side.y1()), null, Ink.LIGHT);
        on.rectangle(side, AROUND, Ink.PALE);
        double half = Math.min(side.height() / 2, box.number(Question.OPENING_HEIGHT) * scale / 2);
        on.rectangle(
                new Bounds(side.x0() - WALL, side.centreY() - half, side.x0(), side.centreY() + half), null, Ink.WHITE);
        Arrow.line(on, side.x0() - 9, side.centreY(), side.x0() + 7, side.centreY(), AIR);
        Measure measure = measure(on);
        measure.draw(Question.SPACE_WIDTH, Side.BELOW, front.y1(), front.x0(), front.x1());
        measure.draw(Question.SPACE_HEIGHT, Side.LEFT, front.x0(), front.y0(), front.y1());
        measure.draw(Question.SPACE_DEPTH, Side.BELOW, side.y1(), side.x0(), side.x1());
    }

    private void hole(Sketch on, Bounds front, double scale) {
        double halfWide = Math.min(front.width(), box.number(Question.OPENING_WIDTH) * scale) / 2;
        double halfHigh = Math.min(front.height(), box.number(Question.OPENING_HEIGHT) * scale) / 2;
        Bounds hole = new Bounds(
                front.centreX() - halfWide,
                front.centreY() - halfHigh,
                front.centreX() + halfWide,
                front.centreY() + halfHigh);
        on.rectangle(hole, Stroke.OUTLINE, Ink.WHITE);
        String words = Texts.of("guide.theOpening");
        boolean inside = widths.width(words, CAPTION, Weight.REGULAR) < hole.width() - 2;
        on.text(hole.centreX(), inside ? hole.centreY() + 1 : hole.y1() + CAPTION + 1, words, CAPTION, Anchor.MIDDLE);
    }

    /** A cut through a wall of the box, over a sheet of board. */
    private void materials(Sketch on, Bounds area) {
        Board board = (Board) box.get(Question.BOARD);
        Liner liner = (Liner) box.get(Question.LINER);
        double scale = Math.min(1000, area.height() * 0.3 / (board.thickness() + liner.thickness()));
        double top = area.y0() + CAPTION + 6;
        double x0 = area.x0() + BESIDE + 8;
        double x1 = area.x1() - 34;
        caption(on, x0, top - 3, "guide.cut");
        Bounds wood = new Bounds(x0, top, x1, top + board.thickness() * scale);
        Bounds soft = new Bounds(x0, wood.y1(), x1, wood.y1() + liner.thickness() * scale);
        Measure measure = measure(on);
        Hatching.RISING.fill(on, wood, measure.isLooked(Question.BOARD) ? AIR : Stroke.THIN.in(Ink.GREY));
        Hatching.CROSSED.fill(on, soft, measure.isLooked(Question.LINER) ? Stroke.THIN.in(Ink.ACCENT) : Stroke.RULE);
        on.rectangle(wood, Stroke.OUTLINE, null);
        on.rectangle(soft, Stroke.THIN, null);
        double air = soft.y1() + 8;
        Arrow.line(on, x0 + 6, air, x1 - 6, air, AIR);
        words(on, Texts.of("guide.board"), x1 + 3, wood.centreY() + 1, Anchor.START, measure.isLooked(Question.BOARD));
        words(on, Texts.of("guide.liner"), x1 + 3, soft.centreY() + 1, Anchor.START, measure.isLooked(Question.LINER));
        words(on, Texts.of("guide.air"), x1 + 3, air + 1, Anchor.START, false);
        thickness(measure, board.thickness(), Question.BOARD, wood);
        thickness(measure, liner.thickness(), Question.LINER, soft);
        sheet(on, new Bounds(area.x0(), air + 12, area.x1(), area.y1()));
    }

    private void thickness(Measure measure, double metres, Question question, Bounds of) {
        measure.draw(
                measure.isLooked(question),
                new Amounts(box.units()).length(metres),
                Side.LEFT,
                of.x0(),
                of.y0(),
                of.y1());
    }

    private void sheet(Sketch on, Bounds area) {
        Sheet sheet = (Sheet) box.get(Question.SHEET);
        double room = area.height() - BESIDE - CAPTION - 4;
        double scale = Math.min((area.width() - 2 * BESIDE) / sheet.length(), room / sheet.width());
        double left = area.centreX() - sheet.length() * scale / 2;
        double top = area.y0() + CAPTION + 4;
        Bounds whole = new Bounds(left, top, left + sheet.length() * scale, top + sheet.width() * scale);
        caption(on, left, top - 3, "guide.sheet");
        on.rectangle(whole, Stroke.OUTLINE, Ink.PALE);
        Measure measure = measure(on);
        boolean pointed = measure.isLooked(Question.SHEET);
        Amounts amounts = new Amounts(box.units());
        measure.draw(pointed, amounts.length(sheet.length()), Side.BELOW, whole.y1(), whole.x0(), whole.x1());
        measure.draw(pointed, amounts.length(sheet.width()), Side.LEFT, whole.x0(), whole.y0(), whole.y1());
    }
}
