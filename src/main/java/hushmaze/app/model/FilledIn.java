package hushmaze.app.model;

import hushmaze.air.need.RoomNeed;
import hushmaze.assess.AskedFlows;
import hushmaze.project.Project;
import hushmaze.project.Room;
import hushmaze.quantity.InvalidValue;

/** Figures that follow from what goes on in the room, for where they have to be written down. */
final class FilledIn {
    private static final Field FLOW = Field.of("path.brief.flow");
    private static final Field CO2 = Field.of("room.co2PerPerson");
    private static final Field HEAT = Field.of("room.heatGain");

    /** A tenth of a litre a second, m³/s. */
    private static final double FLOW_STEP = 1e-4;
    /** m³/s a person. */
    private static final double CO2_STEP = 1e-7;

    private static final double USUAL_FLOW = 0.02;

    private FilledIn() {}

    /**
     * The project with every figure that was left to the use of the room written down, rounded.
     *
     * @throws InvalidValue if a flow does not follow
     */
    static Project of(Project project) {
        Room room = project.room();
        Project settled = AskedFlows.settled(project);
        Project full = project;
        for (int i = 0; i < project.paths().size(); i++) {
            if (FLOW.get(project, i) == null) {
                full = FLOW.with(full, i, rounded(settled.paths().get(i).brief().flow(), FLOW_STEP));
            }
        }
        if (room.co2PerPerson() == null) {
            full = CO2.with(full, 0, rounded(RoomNeed.co2PerPerson(room), CO2_STEP));
        }
        return room.heatGain() == null ? HEAT.with(full, 0, Math.rint(RoomNeed.heat(room))) : full;
    }

    /** Flow of a path, given or following from the need, and a usual one if it does not follow; m³/s. */
    static double flow(Project project, int path) {
        try {
            return (Double) FLOW.get(of(project), path);
        } catch (InvalidValue e) {
            return USUAL_FLOW;
        }
    }

    private static double rounded(double value, double step) {
        // by the number of steps, so that no digit of 0.1 + 0.2 is left over; never down to nothing
        return Math.max(1, Math.rint(value / step)) / Math.rint(1 / step);
    }
}
