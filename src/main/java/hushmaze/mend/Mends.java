package hushmaze.mend;

import hushmaze.assess.Assessment;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.project.Project;
import hushmaze.quantity.Notice;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * Changes that mend what a notice is about. Each was tried: with it the notice is gone, nothing that was good has become bad, and
 * no other notice stops the box. About sound, where no one change does it, the one that helps most is given, marked as not
 * enough.
 *
 * <p>Sound is judged by the quick wave where the results shown have it, else by the handbook estimate, and by how far the margin
 * rises with the change; the wave solution is not run, so the last word is the assessment's after the change.
 */
public final class Mends {
    /** Most changes offered for one notice. */
    private static final int MOST = 3;
    /** Less than this is not worth an offer, dB. */
    private static final double LEAST_GAIN = 0.3;
    /** Most values of a number tried where each takes the quick wave. */
    private static final int FEW = 4;

    private Mends() {}

    /**
     * What would mend a notice.
     *
     * @param shown results the notice is of
     * @param path the notice is of; the path looked at, for one about the room
     * @return none if nothing that is known does it
     * @throws Progress.Cancelled if the progress says so
     */
    public static List<Mend> of(Assessment shown, int path, Notice notice, Progress progress) {
        List<Ladder> ladders = new Ladders(shown, path, notice).all();
        if (ladders.isEmpty()) {
            return List.of();
        }
        if (Ladders.isAboutSound(notice)) {
            return quieter(shown, path, notice, ladders, progress);
        }
        for (Methods methods : List.of(Methods.ESTIMATE, Methods.QUICK)) {
            Trial trial = new Trial(shown.project(), path, notice, methods, progress);
            if (trial.sees()) {
                return mending(trial, ladders);
            }
        }
        return List.of();
    }

    private static List<Mend> mending(Trial trial, List<Ladder> ladders) {
        List<Mend> mends = new ArrayList<>();
        for (Ladder ladder : ladders) {
            least(trial, ladder).ifPresent(value -> mends.add(ladder.mend(value, true, Double.NaN)));
            if (mends.size() == MOST) {
                break;
            }
        }
        return mends;
    }

    /**
     * The least value of a ladder that mends, if any does: found in strides that double, then between the last that did not and the
     * first that did. It is the least where more of the same goes on mending.
     */
    private static Optional<Double> least(Trial trial, Ladder ladder) {
        int size = ladder.values().size();
        int fails = -1;
        int does = -1;
        for (int stride = 1; does < 0 && fails < size - 1; stride *= 2) {
            int next = Math.min(size - 1, fails + stride);
            if (mends(trial, ladder, next)) {
                does = next;
            } else {
                fails = next;
            }
        }
        while (does >= 0 && does - fails > 1) {
            int middle = (does + fails) / 2;
            if (mends(trial, ladder, middle)) {
                does = middle;
            } else {
                fails = middle;
            }
        }
        return does < 0 ? Optional.empty() : Optional.of(ladder.values().get(does));
    }

    private static boolean mends(Trial trial, Ladder ladder, int number) {
        return trial.mends(ladder.change().apply(ladder.values().get(number)));
    }

    private static List<Mend> quieter(
            Assessment shown, int path, Notice notice, List<Ladder> ladders, Progress progress) {
        PathResult result = shown.paths().get(path);
        boolean quick = result.sound().loss().methods().quick() != null;
        Methods methods = quick ? Methods.QUICK : Methods.ESTIMATE;
        Trial trial = new Trial(shown.project(), path, notice, methods, progress);
        double needed = -result.quiet().margin();
        List<Mend> mends = new ArrayList<>();
        Mend most = null;
        for (Ladder ladder : ladders) {
            int tries = quick
                    ? Math.min(FEW, ladder.values().size())
                    : ladder.values().size();
            for (int i = 0; i < tries; i++) {
                // a few of many are spread over all of them
                double value = ladder.values().get((ladder.values().size() - 1) * (i + 1) / tries);
                UnaryOperator<Project> change = ladder.change().apply(value);
                OptionalDouble gain = trial.gain(change);
                if (gain.isEmpty()) {
                    continue;
                }
                if (gain.getAsDouble() >= needed) {
                    mends.add(ladder.mend(value, true, gain.getAsDouble()));
                    break;
                }
                if (gain.getAsDouble() >= LEAST_GAIN && (most == null || gain.getAsDouble() > most.gain())) {
                    most = ladder.mend(value, false, gain.getAsDouble());
                }
            }
            if (mends.size() == MOST) {
                return mends;
            }
        }
        return mends.isEmpty() && most != null ? List.of(most) : mends;
    }
}
