package hushmaze.size;

import hushmaze.assess.BoxFit;
import hushmaze.build.fixing.Way;
import hushmaze.project.Brief;
import hushmaze.project.PortFace;
import hushmaze.solid.Axis;

/**
 * The room there is for a box that lies one way round, in the box's own directions.
 *
 * @param x along the passes, m
 * @param y across them, m
 * @param z along the clear height, m
 * @param openingWidth the port's width over the opening, m
 * @param openingHeight the port's height over the opening, m
 */
record Place(double x, double y, double z, double openingWidth, double openingHeight) {
    /**
     * @param face over the opening
     * @param turned whether the box lies a quarter turn round; the opening's width lies along the space's width, so it
     *     turns with the box
     */
    static Place of(Brief brief, PortFace face, boolean turned) {
        Axis away = BoxFit.away(face);
        double[] room = new double[3];
        room[away.ordinal()] = brief.space().depth()
                - brief.standOff(brief.construction().joineryOrPlain().gasket());
        double width = brief.space().width();
        double height = brief.space().height() - Way.lift(face, brief);
        room[away.u().ordinal()] = turned ? height : width;
        room[away.v().ordinal()] = turned ? width : height;
        double across = brief.opening().width();
        double up = brief.opening().height();
        return new Place(room[0], room[1], room[2], turned ? up : across, turned ? across : up);
    }

    /** Longest clear length, m. */
    double length(Build build) {
        return x - build.shells() - build.ends();
    }

    /** Highest clear height, m. */
    double height(Build build) {
        return z - build.shells() - build.broad();
    }

    /** Widest clear width of some passes side by side, m. */
    double width(Build build, int passes) {
        double room = y - build.shells() - build.across(passes) - (passes - 1) * build.baffle();
        return room / passes;
    }
}
