package hushmaze.size;

import hushmaze.air.AirState;
import hushmaze.air.PathAir;
import hushmaze.assess.AirJudge;
import hushmaze.assess.AskedFlows;
import hushmaze.assess.SoundJudge;
import hushmaze.build.split.Obstacle;
import hushmaze.build.split.SeamPlan;
import hushmaze.build.split.SeamPlanner;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Project;
import hushmaze.project.Seam;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.PathCalculator.Quick;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Proposes a box for a brief by fixed rules: every box of {@link BoxGrid} that keeps the limits on pressure drop (high
 * edge), velocities, mass and doorway, with the seams it needs for that, is judged for sound by the estimate and ranked:
 * those that meet the target by their mass, of alike ones those with fewer seams, then the others by their margin. A box with
 * a part that no sheet holds comes after all others. The first few are confirmed by the quick wave: the first that
 * meets the target is taken, else the one with the most margin. The same brief always gives the same box.
 */
public final class LayoutRules {
    /** Steps from a limit to its most relaxed value, equal in ratio. */
    private static final int STEPS = 12;
    /** Halvings within the first step that helps. */
    private static final int HALVINGS = 4;
    /** So many boxes are confirmed at most. */
    private static final int CONFIRMED = 4;
    /** Masses within this ratio are alike: then fewer joints decide. */
    private static final double SAME_MASS = 1.05;
    /** Margins closer than this are alike, dB. */
    private static final double SAME_MARGIN = 0.1;

    private final Project project;
    private final AirState air;
    private final SoundJudge sound;

    /** @param asked may leave flows out that follow from the need */
    public LayoutRules(Project asked) {
        this.project = AskedFlows.settled(asked);
        this.air = AirState.of(project.room());
        this.sound = new SoundJudge(project);
    }

    /**
     * The project with a box in every path; paths that have one keep it.
     *
     * @throws NoBox if there is a path for which no box can be laid out
     */
    public static Project complete(Project project, Progress progress) {
        LayoutRules rules = new LayoutRules(project);
        List<VentPath> paths = new ArrayList<>();
        for (int i = 0; i < project.paths().size(); i++) {
            VentPath path = project.paths().get(i);
            if (path.box() == null) {
                String name = path.name();
                Proposal proposal = rules.propose(i, progress);
                path = path.withBox(proposal.box().orElseThrow(() -> new NoBox(name, project.units(), proposal)));
            }
            paths.add(path);
        }
        return project.withPaths(paths);
    }

    /** A box for one path, or what would have to give. */
    public Proposal propose(int path, Progress progress) {
        VentPath asked = project.paths().get(path);
        List<Candidate> candidates = candidates(asked, asked.brief(), Integer.MAX_VALUE, progress);
        if (candidates.isEmpty()) {
            return new Proposal(Optional.empty(), false, 0, relaxations(asked, progress));
        }
        List<Candidate> ranked = ranked(path, candidates, progress);
        Candidate best = null;
        double bestMargin = 0;
        for (int i = 0; i < Math.min(CONFIRMED, ranked.size()) && !(best != null && bestMargin >= 0); i++) {
            if (best != null && best.onSheets() && !ranked.get(i).onSheets()) {
                break;
            }
            progress.check((double) i / CONFIRMED, "confirming boxes");
            double margin =
                    sound.margin(path, ranked.get(i).solid(), ranked.get(i).flow(), Quick.PLAIN);
            if (best == null || margin > bestMargin) {
                best = ranked.get(i);
                bestMargin = margin;
            }
        }
        return new Proposal(Optional.of(best.seamed()), bestMargin >= 0, candidates.size(), List.of());
    }

    /** Those that are quiet enough by the estimate first, the lightest before; the others by their margin. */
    private List<Candidate> ranked(int path, List<Candidate> candidates, Progress progress) {
        List<Ranked> all = new ArrayList<>();
        for (int i = 0; i < candidates.size(); i++) {
            progress.check((double) i / candidates.size(), "judging boxes");
            Candidate candidate = candidates.get(i);
            all.add(new Ranked(candidate, sound.margin(path, candidate.solid(), candidate.flow(), Quick.NONE)));
        }
        all.sort(LayoutRules::compare);
        return all.stream().map(Ranked::candidate).toList();
    }

    private record Ranked(Candidate candidate, double margin) {}

    private static int compare(Ranked a, Ranked b) {
        if (a.candidate().onSheets() != b.candidate().onSheets()) {
            return a.candidate().onSheets() ? -1 : 1;
        }
        boolean quietA = a.margin() >= 0;
        boolean quietB = b.margin() >= 0;
        if (quietA != quietB) {
            return quietA ? -1 : 1;
        }
        double steps = quietA ? 0 : Math.floor(b.margin() / SAME_MARGIN) - Math.floor(a.margin() / SAME_MARGIN);
        if (steps != 0) {
            return (int) Math.signum(steps);
        }
        Candidate first = a.candidate();
        Candidate second = b.candidate();
        int alike = Double.compare(massStep(first), massStep(second));
        int joints = alike != 0 ? alike : first.seams().size() - second.seams().size();
        return joints != 0 ? joints : Double.compare(first.mass(), second.mass());
    }

    private static double massStep(Candidate candidate) {
        return Math.floor(Math.log(candidate.mass()) / Math.log(SAME_MASS));
    }

    /**
     * @param box in one piece
     * @param seams that it needs
     * @param onSheets whether every part of it goes on a sheet with these
     */
    private record Candidate(Box box, Solid solid, PathAir flow, double mass, List<Seam> seams, boolean onSheets) {
        Box seamed() {
            return box.joined(box.joinery(), seams);
        }
    }

    /** Boxes of the grid that keep every limit but the sound; no more than asked for. */
    private List<Candidate> candidates(VentPath path, Brief brief, int most, Progress progress) {
        VentPath asked = path.withBrief(brief).withBox(null);
        List<Candidate> kept = new ArrayList<>();
        SeamPlanner planner = new SeamPlanner(brief.construction(), project.stock(), project.units());
        for (Box box : new BoxGrid(brief, project.units()).boxes()) {
            progress.check(0, "laying out boxes");
            if (kept.size() >= most) {
                break;
            }
            Optional<Solid> solid = solid(box);
            if (solid.isEmpty()) {
                continue;
            }
            PathAir flow = AirJudge.air(asked, solid.get(), air);
            if (AirJudge.verdict(brief, flow).ok()) {
                SeamPlan plan = planner.plan(solid.get());
                if (plan.obstacles().stream().allMatch(Obstacle::ofSheets)) {
                    double mass = solid.get().mass();
                    boolean onSheets = plan.obstacles().isEmpty();
                    kept.add(new Candidate(box, solid.get(), flow, mass, plan.seams(), onSheets));
                }
            }
        }
        return kept;
    }

    private static Optional<Solid> solid(Box box) {
        try {
            return Optional.of(SolidBuilder.build(box));
        } catch (InvalidValue portsOverlap) {
            return Optional.empty();
        }
    }

    private List<Relaxation> relaxations(VentPath path, Progress progress) {
        Relaxer relaxer =
                new Relaxer(brief -> !candidates(path, brief, 1, progress).isEmpty(), STEPS, HALVINGS);
        // A larger opening asks for larger boxes, which takes long to try and helps rarely: the search tries that.
        List<Relaxation.Limit> limits = new ArrayList<>(Relaxation.Limit.single());
        limits.remove(Relaxation.Limit.OPENING);
        return relaxer.relaxations(path.brief(), limits);
    }
}
