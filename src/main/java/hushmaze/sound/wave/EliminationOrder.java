package hushmaze.sound.wave;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;

/**
 * In which order groups of unknowns are eliminated: always the group that touches the fewest others (minimum degree). The
 * elements around it are merged into a new one over what they leave open.
 */
final class EliminationOrder {
    /**
     * One elimination.
     *
     * @param done groups that are eliminated
     * @param open groups that the new element is over
     * @param elements given elements that are merged
     * @param children earlier eliminations whose new elements are merged
     */
    record Front(int[] done, int[] open, int[] elements, int[] children) {}

    /** Children come before their parents. */
    final List<Front> fronts = new ArrayList<>();

    private final UnknownGroups groups;
    private final int given;
    /** Groups of each element, given ones first, new ones after them; null when merged. */
    private final List<int[]> members = new ArrayList<>();

    private final int[][] elementsOf;
    private final int[] degree;
    private final boolean[] gone;
    private final int[] mark;
    private int stamp;
    private final PriorityQueue<Long> queue = new PriorityQueue<>();

    EliminationOrder(UnknownGroups groups, int given) {
        this.groups = groups;
        this.given = given;
        int count = groups.count();
        elementsOf = new int[count][];
        degree = new int[count];
        gone = new boolean[count];
        mark = new int[count];
        int[] sizes = new int[given];
        for (int g = 0; g < count; g++) {
            elementsOf[g] = groups.elements.get(g);
            for (int e : elementsOf[g]) {
                sizes[e]++;
            }
        }
        for (int e = 0; e < given; e++) {
            members.add(new int[sizes[e]]);
        }
        for (int g = count - 1; g >= 0; g--) {
            for (int e : elementsOf[g]) {
                members.get(e)[--sizes[e]] = g;
            }
        }
        for (int g = 0; g < count; g++) {
            offer(g);
        }
        while (!queue.isEmpty()) {
            long best = queue.remove();
            int g = (int) best;
            if (!gone[g] && degree[g] == best >> 32) {
                eliminate(g);
            }
        }
    }

    private void offer(int g) {
        degree[g] = weight(union(g)) - groups.size(g);
        queue.add((long) degree[g] << 32 | g);
    }

    private int weight(int[] list) {
        int sum = 0;
        for (int g : list) {
            sum += groups.size(g);
        }
        return sum;
    }

    /** All groups that share an element with a group, itself included. */
    private int[] union(int g) {
        stamp++;
        int[] list = new int[64];
        int count = 0;
        for (int e : elementsOf[g]) {
            for (int other : members.get(e)) {
                if (mark[other] != stamp) {
                    mark[other] = stamp;
                    if (count == list.length) {
                        list = Arrays.copyOf(list, 2 * count);
                    }
                    list[count++] = other;
                }
            }
        }
        return Arrays.copyOf(list, count);
    }

    private void eliminate(int g) {
        int[] union = union(g);
        int[] merged = elementsOf[g];
        int[] done = new int[union.length];
        int[] open = new int[union.length];
        int dones = 0;
        int opens = 0;
        for (int other : union) {
            elementsOf[other] = without(elementsOf[other], merged);
            if (elementsOf[other].length == 0) {
                done[dones++] = other;
                gone[other] = true;
            } else {
                open[opens++] = other;
            }
        }
        int name = members.size();
        open = Arrays.copyOf(open, opens);
        members.add(open);
        for (int e : merged) {
            members.set(e, null);
        }
        fronts.add(new Front(
                Arrays.copyOf(done, dones),
                open,
                Arrays.stream(merged).filter(e -> e < given).toArray(),
                Arrays.stream(merged)
                        .filter(e -> e >= given)
                        .map(e -> e - given)
                        .toArray()));
        for (int other : open) {
            int[] own = elementsOf[other];
            elementsOf[other] = Arrays.copyOf(own, own.length + 1);
            elementsOf[other][own.length] = name;
        }
        for (int other : open) {
            offer(other);
        }
    }

    private static int[] without(int[] list, int[] removed) {
        int[] kept = new int[list.length];
        int count = 0;
        for (int e : list) {
            boolean stays = true;
            for (int r : removed) {
                stays &= e != r;
            }
            if (stays) {
                kept[count++] = e;
            }
        }
        return Arrays.copyOf(kept, count);
    }
}
