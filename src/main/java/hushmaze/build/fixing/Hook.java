package hushmaze.build.fixing;

import hushmaze.project.Mounting;
import java.util.stream.DoubleStream;

/**
 * Two battens with one edge cut to 45 degrees, one on the wall with the screws, the other on the box: this one drops behind
 * the bevel of the first.
 *
 * <p>Formulas. From the middle of the row of screws, D their diameter, t the thickness, p the distance of two screws one above the
 * other in a stud (4 D; 0 for one): the bevel begins at the wall at p/2 + 1.5 D and ends t higher; below the lower screw there is
 * as much batten as the larger of 4 D and 1.5 D + t. Without friction the bevel draws the box to the wall with its whole weight
 * W, and so the batten off the wall; if the arm a of the weight is longer than the distance h from the hook to the spacer below, W a / h is more
 * and the box tips out. The pull T acts at the tip of the bevel and turns the batten about its lower edge: most loaded screw
 * T k b y / Σ y² of an even share, y from that edge to each of the k screws of a stud, b the batten's width.
 *
 * <p>Source: statics; edge distances by the National Design Specification for Wood Construction, 12.5, from memory. Range: battens
 * whole and straight, along the whole box. Accuracy: on the safe side, since friction and the batten's own hold on the wall are left out;
 * its bending between studs and the joint of batten and box are outside it. Differs from the source: none.
 *
 * @param thickness of the battens, m
 * @param diameter of the screws, m
 * @param above whether two screws may stand one above the other
 */
public record Hook(double thickness, double diameter, boolean above) {
    /** Room above the bevel to drop the box in, m. */
    private static final double PLAY = 0.005;

    /** How far a box is lifted over its place to be hooked in, m. */
    static double lift(double thickness) {
        return thickness + PLAY;
    }

    static Hook of(Mounting mounting, boolean above) {
        return new Hook(mounting.cleat(), StudFixing.diameter(mounting.screw()), above);
    }

    private double pair() {
        return above ? StudRow.APART * diameter : 0;
    }

    /** From the middle of the row up to where the bevel begins at the wall, m. */
    double foot() {
        return pair() / 2 + StudRow.EDGE * diameter;
    }

    /** From the middle of the row up to the tip of the wall's batten, m. */
    double tip() {
        return foot() + thickness;
    }

    /** From the middle of the row down to the lower edge of the wall's batten, m. */
    double below() {
        return pair() / 2 + Math.max(StudRow.LOADED_EDGE * diameter, StudRow.EDGE * diameter + thickness);
    }

    /** Of either batten, tip counted, m. */
    public double width() {
        return tip() + below();
    }

    /** From the middle of the row up to the upper edge of the box's batten, m. */
    double reach() {
        return foot() + width();
    }

    /** Pull of the most loaded screw as a share of its even share of the pull at the tip. */
    double lever() {
        double[] places = above ? new double[] {below() - pair() / 2, below() + pair() / 2} : new double[] {below()};
        double most = places[places.length - 1];
        double squares = DoubleStream.of(places).map(y -> y * y).sum();
        return places.length * width() * most / squares;
    }
}
