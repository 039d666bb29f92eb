package hushmaze.sound.wave;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Unknowns that belong to the same elements, taken together: those of one face, one edge or one corner. */
final class UnknownGroups {
    /** Unknowns of each group. */
    final List<int[]> unknowns = new ArrayList<>();
    /** Elements of each group, ascending. */
    final List<int[]> elements = new ArrayList<>();

    /**
     * @param elementUnknowns unknowns of each element
     * @param total number of unknowns; those that are in no element are in no group
     */
    UnknownGroups(List<int[]> elementUnknowns, int total) {
        int[] start = new int[total + 1];
        for (int[] members : elementUnknowns) {
            for (int unknown : members) {
                start[unknown + 1]++;
            }
        }
        for (int i = 0; i < total; i++) {
            start[i + 1] += start[i];
        }
        int[] next = start.clone();
        int[] list = new int[start[total]];
        for (int e = 0; e < elementUnknowns.size(); e++) {
            for (int unknown : elementUnknowns.get(e)) {
                list[next[unknown]++] = e;
            }
        }
        collect(start, list, total);
    }

    private void collect(int[] start, int[] list, int total) {
        Map<IntBuffer, Integer> known = new HashMap<>();
        int[] group = new int[total];
        int[] sizes = new int[total];
        for (int i = 0; i < total; i++) {
            group[i] = -1;
            if (start[i + 1] > start[i]) {
                int[] own = Arrays.copyOfRange(list, start[i], start[i + 1]);
                group[i] = known.computeIfAbsent(IntBuffer.wrap(own), k -> known.size());
                if (sizes[group[i]]++ == 0) {
                    elements.add(own);
                }
            }
        }
        for (int g = 0; g < elements.size(); g++) {
            unknowns.add(new int[sizes[g]]);
        }
        for (int i = total - 1; i >= 0; i--) {
            if (group[i] >= 0) {
                unknowns.get(group[i])[--sizes[group[i]]] = i;
            }
        }
    }

    int count() {
        return unknowns.size();
    }

    int size(int group) {
        return unknowns.get(group).length;
    }
}
