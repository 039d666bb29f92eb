package hushmaze.sound.wave;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * In which order unknowns are eliminated when elements are added one after another: each as soon as its last element is in.
 * A step adds some elements and eliminates what is complete; what is not is carried on to the next step.
 */
final class FrontalPlan {
    /** Elements are added until a step has this many unknowns to eliminate: fewer would cost more copying than work. */
    private static final int ENOUGH = 16;

    /**
     * One step.
     *
     * @param from first element
     * @param to one past the last
     * @param index unknowns of the step's matrix: first those that are eliminated, then those that go on
     * @param eliminated how many are eliminated
     */
    record Step(int from, int to, int[] index, int eliminated) {
        int size() {
            return index.length;
        }
    }

    final List<Step> steps = new ArrayList<>();
    /** Size of the largest step. */
    final int widest;
    /** Complex multiplications of the factorisation, about. */
    final double multiplications;
    /** Complex numbers in the factor. */
    final long stored;

    FrontalPlan(List<int[]> unknowns, int[] late, int count) {
        int[] last = last(unknowns, late, count);
        int[] mark = new int[count];
        Arrays.fill(mark, -1);
        int[] going = new int[0];
        int from = 0;
        int complete = 0;
        int most = 0;
        double work = 0;
        long numbers = 0;
        int[] ends = endsPerElement(last, unknowns.size());
        for (int e = 0; e < unknowns.size(); e++) {
            complete += ends[e];
            if (complete < ENOUGH && e + 1 < unknowns.size()) {
                continue;
            }
            Step step = step(from, e, going, unknowns, last, mark);
            steps.add(step);
            going = Arrays.copyOfRange(step.index, step.eliminated, step.size());
            most = Math.max(most, step.size());
            double middle = step.size() - step.eliminated / 2.0;
            work += step.eliminated * middle * middle / 2;
            numbers += (long) step.size() * step.eliminated;
            from = e + 1;
            complete = 0;
        }
        widest = most;
        multiplications = work;
        stored = numbers;
    }

    private static int[] last(List<int[]> unknowns, int[] late, int count) {
        int[] last = new int[count];
        for (int e = 0; e < unknowns.size(); e++) {
            for (int unknown : unknowns.get(e)) {
                last[unknown] = e;
            }
        }
        for (int e = 0; e < unknowns.size(); e++) {
            int[] own = unknowns.get(e);
            int end = e;
            for (int unknown : own) {
                end = Math.max(end, last[unknown]);
            }
            for (int i = own.length - late[e]; i < own.length; i++) {
                last[own[i]] = end;
            }
        }
        return last;
    }

    private static int[] endsPerElement(int[] last, int elements) {
        int[] ends = new int[elements];
        for (int e : last) {
            ends[e]++;
        }
        return ends;
    }

    private static Step step(int from, int to, int[] going, List<int[]> unknowns, int[] last, int[] mark) {
        int most = going.length;
        for (int e = from; e <= to; e++) {
            most += unknowns.get(e).length;
        }
        int[] done = new int[most];
        int[] open = new int[most];
        int dones = 0;
        int opens = 0;
        for (int e = from - 1; e <= to; e++) {
            for (int unknown : e < from ? going : unknowns.get(e)) {
                if (mark[unknown] == from) {
                    continue;
                }
                mark[unknown] = from;
                if (last[unknown] <= to) {
                    done[dones++] = unknown;
                } else {
                    open[opens++] = unknown;
                }
            }
        }
        int[] index = Arrays.copyOf(done, dones + opens);
        System.arraycopy(open, 0, index, dones, opens);
        return new Step(from, to + 1, index, dones);
    }
}
