package hushmaze.drawing.page;

import hushmaze.drawing.Page;

/**
 * A plan on a page, and where on the page places of the box are.
 *
 * @param page with the plan on it
 * @param originX of the box's origin on the page, mm from its left
 * @param originY of the box's origin on the page, mm from its top
 * @param perMetre millimetres on the page for one metre of the box
 */
public record PlacedPlan(Page page, double originX, double originY, double perMetre) {
    /** Millimetres from the left of the page of a place along the passes, m. */
    public double x(double metres) {
        return originX + perMetre * metres;
    }

    /** Millimetres from the top of the page of a place across the passes, m. */
    public double y(double metres) {
        return originY - perMetre * metres;
    }

    /** Place along the passes, m, of a place on the page, mm. */
    public double alongAt(double x) {
        return (x - originX) / perMetre;
    }

    /** Place across the passes, m, of a place on the page, mm. */
    public double acrossAt(double y) {
        return (originY - y) / perMetre;
    }
}
