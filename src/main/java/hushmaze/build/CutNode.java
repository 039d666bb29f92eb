package hushmaze.build;

/**
 * How a sheet, or a piece of one, is cut up: edge to edge in two, again and again, until what is left is a panel or an
 * offcut. Distances are from the low corner of the piece that is cut.
 */
public sealed interface CutNode {
    /** Direction a cut runs in. */
    enum Along {
        /** The saw runs along the sheet's length; the fence is set across it, in the width direction. */
        LENGTH,
        /** The saw runs along the sheet's width; the fence is set along the length. */
        WIDTH
    }

    /**
     * One straight cut from edge to edge.
     *
     * @param along direction the saw runs in
     * @param at size of the first piece, measured across the cut; the kerf lies beyond it, m
     * @param first piece on the low side
     * @param second piece beyond the kerf
     */
    record Cut(Along along, double at, CutNode first, CutNode second) implements CutNode {}

    /**
     * A finished piece.
     *
     * @param mark of the panel, or null for an offcut
     * @param length along the sheet's length, m
     * @param width along the sheet's width, m
     */
    record Leaf(String mark, double length, double width) implements CutNode {
        /** Whether it is left over. */
        public boolean offcut() {
            return mark == null;
        }
    }
}
