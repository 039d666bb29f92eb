package hushmaze.assess;

import hushmaze.air.network.FanCurve;
import hushmaze.air.network.RoomNetwork;
import hushmaze.project.Drive;
import hushmaze.project.Opening;
import hushmaze.solid.Pass;
import hushmaze.solid.Solid;
import hushmaze.solid.Turn;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Works out what the paths carry, how their fans stand and what a chart of drive and path shows. */
final class PathFlows {
    /** Flows of a chart. */
    private static final int CHART_POINTS = 16;
    /** A chart without a fan goes so far beyond the largest flow of the path. */
    private static final double CHART_BEYOND = 1.5;

    private final RoomNetworks networks;
    private final int index;
    private final DrivenPath path;

    private PathFlows(RoomNetworks networks, int index) {
        this.networks = networks;
        this.index = index;
        this.path = networks.paths().get(index);
    }

    /** What a path carries; solutions by edge, tabled networks for the chart (null without a drive with a curve). */
    static PathFlow of(RoomNetworks networks, RoomNetworks tabled, int index, RoomNetwork.Solution... solutions) {
        PathFlows one = new PathFlows(networks, index);
        String name = RoomNetworks.name(index);
        double least = solutions[Edge.HIGH.ordinal()].flows().get(name);
        double likely = solutions[Edge.LIKELY.ordinal()].flows().get(name);
        double most = solutions[Edge.LOW.ordinal()].flows().get(name);
        boolean fan = one.path.drive() == Drive.Kind.FAN_CURVE;
        return new PathFlow(
                one.path.drive(),
                least,
                likely,
                most,
                fan ? state(one.path.fan(), least, most) : null,
                fan ? one.speed() : null,
                one.path.drive().hasCurve() ? new PathFlows(tabled, index).chart(most) : alone(one.path));
    }

    private static PathFlow.FanState state(FanCurve fan, double least, double most) {
        if (least < fan.leastFlow() || least <= 0) {
            return PathFlow.FanState.TOO_WEAK;
        }
        if (most > fan.largestFlow()) {
            return PathFlow.FanState.OFF_CURVE;
        }
        return least < fan.summitFlow() ? PathFlow.FanState.BEFORE_SUMMIT : PathFlow.FanState.STEADY;
    }

    /** Pressure that the path and the room together take when a flow goes through the path, Pa; NaN if the room is sealed. */
    private double system(double flow, Edge edge) {
        if (!(networks.at(edge, index, flow).solve() instanceof RoomNetwork.Solution solution)) {
            return Double.NaN;
        }
        double against = solution.pressures().get(RoomNetworks.ROOM) - networks.around(path);
        return through(path, flow, edge) + (path.isSupply() ? against : -against);
    }

    private List<PathFlow.DrivePoint> chart(double most) {
        boolean fan = path.drive() == Drive.Kind.FAN_CURVE;
        double end = fan ? path.fan().largestFlow() : CHART_BEYOND * most;
        List<PathFlow.DrivePoint> points = new ArrayList<>();
        for (int i = 0; i <= CHART_POINTS; i++) {
            double flow = end * i / CHART_POINTS;
            double low = system(flow, Edge.LOW);
            double likely = system(flow, Edge.LIKELY);
            double high = system(flow, Edge.HIGH);
            if (Double.isNaN(low + likely + high)) {
                return List.of();
            }
            points.add(new PathFlow.DrivePoint(flow, drive(flow), low, likely, high));
        }
        return points;
    }

    /** What a path takes by itself, from nothing to beyond the flow of its brief. */
    static List<PathFlow.DrivePoint> alone(DrivenPath path) {
        double end = CHART_BEYOND * path.path().brief().flow();
        List<PathFlow.DrivePoint> points = new ArrayList<>();
        for (int i = 0; i <= CHART_POINTS; i++) {
            double flow = end * i / CHART_POINTS;
            points.add(new PathFlow.DrivePoint(
                    flow,
                    null,
                    through(path, flow, Edge.LOW),
                    through(path, flow, Edge.LIKELY),
                    through(path, flow, Edge.HIGH)));
        }
        return points;
    }

    private static double through(DrivenPath path, double flow, Edge edge) {
        return flow == 0 ? 0 : path.resistance(edge).applyAsDouble(flow);
    }

    private Double drive(double flow) {
        if (path.drive() == Drive.Kind.GIVEN_PRESSURE) {
            return path.path().brief().drive().pressure();
        }
        FanCurve fan = path.fan();
        return flow < fan.leastFlow() ? null : Double.valueOf(fan.pressure(Math.min(flow, fan.largestFlow())));
    }

    /** The speed at which the fan brings the asked flow against the high losses; null if there is none. */
    private Double speed() {
        double asked = path.path().brief().flow();
        double taken = system(asked, Edge.HIGH);
        if (Double.isNaN(taken)) {
            return null;
        }
        OptionalDouble speed = new FanCurve(path.path().brief().drive().fan()).speedFor(asked, taken);
        return speed.isPresent() ? Double.valueOf(speed.getAsDouble()) : null;
    }

    /** Narrowest clear area on the way through a box, m². */
    static double narrowest(Solid solid, Opening opening) {
        double area = Math.min(
                opening.area(),
                Math.min(solid.openingPort().area(), solid.roomPort().area()));
        for (Pass pass : solid.passes()) {
            area = Math.min(area, pass.area());
        }
        for (Turn turn : solid.turns()) {
            area = Math.min(area, turn.area());
        }
        return area;
    }
}
