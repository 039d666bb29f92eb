package hushmaze.app.solid;

import hushmaze.app.solid.MeshDraft.Spot;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.Turn;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The way of the air through the box as a bar with a point at the end. */
final class AirWay {
    private static final double HALF = 0.004;
    private static final double OUTSIDE = 0.09;
    private static final double POINT = 0.045;
    private static final double POINT_HALF = 0.016;

    private AirWay() {}

    /** @param intoRoom whether the air runs from the opening to the room */
    static MeshDraft mesh(Solid solid, boolean intoRoom) {
        List<Spot> way = way(solid);
        if (!intoRoom) {
            Collections.reverse(way);
        }
        MeshDraft draft = new MeshDraft();
        for (int i = 1; i < way.size(); i++) {
            draft.block(around(way.get(i - 1), way.get(i)));
        }
        point(draft, way.get(way.size() - 2), way.get(way.size() - 1));
        return draft;
    }

    private static List<Spot> way(Solid solid) {
        List<Pass> passes = solid.passes();
        List<Spot> way = new ArrayList<>(port(solid.openingPort(), passes.get(0)));
        for (Turn turn : solid.turns()) {
            double x = turn.clear().centre(Axis.X);
            way.add(in(passes.get(turn.number()), x));
            way.add(in(passes.get(turn.number() + 1), x));
        }
        List<Spot> end = new ArrayList<>(port(solid.roomPort(), passes.get(passes.size() - 1)));
        Collections.reverse(end);
        way.addAll(end);
        return way;
    }

    private static Spot in(Pass pass, double x) {
        return new Spot(x, pass.clear().centre(Axis.Y), pass.clear().centre(Axis.Z));
    }

    /** From outside through the middle of the port to the middle of its pass. */
    private static List<Spot> port(PortPlace port, Pass pass) {
        Cuboid hole = port.hole();
        Spot middle = new Spot(hole.centre(Axis.X), hole.centre(Axis.Y), hole.centre(Axis.Z));
        Spot out = outward(port.role()).times(OUTSIDE);
        double x = port.role().normal() == Axis.X ? pass.clear().centre(Axis.X) : middle.x();
        return List.of(middle.plus(out), middle, in(pass, x));
    }

    /** Out of the box through one of its walls; a baffle has no outside. */
    static Spot outward(Role role) {
        return switch (role) {
            case BACK -> new Spot(0, 0, -1);
            case FRONT -> new Spot(0, 0, 1);
            case FIRST_SIDE -> new Spot(0, -1, 0);
            case LAST_SIDE -> new Spot(0, 1, 0);
            case NEAR_END -> new Spot(-1, 0, 0);
            case FAR_END -> new Spot(1, 0, 0);
            case BAFFLE -> new Spot(0, 0, 0);
        };
    }

    private static Cuboid around(Spot a, Spot b) {
        return new Cuboid(
                Math.min(a.x(), b.x()) - HALF,
                Math.min(a.y(), b.y()) - HALF,
                Math.min(a.z(), b.z()) - HALF,
                Math.max(a.x(), b.x()) + HALF,
                Math.max(a.y(), b.y()) + HALF,
                Math.max(a.z(), b.z()) + HALF);
    }

    private static void point(MeshDraft draft, Spot before, Spot end) {
        Spot along = end.plus(before.times(-1));
        double length = Math.sqrt(along.x() * along.x() + along.y() * along.y() + along.z() * along.z());
        Spot d = along.times(1 / length);
        // two directions across an axis-parallel one: its components moved round
        Spot p = new Spot(d.y(), d.z(), d.x()).times(POINT_HALF);
        Spot q = new Spot(d.z(), d.x(), d.y()).times(POINT_HALF);
        Spot tip = end.plus(d.times(POINT));
        Spot[] foot = {
            end.plus(p).plus(q),
            end.plus(p).plus(q.times(-1)),
            end.plus(p.times(-1)).plus(q.times(-1)),
            end.plus(p.times(-1)).plus(q)
        };
        for (int i = 0; i < 4; i++) {
            Spot a = foot[i];
            Spot b = foot[(i + 1) % 4];
            draft.triangle(a, b, tip, a.plus(b).times(0.5).plus(end.times(-1)));
        }
        draft.quad(foot[0], foot[1], foot[2], foot[3], d.times(-1));
    }
}
