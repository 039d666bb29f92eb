package hushmaze.solid;

import hushmaze.material.Liner;
import hushmaze.project.Box;
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
        if (builder.box.linedFaces().broad()) {
            builder.broad(Role.BACK);
            builder.broad(Role.FRONT);
        }
        if (builder.box.linedFaces().walls()) {
            builder.side(Role.FIRST_SIDE);
            builder.side(Role.LAST_SIDE);
        }
        if (builder.box.linedFaces().ends()) {
            builder.end(Role.NEAR_END);
            builder.end(Role.FAR_END);
        }
        if (builder.box.linedFaces().baffles()) {
            builder.baffles();
        }
        return builder.pieces;
    }

    private void broad(Role role) {
        Cuboid cavity = frame.cavity();
        double t = liner.thickness();
        Cuboid slab = role == Role.BACK ? cavity.with(Axis.Z, 0, t) : cavity.with(Axis.Z, cavity.z1() - t, cavity.z1());
        for (int pass = 0; pass < frame.passes(); pass++) {
            boolean last = pass == frame.passes() - 1;
            double high = last ? frame.passHigh(pass) : frame.passLow(pass + 1);
            Cuboid bounds = slab.with(Axis.Y, frame.passLow(pass), high);
            List<Cutout> cutouts = new ArrayList<>(Holes.in(bounds, role, ports));
            if (!last) {
                cutouts.add(Holes.cutout(frame.baffle(pass), bounds, Axis.Z));
            }
            pieces.add(new LinerPiece(role, pass, 0, liner, bounds, cutouts));
        }
    }

    private void side(Role role) {
        Cuboid space = frame.betweenBroadLiners();
        double t = liner.thickness();
        Cuboid bounds = space.with(Axis.X, box.endLiner(), space.x1() - box.endLiner());
        bounds = role == Role.FIRST_SIDE ? bounds.with(Axis.Y, 0, t) : bounds.with(Axis.Y, space.y1() - t, space.y1());
        pieces.add(new LinerPiece(role, 0, 0, liner, bounds, Holes.in(bounds, role, ports)));
    }

    /** An end is covered in stretches between the baffles that start there. */
    private void end(Role role) {
        Cuboid space = frame.betweenBroadLiners();
        double t = liner.thickness();
        Cuboid slab = role == Role.NEAR_END ? space.with(Axis.X, 0, t) : space.with(Axis.X, space.x1() - t, space.x1());
        int first = 0;
        int stretch = 0;
        for (int pass = 0; pass < frame.passes(); pass++) {
            boolean last = pass == frame.passes() - 1;
            boolean baffleStartsHere = !last && frame.turnsAtFarEnd(pass) == (role == Role.NEAR_END);
            if (last || baffleStartsHere) {
                Cuboid bounds = slab.with(Axis.Y, frame.passLow(first), frame.passHigh(pass));
                pieces.add(new LinerPiece(role, stretch++, 0, liner, bounds, Holes.in(bounds, role, ports)));
                first = pass + 1;
            }
        }
    }

    private void baffles() {
        Cuboid space = frame.betweenBroadLiners();
        double t = liner.thickness();
        for (int i = 0; i < frame.passes() - 1; i++) {
            Cuboid baffle = frame.baffle(i);
            double x0 = frame.turnsAtFarEnd(i) ? box.endLiner() : baffle.x0();
            double x1 = frame.turnsAtFarEnd(i) ? baffle.x1() : space.x1() - box.endLiner();
            Cuboid face = space.with(Axis.X, x0, x1);
            Cuboid low = face.with(Axis.Y, baffle.y0() - t, baffle.y0());
            Cuboid high = face.with(Axis.Y, baffle.y1(), baffle.y1() + t);
            pieces.add(new LinerPiece(Role.BAFFLE, i, 0, liner, low, List.of()));
            pieces.add(new LinerPiece(Role.BAFFLE, i, 1, liner, high, List.of()));
        }
    }
}
