package hushmaze.drawing.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Heights of the strips of a column: what it is short of is taken from those that stretch, what is left is given to them. */
final class Heights {
    private Heights() {}

    /**
     * All give or take the same, as far as they can.
     *
     * @param left between the last strip and the foot of the column, mm; below zero if the strips reach beyond it
     * @param last whether nothing follows the column
     */
    static double[] of(List<Row> rows, double left, boolean last) {
        double[] heights = rows.stream().mapToDouble(Row::height).toArray();
        double[] room = rows.stream().mapToDouble(row -> room(row, left, last)).toArray();
        List<Integer> free = new ArrayList<>(IntStream.range(0, room.length)
                .filter(i -> room[i] != 0)
                .boxed()
                .toList());
        double rest = left;
        while (!free.isEmpty()) {
            double share = rest / free.size();
            List<Integer> full = free.stream()
                    .filter(i -> Math.abs(room[i]) <= Math.abs(share))
                    .toList();
            for (int i : full.isEmpty() ? free : full) {
                double by = full.isEmpty() ? share : room[i];
                heights[i] += by;
                rest -= by;
            }
            free.removeAll(full.isEmpty() ? List.copyOf(free) : full);
        }
        return heights;
    }

    /** By how much a strip can change, mm. */
    private static double room(Row row, double left, boolean last) {
        Stretch stretch = row.stretch();
        if (stretch == null || left == 0 || left > 0 && last && !stretch.last()) {
            return 0;
        }
        return (left < 0 ? stretch.least() : stretch.most()) - row.height();
    }
}
