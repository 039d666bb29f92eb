package hushmaze.build.split;

import hushmaze.project.Box;
import hushmaze.project.Seam;
import hushmaze.solid.Axis;
import hushmaze.solid.SeamPlaces;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the fewest seams that keep limits, and of all places on a grid the ones that make the pieces most alike.
 *
 * <p>For a row of kinds, glued or coming apart, places are chosen from the near end on: for each place of a seam the best
 * way there is kept. What makes ways comparable is added up over the seams: how far the mass up to a seam is from an equal
 * share if the mass is what asks for parts, and how far pieces are from equal lengths otherwise. Where seams of both kinds
 * are mixed, the best way to a place may leave too long a part behind; then the row is searched again for any way at all.
 */
final class SeamSearch {
    private static final double SLACK = 1e-9;

    private final SeamLimits limits;
    private final double length;
    private final double mass;
    private final SeamPlaces allowed;
    private final MassAlong along;
    private final Step step;
    private final Map<Seam.Kind, double[]> places = new EnumMap<>(Seam.Kind.class);
    private final Map<Seam.Kind, double[]> masses = new EnumMap<>(Seam.Kind.class);

    /**
     * @param solid of the box without seams
     * @param step that every place is a multiple of, m
     */
    SeamSearch(Solid solid, SeamLimits limits, Step step) {
        this.limits = limits;
        this.length = solid.outer().size(Axis.X);
        this.mass = solid.mass();
        this.step = step;
        this.allowed = SeamPlaces.of(solid);
        this.along = new MassAlong(solid);
    }

    /** Where seams of a kind may be, from the near end on; worked out when first asked for: most boxes need no seam. */
    private double[] places(Seam.Kind kind) {
        return places.computeIfAbsent(
                kind,
                k -> step.between(Box.MIN_STRETCH, length - Box.MIN_STRETCH)
                        .filter(x -> allowed.inTheWay(new Seam(k, x)).isEmpty())
                        .toArray());
    }

    /** Mass of the box up to each of these places. */
    private double[] masses(Seam.Kind kind) {
        return masses.computeIfAbsent(
                kind, k -> Arrays.stream(places(k)).map(along::upTo).toArray());
    }

    /** A way to a place: the seams so far. */
    private record Way(Way before, Seam.Kind kind, double at, double partedAt, double partedMass, double cost) {
        static final Way START = new Way(null, null, 0, 0, 0, 0);

        Way costing(double all) {
            return new Way(before, kind, at, partedAt, partedMass, all);
        }
    }

    /** The fewest seams that keep the limits; nothing if there are none. */
    Optional<List<Seam>> fewest() {
        int partings = limits.leastPartings(length, mass);
        int least = Math.max(partings, limits.leastForSheets());
        for (int n = least; n <= Box.MAX_SEAMS; n++) {
            for (int m = partings; m <= n; m++) {
                Optional<List<Seam>> found = best(n, m);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /** As many seams of a kind as there is place for, at most {@link Box#MAX_SEAMS}, whatever the limits. */
    static List<Seam> most(Solid solid, Seam.Kind kind, boolean byMass, Step step) {
        double heaviest = byMass ? Double.MAX_VALUE : Double.POSITIVE_INFINITY;
        SeamSearch any = new SeamSearch(solid, new SeamLimits(List.of(), Double.POSITIVE_INFINITY, heaviest), step);
        for (int n = Box.MAX_SEAMS; n > 0; n--) {
            Optional<List<Seam>> found = any.best(n, kind == Seam.Kind.PARTING ? n : 0);
            if (found.isPresent()) {
                return found.get();
            }
        }
        return List.of();
    }

    /** The best of all rows of so many seams with so many among them that come apart. */
    private Optional<List<Seam>> best(int seams, int partings) {
        Way best = null;
        for (int row = 0; row < 1 << seams; row++) {
            if (Integer.bitCount(row) == partings) {
                Way found = way(kinds(row, seams));
                best = found != null && (best == null || found.cost() < best.cost()) ? found : best;
            }
        }
        return Optional.ofNullable(best).map(SeamSearch::seams);
    }

    private static List<Seam.Kind> kinds(int row, int seams) {
        List<Seam.Kind> kinds = new ArrayList<>();
        for (int i = 0; i < seams; i++) {
            kinds.add((row >> i & 1) == 0 ? Seam.Kind.GLUED : Seam.Kind.PARTING);
        }
        return kinds;
    }

    private static List<Seam> seams(Way last) {
        List<Seam> seams = new ArrayList<>();
        for (Way way = last; way.kind() != null; way = way.before()) {
            seams.add(0, new Seam(way.kind(), way.at()));
        }
        return seams;
    }

    /** The best way through a row; null if there is none. */
    private Way way(List<Seam.Kind> kinds) {
        Way cheapest = way(kinds, false);
        return cheapest == null && kinds.stream().distinct().count() > 1 ? way(kinds, true) : cheapest;
    }

    private Way way(List<Seam.Kind> kinds, boolean any) {
        List<Way> ways = List.of(Way.START);
        for (int i = 0; i < kinds.size(); i++) {
            ways = next(ways, kinds, i, any);
        }
        Way best = null;
        for (Way way : ways) {
            if (limits.ends(way.kind(), way.at()) && carries(way, length, mass)) {
                Way ended = way.costing(way.cost() + stretchCost(kinds, length - way.at()));
                best = best == null || ended.cost() < best.cost() ? ended : best;
            }
        }
        return best;
    }

    private List<Way> next(List<Way> ways, List<Seam.Kind> kinds, int number, boolean any) {
        Seam.Kind kind = kinds.get(number);
        double[] at = places(kind);
        double[] upTo = masses(kind);
        Way[] found = new Way[at.length];
        for (Way way : ways) {
            double from = way.at() + (way.kind() == null ? 0 : Box.MIN_STRETCH) - SLACK;
            double to = limits.reach(way.kind(), way.at(), kind) + SLACK;
            for (int i = 0; i < at.length; i++) {
                if (at[i] < from || at[i] > to) {
                    continue;
                }
                Way next = step(way, kinds, number, at[i], upTo[i]);
                if (next != null && (found[i] == null || better(next, found[i], any))) {
                    found[i] = next;
                }
            }
        }
        return Arrays.stream(found).filter(w -> w != null).toList();
    }

    private static boolean better(Way a, Way b, boolean any) {
        return any && a.partedAt() != b.partedAt() ? a.partedAt() > b.partedAt() : a.cost() < b.cost();
    }

    private Way step(Way way, List<Seam.Kind> kinds, int number, double at, double upTo) {
        Seam.Kind kind = kinds.get(number);
        double cost = way.cost() + stretchCost(kinds, at - way.at());
        if (kind == Seam.Kind.GLUED) {
            return new Way(way, kind, at, way.partedAt(), way.partedMass(), cost);
        }
        return carries(way, at, upTo) ? new Way(way, kind, at, at, upTo, cost + shareCost(kinds, number, upTo)) : null;
    }

    /** Whether the part between the last parting and a plane can be carried to its place. */
    private boolean carries(Way way, double to, double upTo) {
        return to - way.partedAt() <= limits.longestModule() + SLACK
                && upTo - way.partedMass() <= limits.heaviest() + SLACK;
    }

    private boolean byMass(List<Seam.Kind> kinds) {
        return Double.isFinite(limits.heaviest()) && kinds.contains(Seam.Kind.PARTING);
    }

    private double stretchCost(List<Seam.Kind> kinds, double stretch) {
        if (byMass(kinds) && !kinds.contains(Seam.Kind.GLUED)) {
            return 0;
        }
        double off = stretch / length - 1.0 / (kinds.size() + 1);
        return off * off;
    }

    private double shareCost(List<Seam.Kind> kinds, int number, double upTo) {
        if (!byMass(kinds)) {
            return 0;
        }
        long partings = kinds.stream().filter(k -> k == Seam.Kind.PARTING).count();
        long before = kinds.subList(0, number).stream()
                .filter(k -> k == Seam.Kind.PARTING)
                .count();
        double off = upTo / mass - (before + 1.0) / (partings + 1);
        return off * off;
    }
}
