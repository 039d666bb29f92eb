package hushmaze.sound.wave;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Steps of the factorisation. A step adds some elements and what earlier steps, its children, have left open, eliminates
 * what is complete and leaves the rest to its parent. The order is that of {@link EliminationOrder}, small steps joined where
 * that saves time.
 */
final class FrontalPlan {
    /** Cost of assembling a step, in multiplications per number of its matrix, and of a step as such. Measured. */
    private static final double ASSEMBLY = 2;

    private static final double STEP = 2000;

    /**
     * One step.
     *
     * @param elements that are added
     * @param children earlier steps whose rest is added
     * @param index unknowns of the step's matrix: first those that are eliminated, then those that are left
     * @param eliminated how many are eliminated
     */
    record Step(int[] elements, int[] children, int[] index, int eliminated) {
        int size() {
            return index.length;
        }
    }

    /** Children come before their parents. */
    final List<Step> steps = new ArrayList<>();
    /** Complex multiplications of the factorisation, about. */
    final double multiplications;
    /** Complex numbers in the factor. */
    final long stored;
    /** Most complex numbers in the matrices of open steps at a time. */
    final long open;
    /** Size of the largest step. */
    final int widest;

    private final UnknownGroups groups;
    private final List<Draft> drafts = new ArrayList<>();

    /** A step in the making. */
    private static final class Draft {
        final List<Integer> elements = new ArrayList<>();
        final List<Draft> children = new ArrayList<>();
        final List<int[]> done = new ArrayList<>();
        int[] open;
        int eliminated;
        int left;
        int number = -1;
        /** Elements whose late unknowns are left open. */
        List<Integer> waiting = List.of();

        double cost() {
            double m = eliminated + left;
            // sum of squares from left to m, halved, and copying
            return (m * m * m - (double) left * left * left) / 6 + ASSEMBLY * m * m + STEP;
        }
    }

    /**
     * @param elements unknowns of each element; those at its end that are late belong to it alone, and are eliminated
     *     after all others of the element
     * @param late number of late unknowns of each element
     * @param count number of all unknowns
     */
    FrontalPlan(List<int[]> elements, int[] late, int count) {
        List<int[]> early = new ArrayList<>();
        for (int e = 0; e < late.length; e++) {
            int[] all = elements.get(e);
            early.add(late[e] == 0 ? all : Arrays.copyOf(all, all.length - late[e]));
        }
        groups = new UnknownGroups(early, count);
        EliminationOrder order = new EliminationOrder(groups, elements.size());
        boolean[] isChild = new boolean[order.fronts.size()];
        for (EliminationOrder.Front front : order.fronts) {
            drafts.add(draft(front));
            for (int child : front.children()) {
                isChild[child] = true;
            }
        }
        for (int i = 0; i < isChild.length; i++) {
            if (!isChild[i]) {
                number(drafts.get(i), elements, late);
            }
        }
        stored = steps.stream().mapToLong(s -> (long) s.size() * s.eliminated()).sum();
        widest = steps.stream().mapToInt(Step::size).max().orElse(0);
        multiplications = steps.stream().mapToDouble(FrontalPlan::work).sum();
        open = mostOpen();
    }

    private static double work(Step step) {
        double m = step.size();
        double rest = m - step.eliminated();
        return (m * m * m - rest * rest * rest) / 6;
    }

    private Draft draft(EliminationOrder.Front front) {
        Draft draft = new Draft();
        for (int e : front.elements()) {
            draft.elements.add(e);
        }
        draft.done.add(front.done());
        draft.open = front.open();
        draft.eliminated = weight(front.done());
        draft.left = weight(front.open());
        for (int child : front.children()) {
            take(draft, drafts.get(child));
        }
        return draft;
    }

    /** Takes a child in: as a part of the step if that is cheaper, as a step before it otherwise. */
    private static void take(Draft draft, Draft child) {
        double apart = draft.cost() + child.cost();
        draft.eliminated += child.eliminated;
        if (draft.cost() < apart) {
            draft.elements.addAll(child.elements);
            draft.children.addAll(child.children);
            draft.done.addAll(0, child.done);
        } else {
            draft.eliminated -= child.eliminated;
            draft.children.add(child);
        }
    }

    private int weight(int[] list) {
        int sum = 0;
        for (int g : list) {
            sum += groups.size(g);
        }
        return sum;
    }

    /** Numbers a step and all before it, depth first, without recursion: the tree may be as deep as the path is long. */
    private void number(Draft root, List<int[]> elements, int[] late) {
        List<Draft> stack = new ArrayList<>();
        stack.add(root);
        while (!stack.isEmpty()) {
            Draft top = stack.get(stack.size() - 1);
            Draft next =
                    top.children.stream().filter(c -> c.number < 0).findFirst().orElse(null);
            if (next != null) {
                stack.add(next);
            } else {
                stack.remove(stack.size() - 1);
                top.number = steps.size();
                steps.add(step(top, elements, late));
            }
        }
    }

    private Step step(Draft draft, List<int[]> elements, int[] late) {
        int[] own = draft.elements.stream().mapToInt(e -> e).toArray();
        int[] children = draft.children.stream().mapToInt(c -> c.number).toArray();
        List<int[]> parts = new ArrayList<>();
        for (int[] done : draft.done) {
            for (int g : done) {
                parts.add(groups.unknowns.get(g));
            }
        }
        List<int[]> after = new ArrayList<>();
        for (int g : draft.open) {
            after.add(groups.unknowns.get(g));
        }
        addLate(draft, elements, late, parts, after);
        int eliminated = parts.stream().mapToInt(p -> p.length).sum();
        parts.addAll(after);
        int[] index = new int[parts.stream().mapToInt(p -> p.length).sum()];
        int at = 0;
        for (int[] part : parts) {
            System.arraycopy(part, 0, index, at, part.length);
            at += part.length;
        }
        return new Step(own, children, index, eliminated);
    }

    /** Late unknowns wait until nothing else of their element is open. */
    private void addLate(Draft draft, List<int[]> elements, int[] late, List<int[]> parts, List<int[]> after) {
        List<Integer> carried = new ArrayList<>(draft.elements);
        for (Draft child : draft.children) {
            carried.addAll(child.waiting);
        }
        List<Integer> still = new ArrayList<>();
        for (int e : carried) {
            if (late[e] > 0) {
                int[] all = elements.get(e);
                int[] own = Arrays.copyOfRange(all, all.length - late[e], all.length);
                boolean open = Arrays.stream(draft.open).anyMatch(g -> contains(groups.elements.get(g), e));
                (open ? after : parts).add(own);
                if (open) {
                    still.add(e);
                }
            }
        }
        draft.waiting = still;
    }

    private static boolean contains(int[] sorted, int value) {
        return Arrays.binarySearch(sorted, value) >= 0;
    }

    private long mostOpen() {
        long now = 0;
        long most = 0;
        for (Step step : steps) {
            now += (long) step.size() * step.size();
            most = Math.max(most, now);
            for (int child : step.children()) {
                now -= (long) steps.get(child).size() * steps.get(child).size();
            }
        }
        return most;
    }
}
