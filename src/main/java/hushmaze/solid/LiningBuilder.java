package hushmaze.solid;

import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import java.util.ArrayList;
import java.util.List;

/**
 * The lining, every inner face once.
 *
 * <p>Order at the edges: the broad faces are covered first, from board to board; the ends next, over their whole width
 * between boards; the long sides and the baffles last, between the lined ends. A broad face is covered pass by pass; the
 * piece of a pass reaches over the baffle's place to the next pass and is cut out where the baffle stands.
 */
final class LiningBuilder {
    private final Frame frame;
    private final Box box;
    private final Liner liner;
    private final List<PortPlace> ports;
    private final List<LinerPiece> pieces = new ArrayList<>();

    private LiningBuilder(Frame frame, List<PortPlace> ports) {
        this.frame = frame;
        this.box = frame.box();
        this.liner = box.liner();
        this.ports = ports;
    }

    static List<LinerPiece> pieces(Frame frame, List<PortPlace> ports) {
        LiningBuilder builder = new LiningBuilder(frame, ports);
        LinedFaces faces = frame.box().linedFaces();
        for (int ply = 0; ply < faces.broad(); ply++) {
            builder.broad(Role.BACK, ply);
            builder.broad(Role.FRONT, ply);
        }
        for (int ply = 0; ply < faces.walls(); ply++) {
            builder.side(Role.FIRST_SIDE, ply);
            builder.side(Role.LAST_SIDE, ply);
        }
        for (int ply = 0; ply < faces.ends(); ply++) {
            builder.end(Role.NEAR_END, ply);
            builder.end(Role.FAR_END, ply);
        }
        for (int ply = 0; ply < faces.baffles(); ply++) {
            builder.baffles(ply);
        }
        return builder.pieces;
    }

    /** The part of a space that one layer takes along an axis, counted from its low end or from its high one. */
    private Cuboid slab(Cuboid space, Axis axis, boolean low, int ply) {
        double from = ply * liner.thickness();
        double to = from + liner.thickness();
        return low
                ? space.with(axis, space.low(axis) + from, space.low(axis) + to)
                : space.with(axis, space.high(axis) - to, space.high(axis) - from);
    }

    private void broad(Role role, int ply) {
        Cuboid slab = slab(frame.cavity(), Axis.Z, role == Role.BACK, ply);
        for (int pass = 0; pass < frame.passes(); pass++) {
            boolean last = pass == frame.passes() - 1;
            double high = last ? frame.passHigh(pass) : frame.passLow(pass + 1);
            Cuboid bounds = slab.with(Axis.Y, frame.passLow(pass), high);
            List<Cutout> cutouts = new ArrayList<>(Holes.in(bounds, role, ports));
            if (!last) {
                cutouts.add(Holes.cutout(frame.baffle(pass), bounds, Axis.Z));
            }
            pieces.add(new LinerPiece(role, pass, 0, ply, liner, bounds, cutouts));
        }
    }

    private void side(Role role, int ply) {
        Cuboid space = frame.betweenBroadLiners();
        Cuboid between = space.with(Axis.X, box.endLiner(), space.x1() - box.endLiner());
        Cuboid bounds = slab(between, Axis.Y, role == Role.FIRST_SIDE, ply);
        pieces.add(new LinerPiece(role, 0, 0, ply, liner, bounds, Holes.in(bounds, role, ports)));
    }

    /** An end is covered in stretches between the baffles that start there. */
    private void end(Role role, int ply) {
        Cuboid slab = slab(frame.betweenBroadLiners(), Axis.X, role == Role.NEAR_END, ply);
        int first = 0;
        int stretch = 0;
        for (int pass = 0; pass < frame.passes(); pass++) {
            boolean last = pass == frame.passes() - 1;
            boolean baffleStartsHere = !last && frame.turnsAtFarEnd(pass) == (role == Role.NEAR_END);
            if (last || baffleStartsHere) {
                Cuboid bounds = slab.with(Axis.Y, frame.passLow(first), frame.passHigh(pass));
                pieces.add(new LinerPiece(role, stretch++, 0, ply, liner, bounds, Holes.in(bounds, role, ports)));
                first = pass + 1;
            }
        }
    }

    private void baffles(int ply) {
        Cuboid space = frame.betweenBroadLiners();
        double from = ply * liner.thickness();
        double to = from + liner.thickness();
        for (int i = 0; i < frame.passes() - 1; i++) {
            Cuboid baffle = frame.baffle(i);
            double x0 = frame.turnsAtFarEnd(i) ? box.endLiner() : baffle.x0();
            double x1 = frame.turnsAtFarEnd(i) ? baffle.x1() : space.x1() - box.endLiner();
            Cuboid face = space.with(Axis.X, x0, x1);
            Cuboid low = face.with(Axis.Y, baffle.y0() - to, baffle.y0() - from);
            Cuboid high = face.with(Axis.Y, baffle.y1() + from, baffle.y1() + to);
            pieces.add(new LinerPiece(Role.BAFFLE, i, 0, ply, liner, low, List.of()));
            pieces.add(new LinerPiece(Role.BAFFLE, i, 1, ply, liner, high, List.of()));
        }
    }
}
