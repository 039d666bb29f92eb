package hushmaze.assess;

import hushmaze.air.AirState;
import hushmaze.air.PathAir;
import hushmaze.air.PathLosses;
import hushmaze.air.network.BranchLaw;
import hushmaze.air.network.FanCurve;
import hushmaze.air.network.FanLaw;
import hushmaze.air.network.FixedFlow;
import hushmaze.air.network.ResistanceLaw;
import hushmaze.project.Brief;
import hushmaze.project.Drive;
import hushmaze.project.Purpose;
import hushmaze.project.VentPath;
import hushmaze.solid.Solid;
import java.util.function.DoubleUnaryOperator;

/**
 * A path with its box and what moves its air.
 *
 * @param path of the project, with a flow in its brief
 * @param solid of its box
 * @param air its state
 * @param table what the path takes, for charts; null to work it out at every flow
 */
record DrivenPath(VentPath path, Solid solid, AirState air, ResistanceTable table) {
    DrivenPath(VentPath path, Solid solid, AirState air) {
        this(path, solid, air, null);
    }

    /** The same, read from a table. */
    DrivenPath tabled() {
        return new DrivenPath(path, solid, air, new ResistanceTable(this));
    }

    boolean isSupply() {
        return path.purpose() == Purpose.SUPPLY;
    }

    Drive.Kind drive() {
        return path.brief().driveOrUsual();
    }

    /** Whether something moves the air. */
    boolean isDriven() {
        return drive() != Drive.Kind.NOTHING;
    }

    /** The fan at its speed. */
    FanCurve fan() {
        return FanCurve.of(path.brief().drive());
    }

    /** Pressure at the end away from the room, Pa. */
    double outerPressure() {
        if (drive() != Drive.Kind.GIVEN_PRESSURE) {
            return 0;
        }
        return (isSupply() ? 1 : -1) * path.brief().drive().pressure();
    }

    BranchLaw law(Edge edge) {
        return switch (drive()) {
            case GIVEN_FLOW -> new FixedFlow(path.brief().flow());
            case NOTHING, GIVEN_PRESSURE -> new ResistanceLaw(resistance(edge));
            case FAN_CURVE -> new FanLaw(fan(), resistance(edge));
        };
    }

    /** Pressure the path takes, Pa, over the flow in m³/s; straight down to nothing from the least air that is computed. */
    DoubleUnaryOperator resistance(Edge edge) {
        if (table != null) {
            return table.at(edge);
        }
        return flow -> {
            double computed = Math.max(flow, PathLosses.MIN_FLOW);
            double loss = edge.of(losses(computed));
            return flow < PathLosses.MIN_FLOW ? flow / PathLosses.MIN_FLOW * loss : loss;
        };
    }

    PathAir losses(double flow) {
        Brief brief = path.brief();
        return PathLosses.of(solid, brief.opening(), brief.fittings(), flow, air, path.purpose());
    }
}
