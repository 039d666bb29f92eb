package hushmaze.measure;

import hushmaze.quantity.Band;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import java.util.ArrayList;
import java.util.List;

/**
 * The measured reduction: level without the box less level with it, at the same places, with the same sound, band by band.
 *
 * <p>Several positions are averaged by energy. Background is taken off by energy where a reading is 3 dB or more above it; a
 * reading with the box nearer to it is taken as 3 dB lower and the reduction as a least one; without the box nearer to it,
 * there is no reduction. Source: practice of ISO 16283-1 and ISO 3744, from memory, whose limits are 6 dB and more; 3 dB is
 * our own choice, and the uncertainty grows with it.
 *
 * <p>Uncertainty, for about 95 of 100: with three or more positions on both sides t √(s_b²/n_b + s_a²/n_a) with s the
 * standard deviations in dB of n positions and Student's t for the smaller n less one, at least 1 dB; with fewer our own
 * allowance for two readings at one place, no source: 5 dB below 90 Hz, 3 dB below 220 Hz, 2 dB above. The part of a reading
 * grows by 1 / (1 - 10^(-d/10)) where background d dB below it was taken off: the derivative of that subtraction.
 *
 * @param bands octaves as soon as one of the readings is in octaves, else thirds
 * @param rows one per band, lowest first
 */
public record Reduction(BandSet bands, List<ReducedBand> rows) {
    /** Least distance to the background for its energy to be taken off, dB. */
    public static final double LEAST_OVER_BACKGROUND = 3;

    private static final int ENOUGH_POSITIONS = 3;
    private static final double LEAST_UNCERTAINTY = 1;
    private static final double VERY_LOW_HZ = 90;
    private static final double LOW_HZ = 220;
    /** Student's t for 95 of 100, both sides, by degrees of freedom from 1 (statistical tables, from memory). */
    private static final double[] STUDENT = {12.71, 4.30, 3.18, 2.78, 2.57, 2.45, 2.36, 2.31, 2.26, 2.23};

    private static final double STUDENT_MANY = 2.2;

    public Reduction {
        rows = List.copyOf(rows);
    }

    /**
     * Of readings.
     *
     * @param before positions without the box, at least one
     * @param after positions with the box, at least one
     * @param floor positions with the source off; may be empty
     */
    public static Reduction of(List<BandLevels> before, List<BandLevels> after, List<BandLevels> floor) {
        List<BandLevels> all = new ArrayList<>(before);
        all.addAll(after);
        all.addAll(floor);
        List<BandLevels> same = BandLevels.alike(all);
        int from = before.size();
        int to = from + after.size();
        Readings open = new Readings(same.subList(0, from));
        Readings box = new Readings(same.subList(from, to));
        Readings quiet = floor.isEmpty() ? null : new Readings(same.subList(to, same.size()));
        BandSet set = same.get(0).bands();
        List<ReducedBand> rows = new ArrayList<>();
        for (int i = 0; i < set.size(); i++) {
            rows.add(row(set.bands().get(i), i, open, box, quiet));
        }
        return new Reduction(set, rows);
    }

    private static ReducedBand row(Band band, int i, Readings open, Readings box, Readings quiet) {
        Double before = open.level(i);
        Double after = box.level(i);
        Double floor = quiet == null ? null : quiet.level(i);
        if (before == null || after == null) {
            return new ReducedBand(band, before, after, null, null, null, false);
        }
        if (floor == null) {
            double u = uncertainty(band, i, open, 1, box, 1);
            return new ReducedBand(band, before, after, before - after, u, null, false);
        }
        double over = after - floor;
        boolean hidden = NetLevels.isHidden(after, floor);
        double clean = NetLevels.net(after, floor);
        if (NetLevels.isHidden(before, floor)) {
            return new ReducedBand(band, null, clean, null, null, over, hidden);
        }
        double loud = NetLevels.net(before, floor);
        double u =
                uncertainty(band, i, open, growth(before - floor), box, growth(Math.max(over, LEAST_OVER_BACKGROUND)));
        return new ReducedBand(band, loud, clean, loud - clean, u, over, hidden);
    }

    private static double growth(double over) {
        return 1 / (1 - Energy.ratio(-over));
    }

    private static double uncertainty(
            Band band, int i, Readings open, double openGrows, Readings box, double boxGrows) {
        int least = Math.min(open.count(), box.count());
        double openVariance;
        double boxVariance;
        double factor;
        if (least < ENOUGH_POSITIONS) {
            double stated = stated(band);
            openVariance = stated * stated / 2;
            boxVariance = openVariance;
            factor = 1;
        } else {
            openVariance = open.variance(i) / open.count();
            boxVariance = box.variance(i) / box.count();
            factor = least - 1 <= STUDENT.length ? STUDENT[least - 2] : STUDENT_MANY;
        }
        double sum = openVariance * openGrows * openGrows + boxVariance * boxGrows * boxGrows;
        return Math.max(LEAST_UNCERTAINTY, factor * Math.sqrt(sum));
    }

    private static double stated(Band band) {
        double hz = band.centreHz();
        return hz < VERY_LOW_HZ ? 5 : hz < LOW_HZ ? 3 : 2;
    }

    /** The positions of one round. */
    private static final class Readings {
        private final List<BandLevels> positions;
        private final BandLevels mean;

        Readings(List<BandLevels> positions) {
            this.positions = positions;
            this.mean = BandLevels.mean(positions);
        }

        int count() {
            return positions.size();
        }

        Double level(int band) {
            return mean.covered(band) ? mean.level(band) : null;
        }

        /** Of the levels in dB, with one less than their number. */
        double variance(int band) {
            double average =
                    positions.stream().mapToDouble(p -> p.level(band)).average().orElseThrow();
            double squares = positions.stream()
                    .mapToDouble(p -> (p.level(band) - average) * (p.level(band) - average))
                    .sum();
            return squares / (positions.size() - 1);
        }
    }
}
