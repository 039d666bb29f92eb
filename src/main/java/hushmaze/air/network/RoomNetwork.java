package hushmaze.air.network;

import hushmaze.quantity.InvalidValue;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Rooms with their ways in and out: the pressure in every room at which as much air goes in as comes out. Damped Newton
 * steps on the pressures; where they do not help, each room in turn by a bracketed root.
 *
 * @param fixed pressure of the places that hold theirs (house, outside, duct), Pa
 * @param free names of the rooms
 * @param branches ways between them
 */
public record RoomNetwork(Map<String, Double> fixed, List<String> free, List<Branch> branches) {
    private static final int MAX_STEPS = 300;
    private static final double RESIDUAL = 1e-9;
    private static final double MAX_PRESSURE = 1e6;

    /** A way from one place to another; its flow counts positive that way. */
    public record Branch(String name, String from, String to, BranchLaw law) {}

    /** What came out. */
    public sealed interface Outcome permits Solution, Unsolved {}

    /**
     * Solved.
     *
     * @param pressures of every place, Pa
     * @param flows of every way, m³/s
     * @param massResidual largest imbalance of a room over the largest flow
     */
    public record Solution(Map<String, Double> pressures, Map<String, Double> flows, double massResidual)
            implements Outcome {}

    /** Not solved, and at which room. */
    public record Unsolved(Reason reason, String room) implements Outcome {}

    /** Why not. */
    public enum Reason {
        /** No way that answers to pressure leads out of the room: its pressure is not bounded. */
        SEALED,
        /** The steps did not settle. */
        NOT_SETTLED
    }

    public RoomNetwork {
        fixed = Map.copyOf(fixed);
        free = List.copyOf(free);
        branches = List.copyOf(branches);
        for (Branch branch : branches) {
            for (String end : List.of(branch.from(), branch.to())) {
                if (!fixed.containsKey(end) && !free.contains(end)) {
                    throw new InvalidValue("branches", end, "a place of the network", "");
                }
            }
        }
    }

    /** Pressures and flows. */
    public Outcome solve() {
        Set<String> open = new HashSet<>(fixed.keySet());
        for (int i = 0; i <= free.size(); i++) {
            for (Branch b : branches) {
                if (b.law().answersPressure() && (open.contains(b.from()) || open.contains(b.to()))) {
                    open.add(b.from());
                    open.add(b.to());
                }
            }
        }
        for (String room : free) {
            if (!open.contains(room)) {
                return new Unsolved(Reason.SEALED, room);
            }
        }
        double[] p = new double[free.size()];
        for (int step = 0; step < MAX_STEPS; step++) {
            if (residual(p) <= RESIDUAL / 100) {
                break;
            }
            if (!newton(p)) {
                sweep(p);
            }
        }
        return residual(p) <= RESIDUAL ? solution(p) : new Unsolved(Reason.NOT_SETTLED, free.get(worst(p)));
    }

    private double pressure(String place, double[] p) {
        int i = free.indexOf(place);
        return i >= 0 ? p[i] : fixed.get(place);
    }

    private double flow(Branch b, double[] p) {
        return b.law().flow(pressure(b.from(), p) - pressure(b.to(), p));
    }

    /** Air into each room, m³/s. */
    private double[] inflow(double[] p) {
        double[] in = new double[p.length];
        for (Branch b : branches) {
            double q = flow(b, p);
            add(in, free.indexOf(b.from()), -q);
            add(in, free.indexOf(b.to()), q);
        }
        return in;
    }

    private static void add(double[] to, int i, double value) {
        if (i >= 0) {
            to[i] += value;
        }
    }

    private int worst(double[] p) {
        double[] in = inflow(p);
        int worst = 0;
        for (int i = 1; i < in.length; i++) {
            worst = Math.abs(in[i]) > Math.abs(in[worst]) ? i : worst;
        }
        return worst;
    }

    private double residual(double[] p) {
        double largest = 0;
        for (Branch b : branches) {
            largest = Math.max(largest, Math.abs(flow(b, p)));
        }
        return p.length == 0 || largest == 0 ? 0 : Math.abs(inflow(p)[worst(p)]) / largest;
    }

    private static double size(double[] v) {
        double sum = 0;
        for (double x : v) {
            sum += x * x;
        }
        return sum;
    }

    private boolean newton(double[] p) {
        int n = p.length;
        double[] in = inflow(p);
        double[][] a = new double[n][n + 1];
        for (int i = 0; i < n; i++) {
            a[i][i] = 1e-15;
            a[i][n] = in[i];
        }
        for (Branch b : branches) {
            double d = pressure(b.from(), p) - pressure(b.to(), p);
            double h = Math.max(1e-6, 1e-5 * Math.abs(d));
            double slope = (b.law().flow(d + h) - b.law().flow(d)) / h;
            int i = free.indexOf(b.from());
            int j = free.indexOf(b.to());
            if (i >= 0) {
                a[i][i] += slope;
            }
            if (j >= 0) {
                a[j][j] += slope;
            }
            if (i >= 0 && j >= 0) {
                a[i][j] -= slope;
                a[j][i] -= slope;
            }
        }
        double[] move = eliminate(a);
        double before = size(in);
        for (double share = 1; share > 1e-3; share /= 2) {
            double[] next = p.clone();
            for (int i = 0; i < n; i++) {
                next[i] += share * move[i];
            }
            if (size(inflow(next)) < before * (1 - share / 10)) {
                System.arraycopy(next, 0, p, 0, n);
                return true;
            }
        }
        return false;
    }

    /** The matrix is diagonally dominant: no pivoting is needed. */
    private static double[] eliminate(double[][] a) {
        int n = a.length;
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i < n; i++) {
                double f = a[i][k] / a[k][k];
                for (int j = k; j <= n; j++) {
                    a[i][j] -= f * a[k][j];
                }
            }
        }
        double[] x = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double sum = a[i][n];
            for (int j = i + 1; j < n; j++) {
                sum -= a[i][j] * x[j];
            }
            x[i] = sum / a[i][i];
        }
        return x;
    }

    private void sweep(double[] p) {
        for (int i = 0; i < p.length; i++) {
            int room = i;
            double[] at = p.clone();
            double reach = 1;
            while (reach < MAX_PRESSURE && inflowAt(at, room, p[i] - reach) * inflowAt(at, room, p[i] + reach) > 0) {
                reach *= 4;
            }
            if (reach < MAX_PRESSURE) {
                p[i] = Root.between(x -> inflowAt(at, room, x), p[i] - reach, p[i] + reach);
            }
        }
    }

    private double inflowAt(double[] p, int room, double pressure) {
        double[] at = p.clone();
        at[room] = pressure;
        return inflow(at)[room];
    }

    private Solution solution(double[] p) {
        Map<String, Double> pressures = new LinkedHashMap<>(fixed);
        for (int i = 0; i < p.length; i++) {
            pressures.put(free.get(i), p[i]);
        }
        Map<String, Double> flows = new LinkedHashMap<>();
        for (Branch b : branches) {
            flows.put(b.name(), flow(b, p));
        }
        return new Solution(pressures, flows, residual(p));
    }

    /** The same network with one way enlarged. */
    public RoomNetwork enlarged(String branch, double factor) {
        List<Branch> changed = new ArrayList<>();
        for (Branch b : branches) {
            boolean it = b.name().equals(branch);
            changed.add(it ? new Branch(b.name(), b.from(), b.to(), b.law().enlarged(factor)) : b);
        }
        return new RoomNetwork(fixed, free, changed);
    }
}
