package hushmaze.assess;

import hushmaze.air.AirState;
import hushmaze.air.PathLosses;
import hushmaze.air.network.BranchLaw;
import hushmaze.air.network.FixedFlow;
import hushmaze.air.network.OrificeLaw;
import hushmaze.air.network.ResistanceLaw;
import hushmaze.air.network.RoomNetwork;
import hushmaze.project.DoorLeak;
import hushmaze.project.Opening;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.VentPath;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * The air of the room with its door shut: every path and the door's gaps as ways between the room and what lies around it,
 * which holds its pressure.
 *
 * <p>A path with a fan of its own, or to ductwork, delivers the flow of its brief whatever the pressure in the room; all other
 * paths carry what the pressure drives through them.
 *
 * @param state whether there is an answer
 * @param pressure in the room over that around it with the high losses of the paths, Pa; null without an answer
 * @param likely the same with the likely losses, Pa; null without an answer
 * @param flows of the paths in their order with the high losses, in the sense of their purpose, m³/s; empty without an answer
 * @param missing free area of one more way out (or in) that would keep the room at the limit, m²; zero when it is kept
 */
public record RoomAir(State state, Double pressure, Double likely, List<Double> flows, double missing) {
    /** Most that the door of a closed room should feel, Pa: a common requirement for heated and cooled houses, as read. */
    public static final double LIMIT = 3;

    /** Flows that differ by less than this share are equal. */
    private static final double SAME_FLOW = 1e-6;

    private static final String ROOM = "room";
    private static final String AROUND = "around";

    /** Whether there is an answer. */
    public enum State {
        SOLVED,
        /** No path has a fan or ductwork behind it. */
        NOTHING_DRIVES,
        /** Air is driven in or out, and no way answers to the pressure. */
        SEALED,
        /** The steps to the pressure did not settle. */
        NOT_SETTLED
    }

    public RoomAir {
        flows = List.copyOf(flows);
    }

    static RoomAir of(Project project, List<PathResult> paths, AirState air) {
        if (project.paths().stream().noneMatch(RoomAir::isDriven)) {
            return without(State.NOTHING_DRIVES);
        }
        if (project.room().door() == null && project.paths().stream().allMatch(RoomAir::isDriven)) {
            return balanced(project);
        }
        RoomNetwork lossy = network(project, paths, air, true);
        RoomNetwork.Outcome high = lossy.solve();
        RoomNetwork.Outcome usual = network(project, paths, air, false).solve();
        if (high instanceof RoomNetwork.Solution most && usual instanceof RoomNetwork.Solution likely) {
            double pressure = most.pressures().get(ROOM);
            return new RoomAir(
                    State.SOLVED,
                    pressure,
                    likely.pressures().get(ROOM),
                    flows(paths.size(), most),
                    missing(lossy, pressure, air));
        }
        boolean sealed =
                high instanceof RoomNetwork.Unsolved unsolved && unsolved.reason() == RoomNetwork.Reason.SEALED;
        return without(sealed ? State.SEALED : State.NOT_SETTLED);
    }

    private static RoomAir without(State state) {
        return new RoomAir(state, null, null, List.of(), 0);
    }

    /** A tight room: what is driven in must be driven out. */
    private static RoomAir balanced(Project project) {
        double in = wanted(project, true);
        double out = wanted(project, false);
        if (Math.abs(in - out) > SAME_FLOW * Math.max(in, out)) {
            return without(State.SEALED);
        }
        List<Double> flows = project.paths().stream().map(p -> p.brief().flow()).toList();
        return new RoomAir(State.SOLVED, 0.0, 0.0, flows, 0);
    }

    /** Air that the briefs of all supply paths ask for, or of all others, m³/s. */
    static double wanted(Project project, boolean supply) {
        return project.paths().stream()
                .filter(p -> (p.purpose() == Purpose.SUPPLY) == supply)
                .mapToDouble(p -> p.brief().flow())
                .sum();
    }

    private static boolean isDriven(VentPath path) {
        return path.brief().fan() != null || path.brief().opening().beyond() == Opening.Beyond.DUCTWORK;
    }

    private static RoomNetwork network(Project project, List<PathResult> paths, AirState air, boolean high) {
        List<RoomNetwork.Branch> branches = new ArrayList<>();
        for (int i = 0; i < paths.size(); i++) {
            VentPath path = project.paths().get(i);
            boolean in = path.purpose() == Purpose.SUPPLY;
            BranchLaw law = isDriven(path)
                    ? new FixedFlow(path.brief().flow())
                    : new ResistanceLaw(resistance(path, paths.get(i).solid(), air, high));
            branches.add(new RoomNetwork.Branch(String.valueOf(i), in ? AROUND : ROOM, in ? ROOM : AROUND, law));
        }
        DoorLeak door = project.room().door();
        if (door != null) {
            branches.add(new RoomNetwork.Branch("door", ROOM, AROUND, new OrificeLaw(door.area(), air.density())));
        }
        return new RoomNetwork(Map.of(AROUND, 0.0), List.of(ROOM), branches);
    }

    private static DoubleUnaryOperator resistance(VentPath path, Solid solid, AirState air, boolean high) {
        return flow -> {
            if (flow < PathLosses.MIN_FLOW) {
                // straight down to nothing from the least air that is computed
                return flow / PathLosses.MIN_FLOW * loss(path, solid, PathLosses.MIN_FLOW, air, high);
            }
            return loss(path, solid, flow, air, high);
        };
    }

    private static double loss(VentPath path, Solid solid, double flow, AirState air, boolean high) {
        var losses = PathLosses.of(solid, path.brief().opening(), flow, air, path.purpose());
        return high ? losses.pressureHigh() : losses.pressure();
    }

    private static List<Double> flows(int paths, RoomNetwork.Solution solution) {
        List<Double> flows = new ArrayList<>();
        for (int i = 0; i < paths; i++) {
            flows.add(solution.flows().get(String.valueOf(i)));
        }
        return flows;
    }

    /** Free area of what has to go elsewhere when the room is held at the limit. */
    private static double missing(RoomNetwork network, double pressure, AirState air) {
        if (Math.abs(pressure) <= LIMIT) {
            return 0;
        }
        double held = Math.signum(pressure) * LIMIT;
        double net = 0;
        for (RoomNetwork.Branch branch : network.branches()) {
            boolean out = branch.from().equals(ROOM);
            net += (out ? -1 : 1) * branch.law().flow(out ? held : -held);
        }
        return OrificeLaw.area(Math.abs(net), LIMIT, air.density());
    }
}
