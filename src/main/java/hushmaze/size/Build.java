package hushmaze.size;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.LinedFaces;

/**
 * What a box is made of.
 *
 * @param board of shell and baffles
 * @param layers of board in every wall
 * @param baffleLayers of board in every baffle
 * @param liner of the path
 * @param lined layers of it on the faces
 */
record Build(Board board, int layers, int baffleLayers, Liner liner, LinedFaces lined) {
    /** Both shells that a line across the box goes through, m. */
    double shells() {
        return 2 * layers * board.thickness();
    }

    /** Thickest lining of a side or baffle, m. */
    double side() {
        return Math.max(lined.walls(), lined.baffles()) * liner.thickness();
    }

    /** Both linings of the ends, m. */
    double ends() {
        return 2 * lined.ends() * liner.thickness();
    }

    /** All linings across some passes side by side, m. */
    double across(int passes) {
        return 2 * (lined.walls() + (passes - 1) * lined.baffles()) * liner.thickness();
    }

    /** Both linings of the broad faces, m. */
    double broad() {
        return 2 * lined.broad() * liner.thickness();
    }

    /** One baffle without its liner, m. */
    double baffle() {
        return baffleLayers * board.thickness();
    }

    Build ofLayers(int others) {
        return new Build(board, others, baffleLayers, liner, lined);
    }

    Build lined(LinedFaces others) {
        return new Build(board, layers, baffleLayers, liner, others);
    }
}
