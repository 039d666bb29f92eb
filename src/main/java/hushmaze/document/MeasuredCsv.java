package hushmaze.document;

import hushmaze.air.AirState;
import hushmaze.assess.ComparedBand;
import hushmaze.assess.Comparison;
import hushmaze.assess.PathResult;
import hushmaze.project.PathReadings;
import hushmaze.project.Project;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Measured against predicted as comma-separated values, a line for every band of the readings: levels without and with the box,
 * background taken off, their difference with its uncertainty for 95 of 100, and the predicted range with the verdict.
 */
public final class MeasuredCsv {
    private static final List<String> HEAD = List.of(
            "nominalHz",
            "centreHz",
            "fraction",
            "beforeDb",
            "afterDb",
            "reductionDb",
            "uncertaintyDb",
            "overBackgroundDb",
            "atLeast",
            "lowDb",
            "likelyDb",
            "highDb",
            "verdict");

    private MeasuredCsv() {}

    /**
     * The whole file; nothing where the path has no readings both without and with its box.
     *
     * @param project the path is of
     */
    public static Optional<String> of(Project project, PathResult result) {
        PathReadings readings = result.path().readingsOrNone();
        if (!readings.comparable()) {
            return Optional.empty();
        }
        Comparison comparison =
                Comparison.of(result, readings, AirState.of(project.room()).soundSpeed());
        return Optional.of(Csv.line(HEAD)
                + comparison.rows().stream().map(MeasuredCsv::line).collect(Collectors.joining()));
    }

    private static String line(ComparedBand b) {
        return Csv.line(Stream.of(
                        Csv.number(b.band().nominalHz()),
                        Csv.number(b.band().centreHz()),
                        Integer.toString(b.band().fraction()),
                        Csv.number(b.before()),
                        Csv.number(b.after()),
                        Csv.number(b.reduction()),
                        Csv.number(b.uncertainty()),
                        Csv.number(b.overBackground()),
                        b.reduction() == null ? "" : Boolean.toString(b.atLeast()),
                        Csv.number(b.low()),
                        Csv.number(b.likely()),
                        Csv.number(b.high()),
                        b.verdict().name())
                .toList());
    }
}
