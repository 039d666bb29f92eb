package hushmaze.size;

import hushmaze.assess.Methods;
import hushmaze.build.Supply;
import hushmaze.project.Brief;
import hushmaze.project.Project;
import hushmaze.quantity.Unit;
import hushmaze.work.Progress;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Whether some boxes keep the limits on space, air, carrying and sheets; their sound is not looked at. */
final class Feasible {
    /** Lines judged between two looks at whether the work is still wanted. */
    private static final int CHUNK = 64;

    private final Appraiser appraiser;
    private final List<PatternGrid.Line> lines;
    private final Progress progress;

    /**
     * @param project with every flow settled
     * @param path its number
     * @param freedom what may be chosen among
     * @param left sheets to cut from
     */
    Feasible(Project project, int path, Freedom freedom, Supply left, Progress progress) {
        Brief brief = project.paths().get(path).brief();
        this.appraiser = new Appraiser(project, path, Methods.QUICK, left);
        this.lines =
                PatternGrid.ofSome(brief, freedom, new Steps(project.units())).lines();
        this.progress = progress;
    }

    /** Whether any box keeps all of them. */
    boolean any() {
        for (int from = 0; from < lines.size(); from += CHUNK) {
            progress.check(0, "looking for a box");
            List<PatternGrid.Line> some = lines.subList(from, Math.min(lines.size(), from + CHUNK));
            if (some.parallelStream().flatMap(PatternGrid.Line::all).anyMatch(appraiser::keepsLimits)) {
                return true;
            }
        }
        return false;
    }

    /**
     * How much of boards, or of liner, any box takes at the least that keeps all other limits, m² of sheets.
     *
     * @return nothing if there is none, or there are as many sheets
     */
    Optional<Relaxation> moreSheets(boolean boards) {
        progress.check(0, "looking for a box");
        double there = lines.stream()
                .mapToDouble(line -> appraiser.sheetsThere(line.longest().build(), boards))
                .max()
                .orElse(Double.POSITIVE_INFINITY);
        if (Double.isInfinite(there)) {
            return Optional.empty();
        }
        double least = lines.parallelStream()
                .flatMap(PatternGrid.Line::all)
                .map(pattern -> appraiser.sheetsNeeded(pattern, boards))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .min()
                .orElse(0);
        Relaxation.Limit limit = boards ? Relaxation.Limit.BOARD_SHEETS : Relaxation.Limit.LINER_SHEETS;
        return there < least ? Optional.of(new Relaxation(limit, there, least, Unit.SQUARE_METRE)) : Optional.empty();
    }
}
