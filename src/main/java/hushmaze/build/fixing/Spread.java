package hushmaze.build.fixing;

import hushmaze.project.Mounting;

/**
 * How unevenly the screws of a row under a ceiling are loaded when the centre of mass is off the middle of the row.
 *
 * <p>Formula: most loaded screw = R / n (1 + 6 c (p - 1) / (w (p + 1))); R load of the row, n its screws, c distance off the
 * middle, p places evenly spread over the width w. With one place only, the box presses with its edge against the ceiling: R / n
 * (1 + 2 c / b), b side of the box.
 *
 * <p>Source: equilibrium of a stiff body on equal springs. Range: places even about the middle of the box.
 *
 * @param places where screws are
 * @param width from the first to the last, m; for one place the side of the box
 */
record Spread(int places, double width) {
    /** @param row what is known of the studs; null when their spacing is not */
    static Spread of(double side, Mounting mounting, StudRow row) {
        int screws = mounting.screwsPerRow();
        double margin = 8 * StudFixing.diameter(mounting.screw());
        double open = mounting.cleatLength() == null ? side : Math.min(side, mounting.cleatLength());
        double width = Math.min(side, row == null ? open - margin : row.span());
        int places = row == null ? screws : Math.min(screws, row.sure());
        return places < 2 || width <= 0 ? new Spread(1, side) : new Spread(places, width);
    }

    /** Share of the most loaded screw, 1 for an even share. */
    double most(double off) {
        double form = places == 1 ? 2 : 6.0 * (places - 1) / (places + 1);
        return 1 + form * off / width;
    }
}
