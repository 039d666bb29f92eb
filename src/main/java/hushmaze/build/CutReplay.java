package hushmaze.build;

import hushmaze.build.CutNode.Along;
import hushmaze.build.CutNode.Cut;
import hushmaze.build.CutNode.Leaf;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes the cuts of a sheet one after the other and says where every finished piece comes from. The kerf lies beyond each
 * cut; where less than a kerf is left beyond it, nothing remains.
 */
public final class CutReplay {
    /** Allowance for sums of decimal numbers, m; a nanometre is 1e-6 mm. */
    static final double SLACK = 1e-9;

    private final double kerf;
    private final List<Spot> spots = new ArrayList<>();

    /**
     * A finished piece where it lay on the sheet.
     *
     * @param mark of the panel, or null for an offcut
     * @param x along the sheet's length, m
     * @param y along the sheet's width, m
     * @param length along the sheet's length, m
     * @param width along the sheet's width, m
     */
    public record Spot(String mark, double x, double y, double length, double width) {
        /** Whether it is left over. */
        public boolean offcut() {
            return mark == null;
        }
    }

    private CutReplay(double kerf) {
        this.kerf = kerf;
    }

    /**
     * All finished pieces of a sheet, measured from its untrimmed corner.
     *
     * @throws IllegalStateException if a cut lies outside its piece or a finished piece has not the size it is said to have
     */
    public static List<Spot> of(SheetPlan plan) {
        return of(plan.cuts(), plan.sheet().length(), plan.sheet().width(), plan.kerf(), plan.trim());
    }

    /**
     * The same from single values.
     *
     * @param cuts of the trimmed sheet
     * @param length of the untrimmed sheet, m
     * @param width of the untrimmed sheet, m
     * @param kerf width of every cut, m
     * @param trim taken off every edge, m
     */
    public static List<Spot> of(CutNode cuts, double length, double width, double kerf, double trim) {
        CutReplay replay = new CutReplay(kerf);
        replay.cut(cuts, trim, trim, length - 2 * trim, width - 2 * trim);
        return List.copyOf(replay.spots);
    }

    /** What is beyond a cut, m; zero if the blade takes it all. */
    static double beyond(double size, double at, double kerf) {
        double rest = size - at - kerf;
        return rest < SLACK ? 0 : rest;
    }

    private void cut(CutNode node, double x, double y, double length, double width) {
        if (node instanceof Leaf leaf) {
            require(Math.abs(leaf.length() - length) <= SLACK && Math.abs(leaf.width() - width) <= SLACK, node);
            spots.add(new Spot(leaf.mark(), x, y, length, width));
        } else if (node instanceof Cut cut) {
            boolean rip = cut.along() == Along.LENGTH;
            double size = rip ? width : length;
            require(cut.at() > 0 && cut.at() < size, node);
            double rest = beyond(size, cut.at(), kerf);
            double start = Math.min(cut.at() + kerf, size);
            cut(cut.first(), x, y, rip ? length : cut.at(), rip ? cut.at() : width);
            cut(cut.second(), rip ? x : x + start, rip ? y + start : y, rip ? length : rest, rip ? rest : width);
        }
    }

    private static void require(boolean condition, CutNode node) {
        if (!condition) {
            throw new IllegalStateException("cuts and sizes do not agree at " + node);
        }
    }
}
