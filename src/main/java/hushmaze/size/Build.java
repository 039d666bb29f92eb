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
 * @param lined faces that carry it
 */
record Build(Board board, int layers, int baffleLayers, Liner liner, LinedFaces lined) {
    /** Both shells that a line across the box goes through, m. */
    double shells() {
        return 2 * layers * board.thickness();
    }

    /** What a pass takes across besides its clear width: a liner on both sides, m. */
    double liners() {
        return 2 * liner.thickness();
    }

    /** Both liners of the broad faces, m. */
    double broad() {
        return lined.broad() ? 2 * liner.thickness() : 0;
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
