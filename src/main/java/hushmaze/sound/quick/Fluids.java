package hushmaze.sound.quick;

/**
 * What the air and the liner of a section are like, besides the frequency.
 *
 * @param broadLiner depth of the lining on both broad faces, m; zero if they are bare
 * @param height clear height between them, m; zero if they are bare
 * @param linerWeight height of the liner over that of the air: beside lined broad faces it reaches from board to board
 * @param cut whether the air meets the liner where it is cut, so that its facing is not between them
 */
record Fluids(double broadLiner, double height, double linerWeight, boolean cut) {
    static final Fluids PLAIN = new Fluids(0, 0, 1, false);

    /** Between broad faces lined to a depth. */
    static Fluids between(double broadLiner, double height) {
        return broadLiner > 0 ? new Fluids(broadLiner, height, (height + 2 * broadLiner) / height, false) : PLAIN;
    }

    /**
     * Plain air of a height beside liner from board to board.
     *
     * @param faced whether the liner has a facing, which is not on the cut edges of the hole
     */
    Fluids inHole(double clearHeight, double holeHeight, boolean faced) {
        return new Fluids(0, 0, (clearHeight + 2 * broadLiner) / holeHeight, faced);
    }
}
