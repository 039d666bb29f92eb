package hushmaze.sound.wave;

import hushmaze.quantity.InvalidValue;
import java.util.Arrays;
import java.util.List;

/**
 * L U of a sum of elements with partial pivoting, in a band. Slower than {@link FrontalFactor} by far, but safe: it is used
 * when that one, which does not pivot, meets a small pivot.
 */
final class BandedLu {
    private final int n;
    /** Half width of the band. */
    private final int band;
    /** Length of a row: the band, and what pivoting adds. */
    private final int width;
    /** Place of each unknown in the band's order. */
    private final int[] place;

    private final double[] re;
    private final double[] im;
    private final int[] pivot;

    /**
     * @param elements of the matrix
     * @param unknowns how many
     * @param mostBytes memory that may be used
     * @param pause called at every row; may throw to stop the work
     */
    BandedLu(List<Element> elements, int unknowns, long mostBytes, Runnable pause) {
        n = unknowns;
        place = places(elements, unknowns);
        int widest = 0;
        for (Element element : elements) {
            int low = n;
            int high = 0;
            for (int unknown : element.unknown()) {
                low = Math.min(low, place[unknown]);
                high = Math.max(high, place[unknown]);
            }
            widest = Math.max(widest, high - low);
        }
        band = widest;
        width = 3 * band + 1;
        long numbers = (long) n * width;
        if (16 * numbers > mostBytes || numbers > Integer.MAX_VALUE - 8) {
            throw new InvalidValue(
                    "unknowns", n + " that need pivoting", "few enough for " + mostBytes / 1_000_000, "MB");
        }
        re = new double[(int) numbers];
        im = new double[(int) numbers];
        pivot = new int[n];
        elements.forEach(this::add);
        for (int row = 0; row < n; row++) {
            pause.run();
            eliminate(row);
        }
    }

    /** Unknowns in the order in which they are met when elements are visited breadth first. */
    private static int[] places(List<Element> elements, int unknowns) {
        List<int[]> members = elements.stream().map(Element::unknown).toList();
        UnknownGroups groups = new UnknownGroups(members, unknowns);
        int[][] of = new int[unknowns][];
        for (int g = 0; g < groups.count(); g++) {
            for (int unknown : groups.unknowns.get(g)) {
                of[unknown] = groups.elements.get(g);
            }
        }
        int[] place = new int[unknowns];
        Arrays.fill(place, -1);
        boolean[] seen = new boolean[elements.size()];
        int[] queue = new int[elements.size()];
        int tail = 0;
        int next = 0;
        for (int start = 0; start < elements.size(); start++) {
            if (seen[start]) {
                continue;
            }
            seen[start] = true;
            queue[tail++] = start;
            for (int head = tail - 1; head < tail; head++) {
                for (int unknown : members.get(queue[head])) {
                    if (place[unknown] >= 0) {
                        continue;
                    }
                    place[unknown] = next++;
                    for (int e : of[unknown]) {
                        if (!seen[e]) {
                            seen[e] = true;
                            queue[tail++] = e;
                        }
                    }
                }
            }
        }
        return place;
    }

    /** Row by row; column j of row i is at j - i + band, so that a row exchanged with one below fits too. */
    private int at(int row, int column) {
        return row * width + column - row + band;
    }

    private void add(Element element) {
        int size = element.size();
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                int at = at(place[element.unknown()[i]], place[element.unknown()[j]]);
                re[at] += element.scale() * element.re()[i * size + j];
                im[at] += element.scale() * element.im()[i * size + j];
            }
        }
    }

    private void eliminate(int k) {
        int lastRow = Math.min(n - 1, k + band);
        int lastColumn = Math.min(n - 1, k + 2 * band);
        int best = k;
        double size = 0;
        for (int i = k; i <= lastRow; i++) {
            double own = Math.hypot(re[at(i, k)], im[at(i, k)]);
            if (own > size) {
                size = own;
                best = i;
            }
        }
        pivot[k] = best;
        if (best != k) {
            for (int j = k; j <= lastColumn; j++) {
                swap(re, at(k, j), at(best, j));
                swap(im, at(k, j), at(best, j));
            }
        }
        double pr = re[at(k, k)] / (size * size);
        double pi = -im[at(k, k)] / (size * size);
        for (int i = k + 1; i <= lastRow; i++) {
            double ar = re[at(i, k)];
            double ai = im[at(i, k)];
            double fr = ar * pr - ai * pi;
            double fi = ar * pi + ai * pr;
            re[at(i, k)] = fr;
            im[at(i, k)] = fi;
            for (int j = k + 1; j <= lastColumn; j++) {
                re[at(i, j)] -= fr * re[at(k, j)] - fi * im[at(k, j)];
                im[at(i, j)] -= fr * im[at(k, j)] + fi * re[at(k, j)];
            }
        }
    }

    private static void swap(double[] a, int i, int j) {
        double x = a[i];
        a[i] = a[j];
        a[j] = x;
    }

    /** Replaces a right side by the solution. */
    void solve(double[] bRe, double[] bIm) {
        double[] xr = new double[n];
        double[] xi = new double[n];
        for (int i = 0; i < n; i++) {
            xr[place[i]] = bRe[i];
            xi[place[i]] = bIm[i];
        }
        for (int k = 0; k < n; k++) {
            swap(xr, k, pivot[k]);
            swap(xi, k, pivot[k]);
            for (int i = k + 1; i <= Math.min(n - 1, k + band); i++) {
                int at = at(i, k);
                xr[i] -= re[at] * xr[k] - im[at] * xi[k];
                xi[i] -= re[at] * xi[k] + im[at] * xr[k];
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            for (int j = k + 1; j <= Math.min(n - 1, k + 2 * band); j++) {
                int at = at(k, j);
                xr[k] -= re[at] * xr[j] - im[at] * xi[j];
                xi[k] -= re[at] * xi[j] + im[at] * xr[j];
            }
            double dr = re[at(k, k)];
            double di = im[at(k, k)];
            double size = dr * dr + di * di;
            double vr = xr[k];
            double vi = xi[k];
            xr[k] = (vr * dr + vi * di) / size;
            xi[k] = (vi * dr - vr * di) / size;
        }
        for (int i = 0; i < n; i++) {
            bRe[i] = xr[place[i]];
            bIm[i] = xi[place[i]];
        }
    }
}
