package hushmaze.mend;

import hushmaze.assess.Assessment;
import hushmaze.project.Mounting;
import hushmaze.project.Project;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.Steps;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;

/** Screws and cleats of a box that hangs. */
final class FixingLadders {
    /** Most steps tried; of rows and cleats each has 10 mm or 1/2 in. */
    private static final int STEPS = 60;

    private final Assessment shown;
    private final int path;
    private final Notice notice;
    private final double step;

    FixingLadders(Assessment shown, int path, Notice notice) {
        this.shown = shown;
        this.path = path;
        this.notice = notice;
        this.step = new Steps(shown.project().units()).size();
    }

    /** In the order they are offered. */
    List<Ladder> all() {
        Mounting mounting =
                shown.paths().get(path).path().brief().construction().mounting();
        if (mounting == null) {
            return List.of();
        }
        return switch (notice.kind()) {
            case FIXING_OVERLOADED, SCREWS_SHALLOW, MORE_SCREWS_DO, SCREWS_EXCEED_STUDS, NO_SCREWS_DO ->
                List.of(
                        new Ladder(
                                Mend.Kind.SCREWS,
                                Unit.NUMBER,
                                DoubleStream.iterate(mounting.screwsPerRow() + 1, n -> n + 1)
                                        .limit(Mounting.MOST_SCREWS - mounting.screwsPerRow())
                                        .boxed()
                                        .toList(),
                                v -> mounted(mounting.withScrews((int) v))),
                        rows(mounting, 1),
                        mounts(Mend.Kind.THREAD, mounting.thread(), 1, mounting::withThread));
            case SCREWS_MISS_STUDS, SCREWS_MAY_MISS_STUDS, LONGER_CLEAT ->
                mounting.cleatLength() == null
                        ? List.of()
                        : List.of(mounts(Mend.Kind.CLEAT_LENGTH, mounting.cleatLength(), 1, mounting::withCleatLength));
            case ROWS_BEYOND_BOX ->
                List.of(mounts(Mend.Kind.ROW_DISTANCE, notice.limit() + step, -1, mounting::withRowDistance));
            case CLEAT_ACROSS_PORT, CLEAT_BEYOND_BOX, ROW_AT_BOARD, HOOK_TIPS, CENTRE_BEYOND_ROWS ->
                List.of(rows(mounting, 1), rows(mounting, -1));
            default -> List.of();
        };
    }

    private Ladder rows(Mounting mounting, int direction) {
        return mounts(Mend.Kind.ROW_DISTANCE, mounting.rowDistance(), direction, mounting::withRowDistance);
    }

    private Ladder mounts(Mend.Kind kind, double now, int direction, DoubleFunction<Mounting> mounts) {
        double by = kind == Mend.Kind.THREAD ? step : (shown.project().units() == UnitSystem.INCH ? 4 : 2) * step;
        List<Double> values = Ladder.steps(now, by, direction, STEPS);
        return new Ladder(kind, Unit.MILLIMETRE, values, v -> mounted(mounts.apply(v)));
    }

    private UnaryOperator<Project> mounted(Mounting other) {
        return Ladder.ofBrief(path, b -> b.withConstruction(b.construction().mounted(other)));
    }
}
