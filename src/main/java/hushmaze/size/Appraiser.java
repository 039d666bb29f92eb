package hushmaze.size;

import hushmaze.air.AirState;
import hushmaze.air.PathAir;
import hushmaze.assess.AirJudge;
import hushmaze.assess.Assessor;
import hushmaze.assess.BoxFit;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.assess.SoundJudge;
import hushmaze.assess.SoundMargins;
import hushmaze.build.CutListMaker;
import hushmaze.build.Effort;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetLayouts;
import hushmaze.build.Supply;
import hushmaze.build.split.SeamPlan;
import hushmaze.build.split.SeamPlanner;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Opening;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Part;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.PathCalculator.Quick;
import hushmaze.work.Progress;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** Judges candidates for one path, level by level, by the code that assesses projects. Safe for use by several threads. */
final class Appraiser {
    /** Rounds of the sheet search that compares boxes: few, but enough to find the sheets documents need nearly always. */
    private static final Effort SHEETS = Effort.rounds(1_000);

    /** Share of the outer faces that boards surely take. */
    private static final double SURELY = 0.6;
    /** An area that no lined box does without, m². */
    private static final double SOME_LINER = 0.01;

    private final int index;
    private final Methods confirming;
    private final VentPath path;
    private final AirState air;
    private final SoundJudge sound;
    private final BoxMaker maker;
    private final SeamPlanner planner;
    private final Kin all = new Kin(null);
    private final Map<Pattern.Kin, Kin> kins = new ConcurrentHashMap<>();
    private Project project;
    /** What the paths before leave of sheets. */
    private Supply supply;

    private Prices prices;

    /**
     * @param project with every flow settled
     * @param index of the path
     * @param confirming methods of the last level
     * @param left what the boxes of the paths before leave of sheets
     */
    Appraiser(Project project, int index, Methods confirming, Supply left) {
        this.confirming = confirming;
        this.project = project;
        this.index = index;
        this.path = project.paths().get(index);
        this.air = AirState.of(project.room());
        this.sound = new SoundJudge(project);
        this.supply = left;
        this.prices = new Prices(left);
        this.maker = new BoxMaker(path.brief(), new Steps(project.units()));
        this.planner = new SeamPlanner(path.brief().construction(), project.stock(), project.units());
    }

    /**
     * From now on the path has another share of the target.
     *
     * @param shared the project with that share, else the same
     * @param bonus what it gives to every margin, dB
     */
    void share(Project shared, double bonus) {
        project = shared;
        all.bonus(bonus);
    }

    /**
     * From now on boxes are cut from what others leave; what was judged before must be judged again.
     *
     * @param left by the boxes of the paths before
     */
    void cutFrom(Supply left) {
        supply = left;
        prices = new Prices(left);
        kins.values().forEach(Kin::forgetCosts);
    }

    /** What there is to cut from. */
    Supply supply() {
        return supply;
    }

    /** What a candidate costs now. */
    Verdict again(Candidate candidate) {
        if (candidate.level() == Level.ESTIMATE) {
            double cost = expected(
                    candidate.pattern(),
                    candidate.sizes().boards(),
                    candidate.sizes().liners());
            return Double.isInfinite(cost) ? candidate::drop : () -> candidate.costs(cost);
        }
        List<SheetLayout> layouts = layouts(candidate, supply);
        double cost = prices.of(layouts);
        return layouts.stream().allMatch(layout -> layout.unplaced().isEmpty())
                ? () -> candidate.costs(cost)
                : candidate::drop;
    }

    /** How the sheets of a candidate are laid out, by a short search. */
    List<SheetLayout> layouts(Candidate candidate, Supply from) {
        return SheetLayouts.of(CutListMaker.of(solid(candidate.box())), from, SHEETS, Progress.NONE);
    }

    /** What the sheets of some layouts cost. */
    double cost(List<SheetLayout> layouts) {
        return prices.of(layouts);
    }

    private double expected(Pattern pattern, double boards, double liners) {
        return Math.max(
                prices.expected(pattern.build(), boards, liners), kin(pattern).leastCost(pattern));
    }

    private Kin kin(Pattern pattern) {
        return kins.computeIfAbsent(pattern.kin(), key -> new Kin(all));
    }

    /** How an estimate ended. */
    enum End {
        NO_BOX,
        NO_AIR,
        NOT_CARRIED,
        NO_SHEETS,
        DONE
    }

    /**
     * A first judgement.
     *
     * @param candidate null if it is no box, or does not keep the limits on air, carrying and sheets
     */
    record First(End end, Candidate candidate) {}

    First first(Pattern pattern, Candidate lead) {
        Kept kept = kept(pattern);
        if (kept.end() != End.DONE) {
            return new First(kept.end(), null);
        }
        Solid solid = kept.solid();
        double depth = solid.outer().size(BoxFit.away(pattern.openingFace()))
                + path.brief().standOff(solid.box().joinery().gasket());
        Candidate.Sizes sizes =
                new Candidate.Sizes(depth, solid.mass(), kept.flow().pressureHigh(), kept.boards(), kept.liners());
        double cost = expected(pattern, sizes.boards(), sizes.liners());
        if (Double.isInfinite(cost)) {
            return new First(End.NO_SHEETS, null);
        }
        SoundMargins margins = sound.margins(index, solid, kept.flow(), Quick.NONE);
        if (Double.isNaN(margins.least())) {
            return new First(End.NO_BOX, null);
        }
        return new First(End.DONE, new Candidate(pattern, solid.box(), sizes, margins, cost, lead, kin(pattern)));
    }

    /** Whether a pattern is a box that keeps the limits on air, carrying and sheets; its sound is not looked at. */
    boolean keepsLimits(Pattern pattern) {
        return Double.isFinite(cost(pattern));
    }

    /** What a pattern is expected to cost; infinite if it is no box, or does not keep the limits on air, carrying and sheets. */
    double cost(Pattern pattern) {
        Kept kept = kept(pattern);
        return kept.end() == End.DONE ? expected(pattern, kept.boards(), kept.liners()) : Double.POSITIVE_INFINITY;
    }

    /** What sheets for the outer faces of a pattern, and for some liner, cost at the least. */
    double leastCost(Pattern pattern) {
        Build build = pattern.build();
        double x = pattern.length() + build.shells() + build.ends();
        double y = pattern.passes() * pattern.width() + build.across(pattern.passes()) + build.shells();
        double z = pattern.height() + build.shells() + build.broad();
        double faces = 2 * (x * y + y * z + z * x) * build.layers();
        // Ports and what layers have less inside are left off.
        return prices.expected(build, SURELY * faces, build.lined().most() > 0 ? SOME_LINER : 0);
    }

    /**
     * How far a pattern keeps the limits that come before sound and cost.
     *
     * @param solid null where it is no box
     * @param flow null where it was not looked at
     */
    private record Kept(End end, Solid solid, PathAir flow) {
        /** Area of all boards, m². */
        double boards() {
            return area(solid.panels().stream());
        }

        /** Area of all pieces of liner, m². */
        double liners() {
            return area(solid.liners().stream());
        }
    }

    private Kept kept(Pattern pattern) {
        Solid solid = maker.box(pattern).map(Appraiser::solid).orElse(null);
        if (solid == null || facesBuilding(solid)) {
            return new Kept(End.NO_BOX, null, null);
        }
        PathAir flow = AirJudge.air(path, solid, air);
        if (!AirJudge.verdict(path.brief(), flow).ok()) {
            return new Kept(End.NO_AIR, solid, flow);
        }
        if (!planner.mends(solid)) {
            return new Kept(planner.isCarriedWhole(solid) ? End.NO_SHEETS : End.NOT_CARRIED, solid, flow);
        }
        return new Kept(End.DONE, solid, flow);
    }

    /**
     * How much of boards, or of liner, a box takes that keeps all limits but the sheets of it.
     *
     * @return m² of sheets at the least; nothing if it keeps another limit not
     */
    OptionalDouble sheetsNeeded(Pattern pattern, boolean boards) {
        Kept kept = kept(pattern);
        if (kept.end() != End.DONE) {
            return OptionalDouble.empty();
        }
        boolean enough = Double.isFinite(
                prices.expected(pattern.build(), boards ? 0 : kept.boards(), boards ? kept.liners() : 0));
        return enough
                ? OptionalDouble.of(Prices.sheets(boards ? kept.boards() : kept.liners()))
                : OptionalDouble.empty();
    }

    /** Area of the sheets that there are for a build's boards or liner, m²; infinite where some are bought as needed. */
    double sheetsThere(Build build, boolean boards) {
        return prices.there(build, boards);
    }

    /** What is to be written into a candidate once it was judged; judging itself changes nothing. */
    interface Verdict {
        void apply();
    }

    /** Judges a candidate at its next level. */
    Verdict next(Candidate candidate, Progress progress) {
        return switch (candidate.level()) {
            case ESTIMATE -> quick(candidate);
            case QUICK -> liners(candidate);
            case LINERS -> assess(candidate, progress);
            case ASSESSED -> throw new IllegalStateException("there is no level beyond the assessment");
        };
    }

    private Verdict quick(Candidate candidate) {
        Solid whole = solid(candidate.box());
        SeamPlan plan = planner.plan(whole);
        if (!plan.obstacles().isEmpty() || Hanger.on(whole, path.brief()).isEmpty()) {
            return candidate::drop;
        }
        Box seamed = candidate.box().joined(candidate.box().joinery(), plan.seams());
        Solid solid = plan.seams().isEmpty() ? whole : solid(seamed);
        if (solid == null) {
            return candidate::drop;
        }
        List<SheetLayout> layouts = SheetLayouts.of(CutListMaker.of(solid), supply, SHEETS, Progress.NONE);
        if (layouts.stream().anyMatch(layout -> !layout.unplaced().isEmpty())) {
            return candidate::hasNoSheets;
        }
        SoundMargins margins = sound.margins(index, solid, AirJudge.air(path, solid, air), Quick.PLAIN);
        double cost = prices.of(layouts);
        return () -> {
            candidate.laidOut(seamed, cost, plan.seams().size());
            candidate.raise(Level.QUICK, margins);
        };
    }

    private Verdict liners(Candidate candidate) {
        Solid solid = solid(candidate.box());
        SoundMargins margins = sound.margins(index, solid, AirJudge.air(path, solid, air), Quick.VARIANTS);
        return () -> candidate.raise(Level.LINERS, margins);
    }

    private Verdict assess(Candidate candidate, Progress progress) {
        VentPath whole = project.paths().get(index);
        Optional<Brief> hung = Hanger.on(solid(candidate.box()), whole.brief());
        if (hung.isEmpty()) {
            return candidate::drop;
        }
        Project asked = project.withPath(index, whole.withBrief(hung.get()));
        PathResult result = Assessor.alone(asked, index, candidate.box(), confirming, supply, progress);
        if (!result.air().ok() || !result.fits().ok() || !result.buildable().ok()) {
            return candidate::drop;
        }
        return () -> {
            candidate.assessed(result, prices.of(result.layouts()));
            SoundMargins margins = result.soundMargins();
            candidate.raise(Level.ASSESSED, new SoundMargins(margins.target() - all.bonus(), margins.others()));
        };
    }

    private static Solid solid(Box box) {
        try {
            return SolidBuilder.build(box);
        } catch (InvalidValue portsOverlap) {
            return null;
        }
    }

    /** Whether the port in the room is in the face that lies against the building. */
    private boolean facesBuilding(Solid solid) {
        return path.brief().opening().kind() != Opening.Kind.IN_DUCT
                && solid.roomPort().role() == solid.openingPort().role();
    }

    private static double area(Stream<? extends Part> parts) {
        return parts.mapToDouble(part -> part.uSize() * part.vSize()).sum();
    }
}
