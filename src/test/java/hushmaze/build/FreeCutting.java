package hushmaze.build;

import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * Whether a handful of pieces that may all be turned can lie on a number of sheets without overlap, wherever the cuts run:
 * asked of a general constraint solver. The sheets stand side by side and no piece may lie across a joint.
 */
final class FreeCutting {
    private FreeCutting() {}

    /**
     * Least number of sheets, however they are cut.
     *
     * @param pieces length and width of each, whole numbers
     */
    static int sheets(int[][] pieces, int length, int width) {
        int count = 1;
        while (!possible(pieces, length, width, count)) {
            count++;
        }
        return count;
    }

    private static boolean possible(int[][] pieces, int length, int width, int count) {
        Model model = new Model();
        int n = pieces.length;
        IntVar[] x = new IntVar[n];
        IntVar[] y = new IntVar[n];
        IntVar[] lengths = new IntVar[n];
        IntVar[] widths = new IntVar[n];
        for (int i = 0; i < n; i++) {
            int a = pieces[i][0];
            int b = pieces[i][1];
            BoolVar turned = model.boolVar();
            lengths[i] = model.intVar(new int[] {Math.min(a, b), Math.max(a, b)});
            widths[i] = model.intVar(new int[] {Math.min(a, b), Math.max(a, b)});
            model.arithm(lengths[i], "+", model.intScaleView(turned, a - b), "=", a)
                    .post();
            model.arithm(widths[i], "-", model.intScaleView(turned, a - b), "=", b)
                    .post();
            x[i] = model.intVar(0, count * length - 1);
            y[i] = model.intVar(0, width - 1);
            IntVar sheet = model.intVar(0, Math.min(i, count - 1));
            IntVar along = model.intVar(0, length - 1);
            model.arithm(x[i], "-", model.intScaleView(sheet, length), "=", along)
                    .post();
            model.arithm(along, "+", lengths[i], "<=", length).post();
            model.arithm(y[i], "+", widths[i], "<=", width).post();
        }
        model.diffN(x, y, lengths, widths, true).post();
        return model.getSolver().solve();
    }
}
