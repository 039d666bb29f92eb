package hushmaze.assess;

import hushmaze.build.Effort;
import hushmaze.sound.PathCalculator;

/**
 * What an assessment takes the time for. The same project and methods always give the same assessment; a method that was
 * not run leaves its figures out, and a notice says so.
 *
 * @param quick how much of the quick wave, up to a second per box the first time a section or turn is met
 * @param wave whether the wave solution is computed, seconds per path
 * @param sheets how long sheet layouts are searched
 */
public record Methods(PathCalculator.Quick quick, boolean wave, Effort sheets) {
    /** Everything, as for documents. */
    public static final Methods ALL = new Methods(PathCalculator.Quick.VARIANTS, true, Effort.DOCUMENT);
    /** No wave solution, sheets laid out by a few fixed orders, so that one may take more of them. */
    public static final Methods QUICK = new Methods(PathCalculator.Quick.PLAIN, false, Effort.rounds(0));
    /** What follows every edit, in about a millisecond: the handbook estimate alone. */
    public static final Methods ESTIMATE = new Methods(PathCalculator.Quick.NONE, false, Effort.rounds(0));
}
