package hushmaze.build;

import hushmaze.solid.Cutout;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Makes the cut list of a box: parts that are one and the same piece of sheet material together, largest first.
 *
 * <p>Two parts are the same if material and thickness agree, their sizes agree to a micrometre, and their cut-outs lie on
 * each other after some turn by 180 degrees or turning over, which all boards allow: cut-outs run right through. The length
 * of an item is its longer side; a board's grain runs along it. Square pieces without grain are also compared after a
 * quarter turn.
 */
public final class CutListMaker {
    /** Sizes that differ by less are the same, m. */
    static final double SAME = 1e-6;

    private CutListMaker() {}

    /** The cut list of a solid. */
    public static CutList of(Solid solid) {
        return new CutList(items("B", solid.panels()), items("L", solid.liners()));
    }

    private static List<CutItem> items(String letter, List<? extends Part> parts) {
        List<List<Part>> groups = new ArrayList<>();
        for (Part part : parts) {
            groups.stream()
                    .filter(group -> same(group.get(0), part))
                    .findFirst()
                    .orElseGet(() -> {
                        groups.add(new ArrayList<>());
                        return groups.get(groups.size() - 1);
                    })
                    .add(part);
        }
        groups.sort(Comparator.comparingDouble((List<Part> group) -> -length(group.get(0)) * width(group.get(0)))
                .thenComparingDouble(group -> -length(group.get(0)))
                .thenComparing(group -> group.get(0).material())
                .thenComparingDouble(group -> group.get(0).thickness()));
        List<CutItem> items = new ArrayList<>();
        for (List<Part> group : groups) {
            items.add(item(letter + (items.size() + 1), group));
        }
        return items;
    }

    private static CutItem item(String mark, List<Part> group) {
        Part first = group.get(0);
        return new CutItem(
                mark,
                first.material(),
                first.thickness(),
                length(first),
                width(first),
                grain(first),
                CutoutMatch.turned(first.cutouts(), !lengthIsU(first)),
                group);
    }

    static boolean same(Part p, Part q) {
        if (!p.material().equals(q.material())
                || grain(p) != grain(q)
                || Math.abs(p.thickness() - q.thickness()) > SAME
                || Math.abs(length(p) - length(q)) > SAME
                || Math.abs(width(p) - width(q)) > SAME) {
            return false;
        }
        List<Cutout> mine = CutoutMatch.turned(p.cutouts(), !lengthIsU(p));
        List<Cutout> theirs = CutoutMatch.turned(q.cutouts(), !lengthIsU(q));
        boolean square = length(p) - width(p) <= SAME && !grain(p);
        return CutoutMatch.same(mine, theirs, length(p), width(p))
                || square && CutoutMatch.same(mine, CutoutMatch.turned(theirs, true), length(p), width(p));
    }

    private static boolean lengthIsU(Part part) {
        return part.uSize() >= part.vSize() - SAME;
    }

    private static double length(Part part) {
        return lengthIsU(part) ? part.uSize() : part.vSize();
    }

    private static double width(Part part) {
        return lengthIsU(part) ? part.vSize() : part.uSize();
    }

    private static boolean grain(Part part) {
        if (part instanceof Panel panel) {
            return panel.board().grain();
        }
        if (part instanceof LinerPiece) {
            return false;
        }
        throw new IllegalStateException("neither board nor liner: " + part);
    }
}
