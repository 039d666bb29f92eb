package hushmaze.build.joint;

import hushmaze.project.Brief;
import hushmaze.project.Fitting;
import hushmaze.project.Opening;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Axis;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;

/**
 * A duct's collar of sheet metal on the outside of a box: its flange centred on the port, screwed into the wall no further
 * apart than 100 mm, with screws that do not come out inside. No board depends on it.
 *
 * <p>A round one goes where the brief has a round collar or a flexible duct; a rectangular one, as large as the port, where
 * the box is set into a duct and the brief names nothing round.
 *
 * <p>Source: common practice, no source; the flange is {@link #FLANGE} wide, as collars are sold. Range: any box. Accuracy:
 * counts and sizes exact. Differs from the source: none.
 *
 * @param end which port it is on
 * @param diameter of a round one, m; absent for a rectangular one
 * @param width of the duct side of a rectangular one, m; of the flange's hole for a round one
 * @param height as width, the other way, m
 * @param screws in its flange
 * @param screwLength m; 0 if no screw sold is short enough
 * @param overhang how far the flange reaches beyond the face it lies on, m; 0 if it does not
 */
public record CollarPlan(
        Fitting.End end,
        @MayBeAbsent Double diameter,
        double width,
        double height,
        int screws,
        double screwLength,
        double overhang) {
    /** Width of the flange, m. */
    public static final double FLANGE = 0.025;

    private static final double APART = 0.1;
    private static final int LEAST = 4;
    /** How far screws stay from the inner face, m. */
    private static final double HIDDEN = 0.003;

    private static final double SAME = 1e-9;

    /** The collars of a box. */
    public static List<CollarPlan> of(Brief brief, Solid solid, UnitSystem units) {
        List<CollarPlan> plans = new ArrayList<>();
        boolean roundAtOpening = false;
        for (Fitting fitting : brief.fittings()) {
            if (fitting.kind().connects()) {
                plans.add(plan(fitting.end(), fitting.diameter(), solid, units));
                roundAtOpening |= fitting.end() == Fitting.End.AT_OPENING;
            }
        }
        if (brief.opening().kind() == Opening.Kind.IN_DUCT && !roundAtOpening) {
            plans.add(plan(Fitting.End.AT_OPENING, null, solid, units));
        }
        return plans;
    }

    private static CollarPlan plan(Fitting.End end, Double diameter, Solid solid, UnitSystem units) {
        PortPlace port = end == Fitting.End.AT_OPENING ? solid.openingPort() : solid.roomPort();
        double width = diameter == null ? port.port().width() : diameter;
        double height = diameter == null ? port.port().height() : diameter;
        double around = diameter == null ? 2 * (width + height + 2 * FLANGE) : Math.PI * (diameter + FLANGE);
        int screws = Math.max(LEAST, (int) Math.ceil(around / APART - SAME));
        double length = Lengths.longestScrew(solid.box().shellThickness() - HIDDEN, units);
        return new CollarPlan(end, diameter, width, height, screws, length, overhang(port, width, height, solid));
    }

    /** The flange covers the port and the duct, whichever is larger. */
    private static double overhang(PortPlace port, double width, double height, Solid solid) {
        double most = 0;
        for (Axis axis : List.of(port.role().normal().u(), port.role().normal().v())) {
            double hole = port.hole().size(axis);
            boolean alongWidth = Math.abs(hole - port.port().width()) < SAME;
            double half = Math.max(hole, alongWidth ? width : height) / 2 + FLANGE;
            double centre = port.hole().centre(axis);
            most = Math.max(most, solid.outer().low(axis) - (centre - half));
            most = Math.max(most, centre + half - solid.outer().high(axis));
        }
        return most < SAME ? 0 : most;
    }
}
