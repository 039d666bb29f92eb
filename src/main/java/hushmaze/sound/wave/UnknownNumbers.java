package hushmaze.sound.wave;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Numbers of unknowns. Cells that share a function share its unknown if one can go from one to the other through faces;
 * cells that only touch along an edge or at a corner do not, or sound would leak through a line.
 */
final class UnknownNumbers {
    private final AxisCuts[] cuts;
    private final AxisGrid[] grids;
    private final BlockGrid blocks;
    /** Number of each function's unknown; -1 if it has none yet, -2 if it has several. */
    private final int[] number;
    /** Of functions with several unknowns, the number by the cell's place around the function. */
    private final Map<Integer, int[]> apart = new HashMap<>();

    private int count;

    UnknownNumbers(BlockGrid blocks, AxisCuts[] cuts, AxisGrid[] grids) {
        this.blocks = blocks;
        this.cuts = cuts;
        this.grids = grids;
        number = new int[grids[0].size() * grids[1].size() * grids[2].size()];
        Arrays.fill(number, -1);
    }

    /** Number of unknowns so far. */
    int count() {
        return count;
    }

    /** A new unknown that belongs to one cell alone. */
    int next() {
        return count++;
    }

    /**
     * Unknown of a product of functions, one of each axis.
     *
     * @param function numbers of the functions
     * @param cell intervals of a filled cell on which the product is not zero
     */
    int of(int[] function, int[] cell) {
        int at = (function[0] * grids[1].size() + function[1]) * grids[2].size() + function[2];
        if (number[at] == -1) {
            assign(at, function, cell);
        }
        return number[at] == -2 ? apart.get(at)[side(function, cell)] : number[at];
    }

    /** One bit an axis: whether the cell lies above the line of a hat. */
    private int side(int[] function, int[] cell) {
        int side = 0;
        for (int a = 0; a < 3; a++) {
            if (isHat(function, a) && cell[a] == function[a]) {
                side |= 1 << a;
            }
        }
        return side;
    }

    private boolean isHat(int[] function, int axis) {
        return !cuts[axis].constant && function[axis] < cuts[axis].line.length;
    }

    private void assign(int at, int[] function, int[] cell) {
        int hats = 0;
        for (int a = 0; a < 3; a++) {
            hats |= isHat(function, a) ? 1 << a : 0;
        }
        if (Integer.bitCount(hats) < 2) {
            number[at] = count++;
            return;
        }
        int[] part = parts(function, cell, hats);
        int parts = Arrays.stream(part).max().orElse(0) + 1;
        if (parts <= 1) {
            number[at] = count++;
            return;
        }
        number[at] = -2;
        for (int i = 0; i < part.length; i++) {
            part[i] += count;
        }
        count += parts;
        apart.put(at, part);
    }

    /** For each of the eight sides the connected part it lies in, counted from zero; -1 if there is no filled cell. */
    private int[] parts(int[] function, int[] cell, int hats) {
        int[] part = new int[8];
        Arrays.fill(part, -1);
        int parts = 0;
        for (int side = 0; side < 8; side++) {
            if (part[side] < 0 && isFilled(side, function, cell, hats)) {
                flood(side, parts++, part, function, cell, hats);
            }
        }
        return part;
    }

    private void flood(int side, int name, int[] part, int[] function, int[] cell, int hats) {
        part[side] = name;
        for (int a = 0; a < 3; a++) {
            int next = side ^ 1 << a;
            if ((hats & 1 << a) != 0 && part[next] < 0 && isFilled(next, function, cell, hats)) {
                flood(next, name, part, function, cell, hats);
            }
        }
    }

    private boolean isFilled(int side, int[] function, int[] cell, int hats) {
        if ((side & ~hats) != 0) {
            return false;
        }
        int[] block = new int[3];
        for (int a = 0; a < 3; a++) {
            int interval = (hats & 1 << a) == 0 ? cell[a] : function[a] - 1 + (side >> a & 1);
            if (interval < 0 || interval >= cuts[a].intervals()) {
                return false;
            }
            block[a] = cuts[a].blockInterval[interval];
        }
        return blocks.filled(block[0], block[1], block[2]);
    }
}
