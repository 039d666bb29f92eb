package hushmaze.drawing.axon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Stretches of a line, each from a low to a high end; none touches another. */
final class Stretches {
    /** Stretches shorter than this are none, m. */
    static final double LEAST = 1e-9;

    /** A stretch. */
    record Stretch(double low, double high) {}

    private final List<Stretch> all;

    private Stretches(List<Stretch> all) {
        this.all = all;
    }

    /** Stretches that may overlap, put together. */
    static Stretches union(List<Stretch> any) {
        List<Stretch> joined = new ArrayList<>();
        List<Stretch> sorted = new ArrayList<>(any);
        sorted.sort(Comparator.comparingDouble(Stretch::low));
        for (Stretch s : sorted) {
            if (s.high() - s.low() <= LEAST) {
                continue;
            }
            int last = joined.size() - 1;
            if (last >= 0 && s.low() <= joined.get(last).high() + LEAST) {
                Stretch before = joined.get(last);
                joined.set(last, new Stretch(before.low(), Math.max(before.high(), s.high())));
            } else {
                joined.add(s);
            }
        }
        return new Stretches(joined);
    }

    static Stretches of(double low, double high) {
        return union(List.of(new Stretch(low, high)));
    }

    List<Stretch> all() {
        return all;
    }

    Stretches minus(Stretches other) {
        List<Stretch> left = new ArrayList<>();
        for (Stretch s : all) {
            double low = s.low();
            for (Stretch o : other.all) {
                if (o.high() > low && o.low() < s.high()) {
                    left.add(new Stretch(low, o.low()));
                    low = Math.max(low, o.high());
                }
            }
            left.add(new Stretch(low, s.high()));
        }
        return union(left);
    }

    Stretches and(Stretches other) {
        return minus(minus(other));
    }
}
