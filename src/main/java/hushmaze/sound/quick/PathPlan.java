package hushmaze.sound.quick;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.Turn;
import hushmaze.sound.porous.SlitSection;
import java.util.ArrayList;
import java.util.List;

/**
 * A box's path as the quick wave sees it: stretches of pass between junctions, read from the solid.
 *
 * @param inlet the port over the opening
 * @param outlet the port in the room
 * @param turns between the passes
 * @param sections of the passes
 * @param lengths of the stretches between junctions, m; negative where two junctions overlap, down to a clear width
 * @param overlaps by how much junctions overlap in each pass, m
 * @param fluids of the passes
 * @param height clear height, m
 */
record PathPlan(
        PortShape inlet,
        PortShape outlet,
        List<TurnPlace> turns,
        List<SlitSection> sections,
        double[] lengths,
        double[] overlaps,
        Fluids fluids,
        double height) {
    private static final double ROUNDING = 1e-9;

    static PathPlan of(Solid solid) {
        List<Pass> passes = solid.passes();
        Pass first = passes.get(0);
        Pass last = passes.get(passes.size() - 1);
        Fluids fluids = Fluids.between(tidy(first.broadLiner()), tidy(first.height()));
        List<SlitSection> sections = passes.stream().map(PathPlan::section).toList();
        List<TurnPlace> turns = new ArrayList<>();
        for (Turn turn : solid.turns()) {
            TurnMouth.Shape mouth = new TurnMouth.Shape(
                    sections.get(turn.number()),
                    sections.get(turn.number() + 1),
                    tidy(turn.tipWidth()),
                    tidy(turn.endLiner()),
                    fluids);
            turns.add(new TurnPlace(mouth, tidy(turn.gap())));
        }
        double endLiner = tidy(solid.box().endLiner());
        double[] lengths = lengths(solid);
        double[] overlaps = new double[lengths.length];
        for (int i = 0; i < lengths.length; i++) {
            overlaps[i] = Math.max(0, -lengths[i]);
            lengths[i] = Math.max(-first.width(), lengths[i]);
        }
        return new PathPlan(
                port(solid.openingPort(), first, false, fluids, endLiner),
                port(solid.roomPort(), last, last.forward(), fluids, endLiner),
                turns,
                sections,
                lengths,
                overlaps,
                fluids,
                first.height());
    }

    private static double[] lengths(Solid solid) {
        List<Pass> passes = solid.passes();
        double[] lengths = new double[passes.size()];
        for (int i = 0; i < lengths.length; i++) {
            Pass pass = passes.get(i);
            double from = i == 0
                    ? plane(solid.openingPort(), pass, false)
                    : plane(solid.turns().get(i - 1));
            double to = i == lengths.length - 1
                    ? plane(solid.roomPort(), pass, pass.forward())
                    : plane(solid.turns().get(i));
            double length = pass.forward() ? to - from : from - to;
            // equal passes to be seen as equal
            lengths[i] = Math.rint(length / ROUNDING) * ROUNDING;
        }
        return lengths;
    }

    /** Sizes to a hundredth of a millimetre, so that what differs by rounding only is looked up as the same. */
    static double tidy(double size) {
        return Math.rint(size * 1e5) / 1e5;
    }

    private static SlitSection section(Pass pass) {
        return new SlitSection(tidy(pass.lowLiner()), tidy(pass.width()), tidy(pass.highLiner()));
    }

    /** Where along x the field of a turn meets its passes: the plane of the tip. */
    private static double plane(Turn turn) {
        return turn.atFarEnd() ? turn.clear().x0() : turn.clear().x1();
    }

    /** Where along x the field of a port meets its pass. */
    private static double plane(PortPlace port, Pass pass, boolean far) {
        if (!port.turns()) {
            return far ? pass.clear().x1() : pass.clear().x0();
        }
        return far ? port.hole().x0() : port.hole().x1();
    }

    private static PortShape port(PortPlace port, Pass pass, boolean far, Fluids fluids, double endLiner) {
        Cuboid hole = port.hole();
        Cuboid clear = pass.clear();
        Axis normal = port.role().normal();
        boolean end = normal == Axis.X;
        double stub = far ? clear.x1() - hole.x1() : hole.x0() - clear.x0();
        PortShape.Kind kind = switch (normal) {
            case X -> PortShape.Kind.END;
            case Y -> PortShape.Kind.SIDE;
            case Z -> PortShape.Kind.BROAD;
        };
        return new PortShape(
                kind,
                section(pass),
                port.role() == Role.LAST_SIDE,
                fluids,
                tidy(pass.height()),
                tidy(hole.size(end ? Axis.Y : Axis.X)),
                tidy(hole.size(kind == PortShape.Kind.BROAD ? Axis.Y : Axis.Z)),
                end ? tidy(hole.y0() - clear.y0()) : 0,
                end ? 0 : tidy(Math.max(0, stub)),
                endLiner);
    }
}
