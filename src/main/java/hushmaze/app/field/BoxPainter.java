package hushmaze.app.field;

import hushmaze.app.model.Texts;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.Turn;
import hushmaze.sound.section.PathField;
import hushmaze.sound.section.SectionShape;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import javafx.geometry.Point2D;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** Draws a box around the map of its sound: boards hatched as in the plan, edges, mouths with arrows, levels in figures. */
final class BoxPainter {
    private static final double HATCH = 6;
    private static final double BOLD = 2;
    private static final Font WORDS = Font.font("Source Sans 3", 13);
    private static final Font FIGURES = Font.font("Source Sans 3 SemiBold", 13);
    private static final double CHIP = 19;
    private static final double INSET = 5;
    private static final double SAME = 1e-7;

    private final GraphicsContext to;
    private final FieldColours colours;
    private final PathField field;
    private final BoxFrame frame;
    private final SectionShape shape;
    private final Solid solid;

    BoxPainter(GraphicsContext to, FieldColours colours, PathField field, BoxFrame frame) {
        this.to = to;
        this.colours = colours;
        this.field = field;
        this.frame = frame;
        this.shape = field.shape();
        this.solid = field.solid();
    }

    private void rectangle(Cuboid block) {
        double x = frame.x(block.x0());
        double y = frame.y(block.y1());
        to.rect(x, y, frame.x(block.x1()) - x, frame.y(block.y0()) - y);
    }

    /** The boards, under the map. */
    void ground() {
        to.setFill(colours.board());
        to.fillRect(frame.left(), frame.top(), frame.width(), frame.height());
        for (SectionShape.Board board : shape.boards()) {
            to.save();
            to.beginPath();
            rectangle(board.place());
            to.clip();
            hatch(board.layer() % 2 == 0);
            to.restore();
            to.setStroke(colours.hatch());
            to.setLineWidth(1);
            outline(board.place());
        }
    }

    private void outline(Cuboid block) {
        double x = frame.x(block.x0());
        double y = frame.y(block.y1());
        to.strokeRect(x + 0.5, y + 0.5, frame.x(block.x1()) - x - 1, frame.y(block.y0()) - y - 1);
    }

    private void hatch(boolean rising) {
        double high = frame.height();
        to.setStroke(colours.hatch());
        to.setLineWidth(1);
        for (double x = frame.left() - high; x < frame.left() + frame.width() + high; x += HATCH) {
            double bottom = frame.top() + high;
            to.strokeLine(x, rising ? bottom : frame.top(), x + high, rising ? frame.top() : bottom);
        }
    }

    /** From now on only air and liner are painted on. */
    void clipToAir() {
        to.beginPath();
        Stream.concat(shape.open().stream(), shape.lining().stream()).forEach(this::rectangle);
        to.clip();
    }

    /** Edges of the liner, thin, and of the boards. */
    void edges() {
        // light on dark, so that they are seen on every colour of the map
        to.setStroke(colours.shadow());
        to.setLineWidth(3);
        shape.lining().forEach(this::outline);
        to.setStroke(colours.lining());
        to.setLineWidth(1);
        shape.lining().forEach(this::outline);
        to.setStroke(colours.line());
        to.setLineWidth(BOLD);
        List<Cuboid> hollow =
                Stream.concat(shape.open().stream(), shape.lining().stream()).toList();
        double[] xs = places(hollow, Axis.X);
        double[] ys = places(hollow, Axis.Y);
        for (int i = 0; i < xs.length; i++) {
            for (int j = 0; j < ys.length; j++) {
                if (i + 1 < xs.length && isEdge(hollow, (xs[i] + xs[i + 1]) / 2, ys[j], 0, SAME)) {
                    to.strokeLine(frame.x(xs[i]), frame.y(ys[j]), frame.x(xs[i + 1]), frame.y(ys[j]));
                }
                if (j + 1 < ys.length && isEdge(hollow, xs[i], (ys[j] + ys[j + 1]) / 2, SAME, 0)) {
                    to.strokeLine(frame.x(xs[i]), frame.y(ys[j]), frame.x(xs[i]), frame.y(ys[j + 1]));
                }
            }
        }
    }

    private double[] places(List<Cuboid> hollow, Axis axis) {
        TreeSet<Double> all =
                new TreeSet<>(List.of(solid.outer().low(axis), solid.outer().high(axis)));
        hollow.forEach(block -> all.addAll(List.of(block.low(axis), block.high(axis))));
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Whether there is a board on one side of a place, and on the other air, liner or the world outside. */
    private boolean isEdge(List<Cuboid> hollow, double x, double y, double dx, double dy) {
        return isBoard(hollow, x - dx, y - dy) != isBoard(hollow, x + dx, y + dy);
    }

    private boolean isBoard(List<Cuboid> hollow, double x, double y) {
        return holds(solid.outer(), x, y) && hollow.stream().noneMatch(block -> holds(block, x, y));
    }

    private static boolean holds(Cuboid block, double x, double y) {
        return x > block.x0() && x < block.x1() && y > block.y0() && y < block.y1();
    }

    /** Where the noise comes in and where it leaves, with arrows; the words carry the level where it is looked at. */
    void ports(boolean withLevels) {
        List<Double> levels = field.levels();
        port(solid.openingPort(), true, withLevels ? " " + figure(levels.get(0)) : "");
        port(solid.roomPort(), false, withLevels ? " " + figure(levels.get(levels.size() - 1)) : "");
    }

    private void port(PortPlace port, boolean opening, String level) {
        Role wall = BoxFrame.shownIn(port, opening, field.flat());
        String words = Texts.of(opening ? "inside.mark.opening" : "inside.mark.room") + level;
        Cuboid hole = port.hole();
        double x = frame.x(hole.centre(Axis.X));
        double y = frame.y(hole.centre(Axis.Y));
        switch (wall) {
            case NEAR_END -> beside(frame.left(), y, -1, opening, words);
            case FAR_END -> beside(frame.left() + frame.width(), y, 1, opening, words);
            case FIRST_SIDE -> over(x, frame.top() + frame.height(), 1, opening, words);
            case LAST_SIDE -> over(x, frame.top(), -1, opening, words);
            default -> {
                double x0 = frame.x(hole.x0());
                double y0 = frame.y(hole.y1());
                double wide = frame.x(hole.x1()) - x0;
                double high = frame.y(hole.y0()) - y0;
                to.setStroke(colours.shadow());
                to.setLineWidth(2 * BOLD);
                to.strokeRect(x0, y0, wide, high);
                to.setStroke(colours.line());
                to.setLineWidth(BOLD);
                to.setLineDashes(6, 4);
                to.strokeRect(x0, y0, wide, high);
                to.setLineDashes();
                chip(x, y, words);
            }
        }
    }

    /** An arrow beside the box with its words over and under it. */
    private void beside(double edge, double y, int out, boolean in, String words) {
        double near = edge + out * 6;
        double far = edge + out * 46;
        arrow(in ? far : near, y, in ? near : far, y);
        to.setFont(WORDS);
        to.setFill(colours.words());
        to.setTextAlign(TextAlignment.CENTER);
        to.setTextBaseline(VPos.BASELINE);
        int gap = words.indexOf(' ');
        double middle = edge + out * 33;
        to.fillText(gap < 0 ? words : words.substring(0, gap), middle, y - 9);
        if (gap >= 0) {
            to.setFont(FIGURES);
            to.setTextBaseline(VPos.TOP);
            to.fillText(words.substring(gap + 1), middle, y + 7);
        }
    }

    /** An arrow above or below the box with its words beside it. */
    private void over(double x, double edge, int out, boolean in, String words) {
        double near = edge + out * 5;
        double far = edge + out * 36;
        arrow(x, in ? far : near, x, in ? near : far);
        to.setFont(FIGURES);
        to.setFill(colours.words());
        to.setTextBaseline(VPos.CENTER);
        boolean right = x + 12 + width(words) < to.getCanvas().getWidth();
        to.setTextAlign(right ? TextAlignment.LEFT : TextAlignment.RIGHT);
        to.fillText(words, right ? x + 12 : x - 12, edge + out * 24);
    }

    private void arrow(double x0, double y0, double x1, double y1) {
        double length = Math.hypot(x1 - x0, y1 - y0);
        double dx = (x1 - x0) / length;
        double dy = (y1 - y0) / length;
        double head = 11;
        double half = 6;
        to.setStroke(colours.line());
        to.setFill(colours.line());
        to.setLineWidth(3);
        to.strokeLine(x0, y0, x1 - dx * head, y1 - dy * head);
        to.fillPolygon(
                new double[] {x1, x1 - dx * head - dy * half, x1 - dx * head + dy * half},
                new double[] {y1, y1 - dy * head + dx * half, y1 - dy * head - dx * half},
                3);
    }

    /** The level in the middle of every turn. */
    void levels() {
        for (Turn turn : solid.turns()) {
            double y = solid.baffles().get(turn.number()).centre(Axis.Y);
            chip(
                    frame.x(turn.clear().centre(Axis.X)),
                    frame.y(y),
                    figure(field.levels().get(turn.number() + 1)));
        }
    }

    private static String figure(double level) {
        long db = Math.round(level);
        return (db > 0 ? "+" : db < 0 ? "−" : "") + Math.abs(db) + " dB";
    }

    /** Words on a ground of their own, within the canvas. */
    private void chip(double x, double y, String words) {
        double wide = width(words) + 2 * INSET;
        double left = Math.round(Math.max(2, Math.min(to.getCanvas().getWidth() - wide - 2, x - wide / 2)));
        double top = Math.round(y - CHIP / 2);
        to.setFill(colours.ground());
        to.fillRoundRect(left, top, wide, CHIP, 6, 6);
        to.setStroke(colours.line());
        to.setLineWidth(1);
        to.strokeRoundRect(left + 0.5, top + 0.5, wide - 1, CHIP - 1, 6, 6);
        to.setFont(FIGURES);
        to.setFill(colours.words());
        to.setTextAlign(TextAlignment.LEFT);
        to.setTextBaseline(VPos.CENTER);
        to.fillText(words, left + INSET, top + CHIP / 2);
    }

    private static double width(String words) {
        Text text = new Text(words);
        text.setFont(FIGURES);
        return text.getLayoutBounds().getWidth();
    }

    /** The point that is read, m from the box's near end and first side. */
    void point(Point2D at) {
        double x = frame.x(solid.outer().x0() + at.getX());
        double y = frame.y(solid.outer().y0() + at.getY());
        to.setStroke(colours.ground());
        to.setLineWidth(4);
        to.strokeOval(x - 6, y - 6, 12, 12);
        to.setStroke(colours.words());
        to.setLineWidth(1.5);
        to.strokeOval(x - 6, y - 6, 12, 12);
    }
}
