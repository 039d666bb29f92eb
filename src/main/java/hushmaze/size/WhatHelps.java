package hushmaze.size;

import hushmaze.assess.Methods;
import hushmaze.build.Supply;
import hushmaze.project.Brief;
import hushmaze.project.Project;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Which limits keep a path from having a box, or one that is quiet enough, each tried with all others as they are.
 *
 * @param project with every flow settled
 * @param path its number
 * @param free what may be chosen among under a brief
 * @param left sheets to cut from
 */
record WhatHelps(Project project, int path, Function<Brief, Freedom> free, Supply left, Progress progress) {
    /**
     * What would let a box be found; nothing where there are some that keep the limits, but no layout of their parts, or
     * where no limit alone helps.
     *
     * @param steps from a limit to its most relaxed value, equal in ratio
     * @param halvings within the first step that helps
     */
    List<Relaxation> toFindABox(int steps, int halvings) {
        Brief brief = project.paths().get(path).brief();
        Feasible light = lightest(brief);
        if (light.any()) {
            return List.of();
        }
        List<Relaxation> more = new ArrayList<>();
        light.moreSheets(true).ifPresent(more::add);
        light.moreSheets(false).ifPresent(more::add);
        if (more.stream().anyMatch(sheets -> sheets.from() == 0)) {
            return more;
        }
        more.addAll(new Relaxer(relaxed -> lightest(relaxed).any(), steps, halvings).relaxations(brief));
        return more;
    }

    /**
     * What would let a box be quiet enough by the estimate.
     *
     * @param like a box whose build and faces are kept
     * @param estimate margin it must have by the estimate, which differs from the best methods, dB
     */
    List<Relaxation> toBeQuiet(Pattern like, double estimate, int steps, int halvings) {
        Build build = like.build();
        Freedom kept = new Freedom(
                List.of(build), build.lined().most(), List.of(like.openingFace()), List.of(like.roomFace()), true);
        return new Relaxer(brief -> isQuiet(brief, kept, estimate), steps, halvings)
                .relaxations(project.paths().get(path).brief());
    }

    private boolean isQuiet(Brief brief, Freedom kept, double estimate) {
        BoxSearch search = new BoxSearch(with(brief), path, Methods.QUICK, kept, left, progress);
        search.beginWithLongest();
        Candidate quietest = search.pool().best(Kind.QUIETEST, Level.ESTIMATE);
        return quietest != null && quietest.margin(Level.ESTIMATE) >= estimate;
    }

    private Project with(Brief brief) {
        return project.withPath(path, project.paths().get(path).withBrief(brief));
    }

    /** Of what takes the least room, mass and sheets: where there is none, there is nothing. */
    private Feasible lightest(Brief brief) {
        return new Feasible(with(brief), path, free.apply(brief).lightest(), left, progress);
    }
}
