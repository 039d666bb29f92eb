package hushmaze.build.fixing;

import hushmaze.solid.Panel;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Whether a row of screws that is driven from inside has room beside the boards that stand on the face it goes through.
 *
 * <p>A washer is about three diameters wide and the socket that turns the screw not much wider: from the middle of a screw to
 * a board it takes two diameters.
 *
 * <p>Source: sizes of washers and sockets, common practice, no source. Range: boards along the rows; those across them are
 * met only where a stud happens to lie there.
 */
public final class RowPlaces {
    private static final double ROOM = 2;

    private RowPlaces() {}

    /**
     * A row and the board that is nearest to it.
     *
     * @param board role of the board
     * @param distance between the middle of a screw and the board, m; below zero inside it
     * @param least distance that it takes, m
     */
    public record Near(Role board, double distance, double least) {}

    /** The row that is nearest to a board; empty where no screws are driven from inside. */
    public static Optional<Near> nearest(Solid solid, Rows rows) {
        return rows.screwed().stream()
                .filter(cleat -> cleat.kind() == Rows.Kind.CLEAT)
                .flatMap(cleat -> boards(solid, rows)
                        .flatMap(board -> screws(cleat)
                                .mapToObj(at -> new Near(board.role(), gap(board, rows, at), ROOM * cleat.diameter()))))
                .min(Comparator.comparingDouble(Near::distance));
    }

    private static Stream<Panel> boards(Solid solid, Rows rows) {
        return solid.panels().stream().filter(panel -> panel.role().normal() == rows.between());
    }

    /** Where screws of a row are across it. */
    private static DoubleStream screws(Rows.Cleat cleat) {
        return cleat.paired()
                ? DoubleStream.of(cleat.at() - cleat.half(), cleat.at() + cleat.half())
                : DoubleStream.of(cleat.at());
    }

    private static double gap(Panel board, Rows rows, double at) {
        return Math.max(
                board.bounds().low(rows.between()) - at, at - board.bounds().high(rows.between()));
    }
}
