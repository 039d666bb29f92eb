package hushmaze.drawing.page;

import hushmaze.air.AirState;
import hushmaze.assess.AirComparison;
import hushmaze.assess.BoxFitting;
import hushmaze.assess.Comparison;
import hushmaze.assess.MeasuredNeed;
import hushmaze.assess.PathResult;
import hushmaze.project.PathReadings;
import hushmaze.project.Project;
import hushmaze.project.RoomReadings;
import hushmaze.work.Progress;
import java.util.Optional;

/**
 * What was measured of a path and of its room, held against the assessment. It takes about a second where levels were read, so
 * it is worked out once for a set of pages.
 *
 * @param readings of the path
 * @param room readings of the room's air
 * @param comparison of the levels; null where they lack a round that is needed
 * @param need the same against the target; null without a comparison
 * @param fitting of the box to them; null without a comparison, or with too few bands
 * @param air of the path and of the room; without lines where none was measured
 */
record Measurement(
        PathReadings readings,
        RoomReadings room,
        Comparison comparison,
        MeasuredNeed need,
        BoxFitting fitting,
        AirComparison air) {
    /** Nothing if nothing was measured. */
    static Optional<Measurement> of(Job job) {
        Project project = job.assessment().project();
        PathResult result = job.result();
        PathReadings readings = result.path().readingsOrNone();
        RoomReadings room = project.readingsOrNone();
        if (readings.empty() && room.empty()) {
            return Optional.empty();
        }
        AirComparison air = AirComparison.of(job.assessment(), result, readings, room);
        if (!readings.comparable()) {
            return Optional.of(new Measurement(readings, room, null, null, null, air));
        }
        Comparison comparison =
                Comparison.of(result, readings, AirState.of(project.room()).soundSpeed());
        BoxFitting fitting =
                BoxFitting.of(project, result, comparison, Progress.NONE).orElse(null);
        return Optional.of(
                new Measurement(readings, room, comparison, MeasuredNeed.of(result, comparison), fitting, air));
    }
}
