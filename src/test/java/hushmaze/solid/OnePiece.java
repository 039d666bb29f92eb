package hushmaze.solid;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.TreeSet;

/** Whether a part hangs together: an independent check by painting the cells between the edges of all cut-outs. */
final class OnePiece {
    /** Edges nearer than this are one, m. */
    private static final double SAME = 1e-8;

    private final Part part;
    private final double[] us;
    private final double[] vs;

    private OnePiece(Part part) {
        this.part = part;
        TreeSet<Double> u = new TreeSet<>();
        TreeSet<Double> v = new TreeSet<>();
        for (Cutout c : part.cutouts()) {
            u.add(c.u0());
            u.add(c.u1());
            v.add(c.v0());
            v.add(c.v1());
        }
        us = edges(u, part.uSize());
        vs = edges(v, part.vSize());
    }

    private static double[] edges(TreeSet<Double> inside, double size) {
        TreeSet<Double> all = new TreeSet<>();
        all.add(0.0);
        for (double at : inside) {
            if (at > all.last() + SAME && at < size - SAME) {
                all.add(at);
            }
        }
        all.add(size);
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Whether something is left of a part, all of it hangs together and it reaches the four sides of its bounds. */
    static boolean whole(Part part) {
        return new OnePiece(part).whole();
    }

    private boolean whole() {
        boolean[][] painted = new boolean[us.length - 1][vs.length - 1];
        int left = 0;
        int reached = 0;
        boolean[] sides = new boolean[4];
        for (int i = 0; i < painted.length; i++) {
            for (int j = 0; j < painted[0].length; j++) {
                if (there(i, j)) {
                    left++;
                    reached += reached == 0 ? paint(painted, i, j) : 0;
                    sides[0] |= i == 0;
                    sides[1] |= j == 0;
                    sides[2] |= i == painted.length - 1;
                    sides[3] |= j == painted[0].length - 1;
                }
            }
        }
        return left > 0 && reached == left && sides[0] && sides[1] && sides[2] && sides[3];
    }

    private boolean there(int i, int j) {
        double u = (us[i] + us[i + 1]) / 2;
        double v = (vs[j] + vs[j + 1]) / 2;
        return part.cutouts().stream().noneMatch(c -> u > c.u0() && u < c.u1() && v > c.v0() && v < c.v1());
    }

    private int paint(boolean[][] painted, int i0, int j0) {
        Deque<int[]> open = new ArrayDeque<>();
        open.add(new int[] {i0, j0});
        int count = 0;
        while (!open.isEmpty()) {
            int[] at = open.remove();
            int i = at[0];
            int j = at[1];
            boolean in = i >= 0 && j >= 0 && i < painted.length && j < painted[0].length;
            if (in && !painted[i][j] && there(i, j)) {
                painted[i][j] = true;
                count++;
                open.add(new int[] {i + 1, j});
                open.add(new int[] {i - 1, j});
                open.add(new int[] {i, j + 1});
                open.add(new int[] {i, j - 1});
            }
        }
        return count;
    }
}
