package hushmaze.build;

import hushmaze.solid.Cutout;
import java.util.ArrayList;
import java.util.List;

/** Whether two sets of cut-outs are the same on a piece that is turned by 180 degrees or turned over. */
final class CutoutMatch {
    private CutoutMatch() {}

    /** Cut-outs in length and width directions: as they are, or with both directions exchanged. */
    static List<Cutout> turned(List<Cutout> cutouts, boolean exchange) {
        return cutouts.stream()
                .map(c -> exchange ? new Cutout(c.v0(), c.u0(), c.v1(), c.u1()) : c)
                .toList();
    }

    /**
     * Whether some turn brings the second set onto the first.
     *
     * @param length of the piece along u, m
     * @param width of the piece along v, m
     */
    static boolean same(List<Cutout> p, List<Cutout> q, double length, double width) {
        for (boolean overLength : new boolean[] {false, true}) {
            for (boolean overWidth : new boolean[] {false, true}) {
                if (covered(p, mirrored(q, overLength ? length : -1, overWidth ? width : -1))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<Cutout> mirrored(List<Cutout> cutouts, double length, double width) {
        return cutouts.stream()
                .map(c -> new Cutout(
                        length < 0 ? c.u0() : length - c.u1(),
                        width < 0 ? c.v0() : width - c.v1(),
                        length < 0 ? c.u1() : length - c.u0(),
                        width < 0 ? c.v1() : width - c.v0()))
                .toList();
    }

    private static boolean covered(List<Cutout> p, List<Cutout> q) {
        List<Cutout> open = new ArrayList<>(q);
        for (Cutout cutout : p) {
            Cutout twin = open.stream().filter(c -> near(c, cutout)).findFirst().orElse(null);
            if (twin == null) {
                return false;
            }
            open.remove(twin);
        }
        return open.isEmpty();
    }

    private static boolean near(Cutout c, Cutout d) {
        return Math.abs(c.u0() - d.u0()) <= CutListMaker.SAME
                && Math.abs(c.v0() - d.v0()) <= CutListMaker.SAME
                && Math.abs(c.u1() - d.u1()) <= CutListMaker.SAME
                && Math.abs(c.v1() - d.v1()) <= CutListMaker.SAME;
    }
}
