package hushmaze.assess;

import hushmaze.build.Effort;

/**
 * What an assessment takes the time for. The same project and methods always give the same assessment.
 *
 * @param wave whether the wave solution is computed, seconds per path; without it its figures are missing
 * @param sheets how long sheet layouts are searched
 */
public record Methods(boolean wave, Effort sheets) {
    /** Everything, as for documents. */
    public static final Methods ALL = new Methods(true, Effort.DOCUMENT);
    /** What follows every edit: no wave solution, sheets laid out by a few fixed orders, so that one may take more of them. */
    public static final Methods QUICK = new Methods(false, Effort.rounds(0));
}
