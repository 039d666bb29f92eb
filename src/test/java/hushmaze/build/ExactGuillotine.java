package hushmaze.build;

import java.util.ArrayList;
import java.util.List;

/**
 * The true least number of sheets for a handful of pieces that may all be turned, found by trying everything: every set of
 * pieces has a list of least boxes it can be cut from, made of the boxes of two smaller sets beside or above each other.
 * Whole millimetres; the kerf counts once between two boxes. Shares no code with the search.
 */
final class ExactGuillotine {
    private record Box(int length, int width) {}

    private final int kerf;
    private final Box sheet;
    private final List<List<Box>> boxes = new ArrayList<>();

    private ExactGuillotine(int[][] pieces, int length, int width, int kerf) {
        this.kerf = kerf;
        sheet = new Box(length, width);
        boxes.add(List.of());
        for (int set = 1; set < 1 << pieces.length; set++) {
            List<Box> found = new ArrayList<>();
            if (Integer.bitCount(set) == 1) {
                int[] piece = pieces[Integer.numberOfTrailingZeros(set)];
                keep(found, new Box(piece[0], piece[1]));
                keep(found, new Box(piece[1], piece[0]));
            }
            int lowest = Integer.lowestOneBit(set);
            for (int part = (set - 1) & set; part > 0; part = (part - 1) & set) {
                if ((part & lowest) != 0) {
                    join(found, boxes.get(part), boxes.get(set ^ part));
                }
            }
            boxes.add(found);
        }
    }

    /**
     * Least number of sheets.
     *
     * @param pieces length and width of each, mm
     */
    static int sheets(int[][] pieces, int length, int width, int kerf) {
        ExactGuillotine exact = new ExactGuillotine(pieces, length, width, kerf);
        int all = (1 << pieces.length) - 1;
        int[] least = new int[all + 1];
        for (int set = 1; set <= all; set++) {
            least[set] = Integer.MAX_VALUE;
            for (int part = set; part > 0; part = (part - 1) & set) {
                if (!exact.boxes.get(part).isEmpty() && least[set ^ part] < Integer.MAX_VALUE) {
                    least[set] = Math.min(least[set], least[set ^ part] + 1);
                }
            }
        }
        return least[all];
    }

    /** Whether all the pieces can be cut from one sheet so that a strip along it is left: then the first cut can run along it. */
    static boolean oneSheetWithAStripLeft(int[][] pieces, int length, int width, int kerf) {
        ExactGuillotine exact = new ExactGuillotine(pieces, length, width, kerf);
        return exact.boxes.get((1 << pieces.length) - 1).stream().anyMatch(box -> box.width() < width);
    }

    private void join(List<Box> found, List<Box> some, List<Box> others) {
        for (Box a : some) {
            for (Box b : others) {
                keep(found, new Box(a.length() + kerf + b.length(), Math.max(a.width(), b.width())));
                keep(found, new Box(Math.max(a.length(), b.length()), a.width() + kerf + b.width()));
            }
        }
    }

    private void keep(List<Box> found, Box box) {
        boolean tooLarge = box.length() > sheet.length() || box.width() > sheet.width();
        if (tooLarge || found.stream().anyMatch(b -> b.length() <= box.length() && b.width() <= box.width())) {
            return;
        }
        found.removeIf(b -> box.length() <= b.length() && box.width() <= b.width());
        found.add(box);
    }
}
