package hushmaze.build;

import hushmaze.material.Sheet;

/**
 * A sheet size in whole nanometres: what is left inside the trim, with one kerf added to both sides because no kerf is
 * lost after the last piece of a row.
 *
 * @param number of the size in the job, offcuts of other boxes after the sheets
 * @param sheet what is bought
 * @param length nm
 * @param width nm
 * @param cost zero for an offcut on hand, a trifle for one that another box leaves; else the price of one, or its area in m²
 *     when not every sheet has a price, plus a trifle so that fewer sheets win a tie
 * @param stock how many there are
 */
record SheetKind(int number, Sheet sheet, long length, long width, double cost, int stock) {
    /** nm² */
    double area() {
        return (double) length * width;
    }
}
