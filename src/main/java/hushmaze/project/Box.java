package hushmaze.project;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * A rectangular box with an air path folded in one plane and extruded across the third direction. All clear sizes are
 * between liner faces.
 *
 * <p>Directions: x along the passes, y across them (the path folds in x and y), z along the clear height. The two faces
 * across z are the broad faces: the back at the low end, against the wall or floor, and the front.
 *
 * @param form maze of passes or one offset chamber
 * @param passes number of passes side by side, 1 to 6; 1 for an offset chamber
 * @param clearWidth of every pass, or of the chamber, across y, m
 * @param clearHeight across z, m
 * @param clearLength of every pass, between the lined ends, along x, m
 * @param turnGap from a baffle's tip to the liner face of the end it faces, m; not used with one pass
 * @param shell boards of every outer wall, innermost layer first, 1 to 3 layers
 * @param baffleBoard board of the baffles
 * @param baffleLayers layers of board in every baffle, 1 or 2
 * @param liner lining; absent for a bare box
 * @param linedFaces how many layers of it lie on which faces
 * @param openingPort the port over the opening, in the first pass, whichever way the air runs
 * @param roomPort the port in the room, in the last pass
 * @param joinery how the boards are joined; may be absent, then plain
 * @param seams where boards are made of two, in order from the near end; may be absent, then none
 */
public record Box(
        Form form,
        int passes,
        @Measured(Unit.MILLIMETRE) double clearWidth,
        @Measured(Unit.MILLIMETRE) double clearHeight,
        @Measured(Unit.MILLIMETRE) double clearLength,
        @Measured(Unit.MILLIMETRE) double turnGap,
        List<Board> shell,
        Board baffleBoard,
        int baffleLayers,
        @MayBeAbsent Liner liner,
        LinedFaces linedFaces,
        Port openingPort,
        Port roomPort,
        @MayBeAbsent Joinery joinery,
        @MayBeAbsent List<Seam> seams) {
    /** The two forms of a box. */
    public enum Form {
        /** One to six passes with baffles between them. */
        MAZE,
        /** One chamber whose openings are out of line. */
        OFFSET_CHAMBER
    }

    /** Most layers of board in a wall. */
    public static final int MAX_LAYERS = 3;
    /** Most passes a box may have. */
    public static final int MAX_PASSES = 6;
    /** Shortest useful baffle, from its fixed end to its tip, m. */
    public static final double MIN_BAFFLE = 0.05;
    /** Most seams a box may have. */
    public static final int MAX_SEAMS = 4;
    /** Shortest stretch between two seams, m. */
    public static final double MIN_STRETCH = 0.25;

    public Box {
        InvalidValue.present("form", form);
        InvalidValue.within("passes", passes, 1, form == Form.MAZE ? MAX_PASSES : 1);
        InvalidValue.within("clearWidth", clearWidth, 0.001, 3, Unit.MILLIMETRE);
        InvalidValue.within("clearHeight", clearHeight, 0.02, 3, Unit.MILLIMETRE);
        InvalidValue.within("clearLength", clearLength, 0.05, 5, Unit.MILLIMETRE);
        if (passes > 1) {
            InvalidValue.within("turnGap", turnGap, 0.001, clearLength - MIN_BAFFLE, Unit.MILLIMETRE);
        } else {
            InvalidValue.within("turnGap", turnGap, 0, 5, Unit.MILLIMETRE);
        }
        shell = List.copyOf(InvalidValue.present("shell", shell));
        if (shell.isEmpty() || shell.size() > MAX_LAYERS) {
            throw new InvalidValue("shell", shell.size() + " layers", "1 to 3 layers of board", "");
        }
        InvalidValue.present("baffleBoard", baffleBoard);
        InvalidValue.within("baffleLayers", baffleLayers, 1, 2);
        InvalidValue.present("linedFaces", linedFaces);
        if (liner == null && !linedFaces.equals(LinedFaces.NONE)) {
            throw new InvalidValue("liner", "nothing", "given when faces are lined", "");
        }
        requireRoom(liner, linedFaces, clearWidth);
        if (passes > 1) {
            requireNoThicker("baffleBoard.thickness", baffleBoard.thickness(), "", clearWidth);
        }
        requirePort(
                "openingPort",
                InvalidValue.present("openingPort", openingPort),
                form,
                clearWidth,
                clearHeight,
                clearLength);
        requirePort("roomPort", InvalidValue.present("roomPort", roomPort), form, clearWidth, clearHeight, clearLength);
        joinery = joinery == null ? Joinery.PLAIN : joinery;
        requireGroove(joinery, shell.get(0));
        seams = seams == null ? List.of() : List.copyOf(seams);
        requireInOrder(seams);
    }

    /** A plain box: boards that butt, in one piece. */
    public Box(
            Form form,
            int passes,
            double clearWidth,
            double clearHeight,
            double clearLength,
            double turnGap,
            List<Board> shell,
            Board baffleBoard,
            int baffleLayers,
            Liner liner,
            LinedFaces linedFaces,
            Port openingPort,
            Port roomPort) {
        this(
                form,
                passes,
                clearWidth,
                clearHeight,
                clearLength,
                turnGap,
                shell,
                baffleBoard,
                baffleLayers,
                liner,
                linedFaces,
                openingPort,
                roomPort,
                null,
                null);
    }

    /** The same box joined in another way. */
    public Box joined(Joinery other, List<Seam> otherSeams) {
        return with(shell, baffleBoard, linedFaces, other, otherSeams);
    }

    /** The same box of other boards, layer by layer. */
    public Box ofBoards(List<Board> otherShell, Board otherBaffles) {
        return with(otherShell, otherBaffles, linedFaces, joinery, seams);
    }

    /**
     * The same box with other clear sizes, liner and ports.
     *
     * @throws InvalidValue if there is no such box
     */
    public Box sized(
            int otherPasses,
            double width,
            double height,
            double length,
            double gap,
            Liner other,
            Port opening,
            Port room) {
        return new Box(
                form,
                otherPasses,
                width,
                height,
                length,
                gap,
                shell,
                baffleBoard,
                baffleLayers,
                other,
                linedFaces,
                opening,
                room,
                joinery,
                seams);
    }

    /** The same box with one more layer of its outermost board all round. */
    public Box withOneMoreLayer() {
        List<Board> more = new ArrayList<>(shell);
        more.add(more.get(more.size() - 1));
        return ofBoards(more, baffleBoard);
    }

    /** The same box lined with another liner of the same thickness. */
    public Box withLiner(Liner other) {
        return sized(passes, clearWidth, clearHeight, clearLength, turnGap, other, openingPort, roomPort);
    }

    /**
     * The same box with other ports.
     *
     * @throws InvalidValue if there is no such box
     */
    public Box withPorts(Port opening, Port room) {
        return sized(passes, clearWidth, clearHeight, clearLength, turnGap, liner, opening, room);
    }

    /** The same box with other layers of liner on its faces. */
    public Box lined(LinedFaces other) {
        return with(shell, baffleBoard, other, joinery, seams);
    }

    private Box with(
            List<Board> otherShell,
            Board otherBaffles,
            LinedFaces otherFaces,
            Joinery otherJoinery,
            List<Seam> otherSeams) {
        return new Box(
                form,
                passes,
                clearWidth,
                clearHeight,
                clearLength,
                turnGap,
                otherShell,
                otherBaffles,
                baffleLayers,
                liner,
                otherFaces,
                openingPort,
                roomPort,
                otherJoinery,
                otherSeams);
    }

    /** Whether it has a seam of a kind. */
    public boolean hasSeam(Seam.Kind kind) {
        return seams.stream().anyMatch(seam -> seam.kind() == kind);
    }

    /** Thickness of the whole outer wall, m. */
    public double shellThickness() {
        return shell.stream().mapToDouble(Board::thickness).sum();
    }

    /** Thickness of one baffle without its liner, m. */
    public double baffleThickness() {
        return baffleLayers * baffleBoard.thickness();
    }

    /** Thickness of the lining on the long sides, all layers of it, m; zero if they are bare. */
    public double wallLiner() {
        return lining(linedFaces.walls());
    }

    /** Thickness of the lining on each face of a baffle, m; zero if they are bare. */
    public double baffleLiner() {
        return lining(linedFaces.baffles());
    }

    /** Thickness of the lining on the ends, m; zero if they are bare. */
    public double endLiner() {
        return lining(linedFaces.ends());
    }

    /** Thickness of the lining on each broad face, m; zero if they are bare. */
    public double broadLiner() {
        return lining(linedFaces.broad());
    }

    private double lining(int layers) {
        return layers == 0 ? 0 : layers * liner.thickness();
    }

    private static void requireRoom(Liner liner, LinedFaces faces, double clearWidth) {
        if (liner == null) {
            return;
        }
        requireNoThicker("liner.thickness", liner.thickness(), "", clearWidth);
        int layers = Math.max(faces.walls(), faces.baffles());
        String field = "linedFaces." + (faces.walls() == layers ? "walls" : "baffles");
        requireNoThicker(field, layers * liner.thickness(), layers + " layers, ", clearWidth);
    }

    private static void requireNoThicker(String field, double thickness, String what, double clearWidth) {
        if (thickness > clearWidth) {
            throw new InvalidValue(
                    field,
                    what + millimetres(thickness),
                    "no thicker than the clear width of the pass, " + millimetres(clearWidth),
                    "mm");
        }
    }

    /** A groove takes half the board at most; an MDF industry guide, as read, has about one half. */
    private static void requireGroove(Joinery joinery, Board inner) {
        if (joinery.groove() > inner.thickness() / 2) {
            throw new InvalidValue(
                    "joinery.groove",
                    millimetres(joinery.groove()),
                    "at most half the innermost board, " + millimetres(inner.thickness() / 2),
                    "mm");
        }
    }

    private static void requireInOrder(List<Seam> seams) {
        InvalidValue.within("seams", seams.size(), 0, MAX_SEAMS);
        for (int i = 1; i < seams.size(); i++) {
            double least = seams.get(i - 1).position() + MIN_STRETCH;
            if (seams.get(i).position() < least - 1e-9) {
                throw new InvalidValue(
                        "seams[" + i + "].position",
                        millimetres(seams.get(i).position()),
                        "at least " + millimetres(MIN_STRETCH) + " beyond the one before, " + millimetres(least),
                        "mm");
            }
        }
    }

    private static void requirePort(
            String field, Port port, Form form, double clearWidth, double clearHeight, double clearLength) {
        boolean end = port.face() == PortFace.END;
        double widthRoom = end ? clearWidth : clearLength;
        double heightRoom = port.face().isBroad() ? clearWidth : clearHeight;
        double distance = end && form == Form.MAZE ? 0 : port.edgeDistance();
        double slack = 1e-9;
        if (port.width() + distance > widthRoom + slack) {
            throw new InvalidValue(
                    field + ".width",
                    millimetres(port.width()) + " plus the edge distance " + millimetres(distance),
                    "within the pass, " + millimetres(widthRoom),
                    "mm");
        }
        if (port.height() > heightRoom + slack) {
            throw new InvalidValue(
                    field + ".height", millimetres(port.height()), "within the pass, " + millimetres(heightRoom), "mm");
        }
    }

    private static String millimetres(double metres) {
        return LengthFormat.bare(metres, UnitSystem.METRIC);
    }
}
