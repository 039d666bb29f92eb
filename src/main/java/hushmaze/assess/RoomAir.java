package hushmaze.assess;

import hushmaze.air.AirState;
import hushmaze.air.network.Enlargement;
import hushmaze.air.network.OrificeLaw;
import hushmaze.air.network.RoomNetwork;
import hushmaze.air.network.RoomNetwork.Branch;
import hushmaze.project.Drive;
import hushmaze.project.Project;
import hushmaze.project.Room;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;

/**
 * The air of the room with its door shut: every path, the door's gaps and the leakage as ways between the room and the house or
 * the outdoors, which hold their pressure.
 *
 * @param state whether there is an answer
 * @param pressure in the room over that in the house with the high losses of the paths, Pa; null without an answer
 * @param likely the same with the likely losses, Pa; null without an answer
 * @param fresh air that comes in through paths and gaps with the high losses, m³/s; null without an answer
 * @param flows of the paths in their order; empty without an answer
 * @param missing free area of one more way out (or in) that would keep the room at the limit, m²; zero when it is kept
 * @param remedies openings that would keep it if they were larger; empty when it is kept, or when none would
 */
public record RoomAir(
        State state,
        Double pressure,
        Double likely,
        Double fresh,
        List<PathFlow> flows,
        double missing,
        List<Remedy> remedies) {
    /** Most that the door of a closed room should feel, Pa: a common requirement for heated and cooled houses, as read. */
    public static final double LIMIT = 3;

    /** Flows that differ by less than this share are equal. */
    private static final double SAME_FLOW = 1e-6;

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
        remedies = List.copyOf(remedies);
    }

    /**
     * The air of a room.
     *
     * @param project with a flow in every brief
     * @param solids of the boxes of all paths
     */
    static RoomAir of(Project project, List<Solid> solids, AirState air) {
        Room room = project.room();
        List<DrivenPath> paths = new ArrayList<>();
        for (int i = 0; i < solids.size(); i++) {
            paths.add(new DrivenPath(project.paths().get(i), solids.get(i), air));
        }
        RoomNetworks networks = new RoomNetworks(room, paths, air);
        if (paths.stream().noneMatch(DrivenPath::isDriven) && networks.outside() == 0) {
            return without(State.NOTHING_DRIVES);
        }
        if (!room.leaks() && paths.stream().allMatch(p -> p.drive() == Drive.Kind.GIVEN_FLOW)) {
            return balanced(project, paths);
        }
        return solved(networks);
    }

    /** Whether no air can come in when the briefs ask for these flows, m³/s: it is driven one way only, and cannot go on. */
    boolean isWithoutAir(double supply, double extract) {
        return state == State.SEALED && (supply == 0 || extract == 0);
    }

    private static RoomAir without(State state) {
        return new RoomAir(state, null, null, null, List.of(), 0, List.of());
    }

    /** A tight room in which every flow is given: what is driven in must be driven out. */
    private static RoomAir balanced(Project project, List<DrivenPath> paths) {
        double in = AskedFlows.asked(project, true);
        double out = AskedFlows.asked(project, false);
        if (Math.abs(in - out) > SAME_FLOW * Math.max(in, out)) {
            return without(State.SEALED);
        }
        List<PathFlow> flows = paths.stream().map(RoomAir::asAsked).toList();
        return new RoomAir(State.SOLVED, 0.0, 0.0, in, flows, 0, List.of());
    }

    private static PathFlow asAsked(DrivenPath path) {
        double flow = path.path().brief().flow();
        return new PathFlow(path.drive(), flow, flow, flow, null, null, PathFlows.alone(path));
    }

    private static RoomAir solved(RoomNetworks networks) {
        RoomNetwork.Solution[] solutions = new RoomNetwork.Solution[Edge.values().length];
        for (Edge edge : Edge.values()) {
            RoomNetwork.Outcome outcome = networks.at(edge).solve();
            if (outcome instanceof RoomNetwork.Unsolved unsolved) {
                boolean sealed = unsolved.reason() == RoomNetwork.Reason.SEALED;
                return without(sealed ? State.SEALED : State.NOT_SETTLED);
            }
            solutions[edge.ordinal()] = (RoomNetwork.Solution) outcome;
        }
        RoomNetwork.Solution high = solutions[Edge.HIGH.ordinal()];
        RoomNetwork network = networks.at(Edge.HIGH);
        double pressure = high.pressures().get(RoomNetworks.ROOM);
        List<PathFlow> flows = new ArrayList<>();
        boolean charts = networks.paths().stream().anyMatch(p -> p.drive().hasCurve());
        RoomNetworks tabled = charts ? networks.tabled() : null;
        for (int i = 0; i < networks.paths().size(); i++) {
            flows.add(PathFlows.of(networks, tabled, i, solutions));
        }
        return new RoomAir(
                State.SOLVED,
                pressure,
                solutions[Edge.LIKELY.ordinal()].pressures().get(RoomNetworks.ROOM),
                fresh(network, high),
                flows,
                missing(network, pressure, networks.air()),
                Math.abs(pressure) <= LIMIT ? List.of() : remedies(networks, network));
    }

    /** What comes in through all branches together. */
    private static double fresh(RoomNetwork network, RoomNetwork.Solution solution) {
        double in = 0;
        for (Branch branch : network.branches()) {
            double flow = solution.flows().get(branch.name());
            in += Math.max(0, branch.to().equals(RoomNetworks.ROOM) ? flow : -flow);
        }
        return in;
    }

    /** Free area of what has to go elsewhere when the room is held at the limit. */
    private static double missing(RoomNetwork network, double pressure, AirState air) {
        if (Math.abs(pressure) <= LIMIT) {
            return 0;
        }
        double held = Math.signum(pressure) * LIMIT;
        double net = 0;
        for (Branch branch : network.branches()) {
            boolean out = branch.from().equals(RoomNetworks.ROOM);
            double outer = network.fixed().get(out ? branch.to() : branch.from());
            net += (out ? -1 : 1) * branch.law().flow(out ? held - outer : outer - held);
        }
        return OrificeLaw.area(Math.abs(net), LIMIT, air.density());
    }

    private static List<Remedy> remedies(RoomNetworks networks, RoomNetwork network) {
        List<Remedy> remedies = new ArrayList<>();
        for (int i = 0; i < networks.paths().size(); i++) {
            DrivenPath path = networks.paths().get(i);
            if (!path.isDriven()) {
                double area =
                        PathFlows.narrowest(path.solid(), path.path().brief().opening());
                remedy(
                        network,
                        RoomNetworks.name(i),
                        Remedy.Kind.PATH,
                        path.path().name(),
                        area,
                        remedies);
            }
        }
        if (networks.room().door() != null) {
            double below = networks.room().door().undercutArea();
            double around = networks.room().door().area() - below;
            String branch = below > 0 ? RoomNetworks.UNDERCUT : RoomNetworks.DOOR;
            remedy(network, branch, Remedy.Kind.DOOR, "", below > 0 ? below : around, remedies);
        }
        return remedies;
    }

    private static void remedy(
            RoomNetwork network, String branch, Remedy.Kind kind, String name, double area, List<Remedy> remedies) {
        if (Enlargement.of(network, RoomNetworks.ROOM, branch, LIMIT) instanceof Enlargement.Found found) {
            remedies.add(new Remedy(kind, name, area, area * found.factor()));
        }
    }
}
