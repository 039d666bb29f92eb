package hushmaze.size;

import hushmaze.assess.AskedFlows;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.build.Supply;
import hushmaze.build.split.SeamPlanner;
import hushmaze.material.Sheet;
import hushmaze.project.Box;
import hushmaze.project.Project;
import hushmaze.project.Stock;
import hushmaze.project.VentPath;
import hushmaze.solid.SolidBuilder;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A first box for a brief, within a second or so: of the board, the liner, the layers and the faces that are wished for, the box
 * that {@link BoxSearch} recommends, confirmed by the quick wave and a short sheet search. {@link Sizing} chooses among all of
 * them and confirms by the wave solution. Where there are too few sheets for any box the best one is laid out all the same, and an
 * assessment tells what is missing. The same brief always gives the same box.
 */
public final class FirstLayout {
    /** Steps from a limit to its most relaxed value, equal in ratio. */
    private static final int STEPS = 12;
    /** Halvings within the first step that helps. */
    private static final int HALVINGS = 4;
    /** So many boxes are confirmed by the quick wave at most, and so many looked around. */
    private static final int MOST_QUICK = 16;

    private static final int MOST_SURROUNDED = 8;
    /** Side of a sheet that holds every part, m. */
    private static final double ANY_PART = 10;

    private final Project project;

    /** @param asked may leave flows out that follow from the need */
    public FirstLayout(Project asked) {
        this.project = AskedFlows.settled(asked);
    }

    /**
     * The project with a box in every path; paths that have one keep it.
     *
     * @throws NoBox if there is a path for which no box can be laid out
     */
    public static Project complete(Project project, Progress progress) {
        Project settled = AskedFlows.settled(project);
        List<VentPath> paths = new ArrayList<>();
        for (int i = 0; i < project.paths().size(); i++) {
            VentPath path = project.paths().get(i);
            if (path.box() == null) {
                String name = path.name();
                Proposal proposal = new FirstLayout(settled).propose(i, progress);
                path = path.withBox(proposal.box().orElseThrow(() -> new NoBox(name, project.units(), proposal)));
                settled = settled.withPath(i, settled.paths().get(i).withBox(path.box()));
            }
            paths.add(path);
        }
        return project.withPaths(paths);
    }

    /** A box for one path, or what would have to give. */
    public Proposal propose(int path, Progress progress) {
        Supply left = Assessor.supply(project, path, Methods.QUICK.sheets(), progress);
        BoxSearch search = search(project, path, left, progress);
        Candidate best = best(search);
        if (best != null) {
            return proposal(best.box(), best, search);
        }
        Project plenty = withPlenty();
        BoxSearch anyway = search(plenty, path, Supply.of(plenty.stock()), progress);
        best = best(anyway);
        if (best == null) {
            WhatHelps helps = new WhatHelps(project, path, Freedom::asWished, left, progress);
            return new Proposal(Optional.empty(), false, 0, helps.toFindABox(STEPS, HALVINGS));
        }
        VentPath asked = project.paths().get(path);
        Box whole = best.box().joined(best.box().joinery(), List.of());
        SeamPlanner planner = new SeamPlanner(asked.brief().construction(), project.stock(), project.units());
        Box seamed = whole.joined(
                whole.joinery(), planner.plan(SolidBuilder.build(whole)).seams());
        return proposal(seamed, best, anyway);
    }

    private static Proposal proposal(Box box, Candidate best, BoxSearch search) {
        return new Proposal(
                Optional.of(box),
                best.margin(Level.QUICK) >= 0,
                (int) search.tally().estimated(),
                List.of());
    }

    private static BoxSearch search(Project project, int path, Supply left, Progress progress) {
        Freedom wished = Freedom.asWished(project.paths().get(path).brief());
        return new BoxSearch(project, path, Methods.QUICK, wished, left, progress);
    }

    /** Null if there is none. */
    private static Candidate best(BoxSearch search) {
        search.begin();
        search.sparing(MOST_QUICK, MOST_SURROUNDED);
        return search.settle(List.of(Kind.RECOMMENDED), Level.QUICK).get(Kind.RECOMMENDED);
    }

    /** The project with a sheet for every part, as many as needed. */
    private Project withPlenty() {
        Stock old = project.stock();
        List<Sheet> plenty = List.of(new Sheet("any", ANY_PART, ANY_PART, null, null, "to lay out without sheets"));
        return project.withStock(new Stock(plenty, plenty, old.saw(), old.screw()));
    }
}
