package hushmaze.build.split;

import hushmaze.project.Box;
import hushmaze.project.Construction;
import hushmaze.project.Doorway;
import hushmaze.project.Seam;
import hushmaze.project.Stock;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.SeamPlaces;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Proposes the fewest seams that let a box be cut from its sheets, carried and brought through its door: glued ones where
 * boards or liner are too long for every sheet, ones that come apart where a part would be too heavy or too large. The
 * same box always gets the same seams. What seams across the passes cannot mend is told instead.
 */
public final class SeamPlanner {
    /** A seam's least position, m. */
    private static final double LEAST_POSITION = 0.05;

    private final Construction construction;
    private final Stock stock;
    private final UnitSystem units;

    /** @param units whose round numbers the places shall be: 10 mm or 1/2 in, or finer where these do not do */
    public SeamPlanner(Construction construction, Stock stock, UnitSystem units) {
        this.construction = construction;
        this.stock = stock;
        this.units = units;
    }

    /** Seams for a box; the ones it has are put aside first. */
    public SeamPlan plan(Box box) {
        return plan(SolidBuilder.build(box.joined(box.joinery(), List.of())));
    }

    /** @param solid of a box without seams */
    public SeamPlan plan(Solid solid) {
        List<Obstacle> obstacles = new ArrayList<>();
        SeamLimits limits = SeamLimits.of(solid, construction, stock, obstacles);
        Optional<List<Seam>> seams = search(solid, limits);
        return seams.isPresent() ? new SeamPlan(seams.get(), obstacles) : planWithoutSome(solid, limits, obstacles);
    }

    /**
     * Whether seams, as many as it takes or none, let a box be cut from its sheets, carried and brought through its door. Says no
     * more than {@link #plan}, but sooner.
     *
     * @param solid of a box without seams
     */
    public boolean mends(Solid solid) {
        if (needsNone(solid)) {
            return true;
        }
        List<Obstacle> obstacles = new ArrayList<>();
        SeamLimits limits = SeamLimits.of(solid, construction, stock, obstacles);
        return obstacles.isEmpty() && search(solid, limits).isPresent();
    }

    /** Whether a box may be carried as it is. */
    public boolean isCarriedWhole(Solid solid) {
        Cuboid outer = solid.outer();
        Doorway door = construction.doorway();
        return (construction.maxMass() == null || solid.mass() <= construction.maxMass())
                && (door == null || door.lets(outer.size(Axis.X), outer.size(Axis.Y), outer.size(Axis.Z)));
    }

    /** Whether the box needs no seam for certain: no part is larger than its two longest sides. */
    private boolean needsNone(Solid solid) {
        Cuboid outer = solid.outer();
        double[] sides = {outer.size(Axis.X), outer.size(Axis.Y), outer.size(Axis.Z)};
        Arrays.sort(sides);
        return isCarriedWhole(solid)
                && Stream.concat(
                                solid.box().shell().stream(),
                                Stream.of(solid.box().baffleBoard()))
                        .distinct()
                        .allMatch(board -> !board.grain()
                                && SheetRoom.ofBoard(stock, board.name()).holds(sides[2], sides[1], false))
                && (solid.liners().isEmpty()
                        || SheetRoom.ofLiner(stock, solid.box().liner().name()).holds(sides[2], sides[1], false));
    }

    /** One more seam for a box: about the middle of its longest stretch; nothing if there is no place for one. */
    public Optional<Seam> oneMore(Box box, Seam.Kind kind) {
        if (box.seams().size() >= Box.MAX_SEAMS) {
            return Optional.empty();
        }
        Solid solid = SolidBuilder.build(box);
        SeamPlaces places = SeamPlaces.of(solid);
        double length = solid.outer().size(Axis.X);
        Comparator<Seam> byRoom = Comparator.comparingDouble(s -> room(box, length, s.position()));
        return Step.of(units, false)
                .between(0, length)
                .filter(x -> x >= LEAST_POSITION)
                .mapToObj(x -> new Seam(kind, x))
                .filter(s -> places.inTheWay(s).isEmpty())
                .filter(s ->
                        box.seams().stream().allMatch(o -> Math.abs(o.position() - s.position()) >= Box.MIN_STRETCH))
                .max(byRoom);
    }

    /** How far a place is from the nearest seam or end, m. */
    private static double room(Box box, double length, double at) {
        double room = Math.min(at, length - at);
        for (Seam seam : box.seams()) {
            room = Math.min(room, Math.abs(seam.position() - at));
        }
        return room;
    }

    private Optional<List<Seam>> search(Solid solid, SeamLimits limits) {
        int least = Math.max(
                limits.leastForSheets(), limits.leastPartings(solid.outer().size(Axis.X), solid.mass()));
        if (least == 0) {
            return Optional.of(List.of());
        }
        if (least > Box.MAX_SEAMS) {
            return Optional.empty();
        }
        Optional<List<Seam>> round = new SeamSearch(solid, limits, Step.of(units, false)).fewest();
        return round.isPresent() ? round : new SeamSearch(solid, limits, Step.of(units, true)).fewest();
    }

    /** Leaves as few limits out as it takes, the mass first, and tells of each. */
    private SeamPlan planWithoutSome(Solid solid, SeamLimits limits, List<Obstacle> fixed) {
        UnaryOperator<SeamLimits> mass = SeamLimits::withoutMass;
        UnaryOperator<SeamLimits> door = SeamLimits::withoutDoor;
        UnaryOperator<SeamLimits> sheets = SeamLimits::withoutSheets;
        for (List<UnaryOperator<SeamLimits>> left : List.of(
                List.of(mass),
                List.of(door),
                List.of(sheets),
                List.of(mass, door),
                List.of(mass, sheets),
                List.of(door, sheets))) {
            SeamLimits rest = limits;
            for (UnaryOperator<SeamLimits> one : left) {
                rest = one.apply(rest);
            }
            Optional<List<Seam>> seams = search(solid, rest);
            if (seams.isPresent()) {
                return new SeamPlan(seams.get(), told(solid, limits, rest, fixed, seams.get()));
            }
        }
        return new SeamPlan(List.of(), told(solid, limits, SeamLimits.NONE, fixed, List.of()));
    }

    /** What stays too long or too heavy however many seams there are, or else with those that the other limits ask for. */
    private List<Obstacle> told(Solid solid, SeamLimits all, SeamLimits kept, List<Obstacle> fixed, List<Seam> seams) {
        List<Obstacle> obstacles = new ArrayList<>(fixed);
        if (all.heaviest() < kept.heaviest()) {
            double value = heaviest(solid, most(solid, Seam.Kind.PARTING, true));
            add(obstacles, Obstacle.Kind.PART_MASS, value, heaviest(solid, partings(seams)), all.heaviest());
        }
        double end = solid.outer().size(Axis.X);
        if (all.longestModule() < kept.longestModule()) {
            double value = longest(0, end, most(solid, Seam.Kind.PARTING, false));
            add(obstacles, Obstacle.Kind.PART_LENGTH, value, longest(0, end, partings(seams)), all.longestModule());
        }
        if (!all.stretches().isEmpty() && kept.stretches().isEmpty()) {
            Stretch worst = all.stretches().get(0);
            for (Stretch stretch : all.stretches()) {
                worst = stretch.longest() < worst.longest() ? stretch : worst;
            }
            double value = longest(worst.from(), worst.to(), most(solid, Seam.Kind.GLUED, false));
            double now = longest(worst.from(), worst.to(), seams);
            add(obstacles, Obstacle.Kind.PIECE_LENGTH, value, now, worst.longest());
        }
        return obstacles;
    }

    private static void add(List<Obstacle> obstacles, Obstacle.Kind kind, double least, double now, double limit) {
        obstacles.add(new Obstacle(kind, null, least > limit ? least : now, limit));
    }

    private static List<Seam> partings(List<Seam> seams) {
        return seams.stream().filter(Seam::comesApart).toList();
    }

    private List<Seam> most(Solid solid, Seam.Kind kind, boolean byMass) {
        return SeamSearch.most(solid, kind, byMass, Step.of(units, true));
    }

    /** The heaviest part of a box that comes apart at some seams, kg. */
    private static double heaviest(Solid solid, List<Seam> partings) {
        MassAlong along = new MassAlong(solid);
        double heaviest = 0;
        double before = 0;
        for (Seam seam : partings) {
            double upTo = along.upTo(seam.position());
            heaviest = Math.max(heaviest, upTo - before);
            before = upTo;
        }
        return Math.max(heaviest, solid.mass() - before);
    }

    private static double longest(double from, double to, List<Seam> seams) {
        double longest = 0;
        double before = from;
        for (Seam seam : seams) {
            longest = Math.max(longest, Math.min(seam.position(), to) - before);
            before = Math.max(before, seam.position());
        }
        return Math.max(longest, to - before);
    }
}
