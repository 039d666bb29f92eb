package hushmaze.size;

import hushmaze.air.AirState;
import hushmaze.air.PathAir;
import hushmaze.assess.AirJudge;
import hushmaze.assess.Assessment;
import hushmaze.assess.BoxFit;
import hushmaze.assess.PathResult;
import hushmaze.assess.SoundJudge;
import hushmaze.project.Box;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.PathCalculator.Quick;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What small errors and changes would do to the box of one path. Every figure is a difference between two boxes that are
 * judged in the same way, by the quick wave without its variants, or by the handbook estimate where the assessment did not run the
 * quick wave; the wave solution is in neither, so the differences are not those of its margin. The quick wave is taken at three
 * frequencies of every third octave instead of five: over 60 random boxes that moves a difference by less than 0.02 dB in nineteen
 * of twenty, by 0.6 dB at most. The rows are worked out at once on all processors.
 *
 * @param method how both boxes of every difference are judged
 * @param rows one for each {@link Change}, in their order
 */
public record Sensitivity(Quick method, List<Row> rows) {
    /**
     * What one change does.
     *
     * @param change that is made
     * @param margin change of the margin at the pessimistic edge, dB; null when the change cannot be made, or when nothing is
     *     left for the path
     * @param likely change of the likely margin, dB; null likewise. Where it goes the other way, the methods disagree.
     * @param pressureDrop change of the pressure drop's high edge at the flow of the brief, Pa; null when it cannot be made
     * @param fits whether the changed box goes into the space; null when it cannot be made
     * @param unable why it cannot be made; null when it can
     * @param detail what is in the way when no box comes out of it; null otherwise
     */
    public record Row(
            Change change,
            Double margin,
            Double likely,
            Double pressureDrop,
            Boolean fits,
            Unable unable,
            String detail) {
        static Row unable(Change change, Unable why, String detail) {
            return new Row(change, null, null, null, null, why, detail);
        }
    }

    public Sensitivity {
        rows = List.copyOf(rows);
    }

    /**
     * The sensitivity of one path's box.
     *
     * @param assessment of the project
     * @param path which of its paths
     */
    public static Sensitivity of(Assessment assessment, int path) {
        PathResult result = assessment.paths().get(path);
        boolean quick = result.sound().loss().methods().quick() != null;
        return of(assessment.project(), path, quick ? Quick.PLAIN : Quick.NONE);
    }

    /**
     * The sensitivity of one path's box.
     *
     * @param project with a flow in every brief, and a box in this path
     * @param path which of its paths
     * @param method how boxes are judged
     */
    static Sensitivity of(Project project, int path, Quick method) {
        Judge judge = new Judge(project, path, method);
        Judged now =
                judge.of(SolidBuilder.build(unseamed(project.paths().get(path).box())), false);
        List<Row> rows = Arrays.stream(Change.values())
                .parallel()
                .map(change -> judge.row(change, now))
                .toList();
        return new Sensitivity(method, rows);
    }

    private static Box unseamed(Box box) {
        return box.joined(box.joinery(), List.of());
    }

    /** The error that costs most of the margin at the pessimistic edge, of those that cost some of the likely one too. */
    public Optional<Row> worstError() {
        return rows.stream()
                .filter(row -> row.change().isError() && isLoss(row.margin()) && isLoss(row.likely()))
                .min(Comparator.comparingDouble(Row::margin));
    }

    private static boolean isLoss(Double margin) {
        return margin != null && margin < 0;
    }

    /** A box as judged: high edge of the pressure drop in Pa. */
    private record Judged(SoundJudge.Margins margins, double pressureDrop, boolean fits) {}

    private static final class Judge {
        private final VentPath path;
        private final int index;
        private final Quick method;
        private final AirState air;
        private final SoundJudge sound;

        Judge(Project project, int index, Quick method) {
            this.path = project.paths().get(index);
            this.index = index;
            this.method = method;
            this.air = AirState.of(project.room());
            this.sound = SoundJudge.ofDifferences(project);
        }

        Row row(Change change, Judged now) {
            ChangedBox changed = new ChangedBox(path.box());
            Optional<Unable> unable = changed.unable(change);
            if (unable.isPresent()) {
                return Row.unable(change, unable.get(), null);
            }
            try {
                Box box = changed.with(change);
                Judged then = of(SolidBuilder.build(box), change == Change.COVER_SLIT);
                return new Row(
                        change,
                        finite(then.margins().low() - now.margins().low()),
                        finite(then.margins().likely() - now.margins().likely()),
                        then.pressureDrop() - now.pressureDrop(),
                        then.fits(),
                        null,
                        null);
            } catch (InvalidValue noBox) {
                return Row.unable(change, Unable.NO_BOX, noBox.getMessage());
            }
        }

        Judged of(Solid solid, boolean slit) {
            PathAir flow = AirJudge.air(path, solid, air);
            SoundJudge.Margins margins = sound.margins(index, solid, flow, method, slit ? Change.SLIT : 0);
            return new Judged(
                    margins,
                    flow.pressureHigh(),
                    BoxFit.fits(solid, path.brief()).ok());
        }

        private static Double finite(double difference) {
            return Double.isFinite(difference) ? difference : null;
        }
    }
}
