package hushmaze.sound.wave;

import java.util.ArrayList;
import java.util.List;

/**
 * Which functions a cell has: products of one function along each axis. Inner functions are inner along every axis and
 * belong to this cell alone; the others are shared.
 */
final class CellShape {
    final IntervalBasis[] basis;
    /** Shared functions, each as three places in the axes' lists. */
    final int[][] shared;

    private final int[] sharedIndex;

    CellShape(IntervalBasis... basis) {
        this.basis = basis.clone();
        List<int[]> list = new ArrayList<>();
        sharedIndex = new int[basis[0].size() * basis[1].size() * basis[2].size()];
        for (int a = 0; a < basis[0].size(); a++) {
            for (int b = 0; b < basis[1].size(); b++) {
                for (int c = 0; c < basis[2].size(); c++) {
                    if (a < basis[0].hats || b < basis[1].hats || c < basis[2].hats) {
                        sharedIndex[place(a, b, c)] = list.size();
                        list.add(new int[] {a, b, c});
                    }
                }
            }
        }
        shared = list.toArray(new int[0][]);
    }

    /** Place of a product of functions in the order of the axes. */
    int place(int a, int b, int c) {
        return (a * basis[1].size() + b) * basis[2].size() + c;
    }

    /** Number of a shared function. */
    int indexOf(int a, int b, int c) {
        return sharedIndex[place(a, b, c)];
    }

    /** Number of all functions, inner ones too. */
    int functionCount() {
        return sharedIndex.length;
    }

    int innerCount() {
        return basis[0].inner * basis[1].inner * basis[2].inner;
    }

    /** Inner function number q as three numbers of inner functions. */
    int[] inner(int q) {
        int n1 = basis[1].inner;
        int n2 = basis[2].inner;
        return new int[] {q / (n1 * n2), q / n2 % n1, q % n2};
    }
}
