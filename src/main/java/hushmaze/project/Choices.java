package hushmaze.project;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import java.util.List;

/**
 * What a search for a box may choose among. What is left empty or absent is free, or as the construction says.
 *
 * @param boards on hand, at most 4; empty for the board of the construction alone
 * @param liners on hand, at most 4; empty for the liner of the construction alone
 * @param mostLayers most layers of board in a wall, 1 to 3; absent for 3
 * @param mostLinerLayers most layers of liner on a face, 1 to 2; absent for 2
 * @param openingFaces faces of the box that may lie over the opening; empty for any
 * @param roomFaces faces of the box that may have the port in the room; empty for any
 */
public record Choices(
        @MayBeAbsent List<Board> boards,
        @MayBeAbsent List<Liner> liners,
        @MayBeAbsent Integer mostLayers,
        @MayBeAbsent Integer mostLinerLayers,
        @MayBeAbsent List<PortFace> openingFaces,
        @MayBeAbsent List<PortFace> roomFaces) {
    /** Everything free that is not a material. */
    public static final Choices FREE = new Choices(null, null, null, null, null, null);

    private static final int MOST_MATERIALS = 4;

    public Choices {
        boards = few("boards", boards);
        liners = few("liners", liners);
        if (mostLayers != null) {
            InvalidValue.within("mostLayers", mostLayers, 1, Box.MAX_LAYERS);
        }
        if (mostLinerLayers != null) {
            InvalidValue.within("mostLinerLayers", mostLinerLayers, 1, LinedFaces.MOST);
        }
        openingFaces = few("openingFaces", openingFaces);
        roomFaces = few("roomFaces", roomFaces);
    }

    /** With other boards on hand. */
    public Choices withBoards(List<Board> others) {
        return new Choices(others, liners, mostLayers, mostLinerLayers, openingFaces, roomFaces);
    }

    /** With other liners on hand. */
    public Choices withLiners(List<Liner> others) {
        return new Choices(boards, others, mostLayers, mostLinerLayers, openingFaces, roomFaces);
    }

    /** With another limit on the layers of a wall; null for none. */
    public Choices withMostLayers(Integer most) {
        return new Choices(boards, liners, most, mostLinerLayers, openingFaces, roomFaces);
    }

    /** With another limit on the layers of liner; null for none. */
    public Choices withMostLinerLayers(Integer most) {
        return new Choices(boards, liners, mostLayers, most, openingFaces, roomFaces);
    }

    /** With other faces at the two ends. */
    public Choices withFaces(List<PortFace> atOpening, List<PortFace> inRoom) {
        return new Choices(boards, liners, mostLayers, mostLinerLayers, atOpening, inRoom);
    }

    /** Most layers of board in a wall. */
    public int layers() {
        return mostLayers == null ? Box.MAX_LAYERS : mostLayers;
    }

    /** Most layers of liner on a face. */
    public int linerLayers() {
        return mostLinerLayers == null ? LinedFaces.MOST : mostLinerLayers;
    }

    private static <T> List<T> few(String field, List<T> values) {
        List<T> all = values == null ? List.of() : List.copyOf(values);
        if (all.size() > MOST_MATERIALS) {
            throw new InvalidValue(field, all.size() + " given", "at most " + MOST_MATERIALS, "");
        }
        return all;
    }
}
