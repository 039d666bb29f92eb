package hushmaze.build;

import hushmaze.build.joint.Fastening;
import hushmaze.build.joint.Hole;
import hushmaze.solid.AirEdge;
import hushmaze.solid.AirEdges;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Makes the cut list of a box: parts that are one and the same piece to make together, largest first.
 *
 * <p>Two parts are the same if material and thickness agree, their sizes agree to a micrometre, and their cut-outs, grooves
 * and screw holes lie on each other after some turn by 180 degrees or turning over; cut-outs and holes run right through,
 * grooves change faces when a board is turned over. The length of an item is its longer side; a board's grain runs along it.
 * Square pieces without grain are also compared after a quarter turn.
 */
public final class CutListMaker {
    /** Sizes that differ by less are the same, m. */
    static final double SAME = 1e-6;

    private CutListMaker() {}

    /** The cut list of a solid. */
    public static CutList of(Solid solid) {
        Map<Panel, List<Hole>> holes = Fastening.holes(solid);
        Map<LinerPiece, List<AirEdge>> edges = AirEdges.of(solid);
        return new CutList(
                items("B", solid.panels(), panel -> holes.getOrDefault(panel, List.of()), panel -> List.of()),
                items("L", solid.liners(), piece -> List.of(), edges::get));
    }

    /** Alike parts, each with the way it is laid down. */
    private static final class Group<P extends Part> {
        private final Plate plate;
        private final List<P> parts = new ArrayList<>();
        private final List<Turning> turnings = new ArrayList<>();

        Group(Plate plate) {
            this.plate = plate;
        }
    }

    static <P extends Part> List<CutItem> items(
            String letter, List<P> parts, Function<P, List<Hole>> holes, Function<P, List<AirEdge>> edges) {
        List<Group<P>> groups = new ArrayList<>();
        for (P part : parts) {
            add(part, Plate.of(part, holes.apply(part)), groups);
        }
        groups.sort(Comparator.comparingDouble((Group<P> g) -> -g.plate.length() * g.plate.width())
                .thenComparingDouble(g -> -g.plate.length())
                .thenComparing(g -> g.parts.get(0).material())
                .thenComparingDouble(g -> g.parts.get(0).thickness()));
        List<CutItem> items = new ArrayList<>();
        for (Group<P> group : groups) {
            items.add(item(letter + (items.size() + 1), group, edges));
        }
        return items;
    }

    private static <P extends Part> void add(P part, Plate plate, List<Group<P>> groups) {
        for (Group<P> group : groups) {
            Turning turning = alike(group.parts.get(0), part) ? turning(group.plate, plate, grain(part)) : null;
            if (turning != null) {
                group.parts.add(part);
                group.turnings.add(turning);
                return;
            }
        }
        Turning first = first(plate);
        Group<P> group = new Group<>(plate.turned(first));
        group.parts.add(part);
        group.turnings.add(first);
        groups.add(group);
    }

    /** The longer side to the right, the grooves to be seen. */
    private static Turning first(Plate plate) {
        boolean exchange = plate.length() < plate.width() - SAME;
        boolean hidden = !plate.grooves().isEmpty() && plate.grooves().get(0).inLowFace() != exchange;
        return new Turning(exchange, hidden, false);
    }

    private static boolean alike(Part p, Part q) {
        return p.material().equals(q.material())
                && grain(p) == grain(q)
                && Math.abs(p.thickness() - q.thickness()) <= SAME;
    }

    /** The turning that brings a plate onto another, or null; grain is never turned by a quarter. */
    static Turning turning(Plate onto, Plate plate, boolean grain) {
        boolean lengthFirst = plate.length() >= plate.width() - SAME;
        for (Turning turning : Turning.all()) {
            boolean allowed = !grain || turning.exchange() != lengthFirst;
            if (allowed && plate.turned(turning).same(onto)) {
                return turning;
            }
        }
        return null;
    }

    private static <P extends Part> CutItem item(String mark, Group<P> group, Function<P, List<AirEdge>> edges) {
        P first = group.parts.get(0);
        List<AirEdge> inAir = new ArrayList<>();
        List<Turning> turnings = new ArrayList<>();
        for (int i = 0; i < group.parts.size(); i++) {
            List<AirEdge> own = edges.apply(group.parts.get(i));
            Turning turning = own.isEmpty() ? group.turnings.get(i) : fewestNew(group, i, own, inAir);
            turnings.add(turning);
            inAir.addAll(added(own, turning, group.plate, inAir));
        }
        return new CutItem(
                mark,
                first.material(),
                first.thickness(),
                grain(first),
                group.plate,
                inAir,
                List.copyOf(group.parts),
                turnings);
    }

    /** Of all ways a liner piece may be laid down, the one that shares most edges to seal with those before it. */
    private static <P extends Part> Turning fewestNew(
            Group<P> group, int index, List<AirEdge> own, List<AirEdge> marked) {
        Plate lying = Plate.of(group.parts.get(index), List.of());
        return Stream.of(Turning.all())
                .filter(t -> lying.turned(t).same(group.plate))
                .min(Comparator.comparingInt(
                        t -> added(own, t, group.plate, marked).size()))
                .orElse(group.turnings.get(index));
    }

    private static List<AirEdge> added(List<AirEdge> own, Turning turning, Plate plate, List<AirEdge> marked) {
        return own.stream()
                .map(edge -> Plate.edge(edge, turning, plate.length(), plate.width()))
                .filter(edge -> marked.stream().noneMatch(m -> Plate.near(m, edge)))
                .toList();
    }

    private static boolean grain(Part part) {
        return part instanceof Panel panel && panel.board().grain();
    }
}
