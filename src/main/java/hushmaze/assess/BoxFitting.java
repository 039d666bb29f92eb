package hushmaze.assess;

import hushmaze.air.AirState;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.JointGap;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.BoxLoss;
import hushmaze.sound.PathCalculator;
import hushmaze.sound.PathMethods;
import hushmaze.sound.wall.BoxWalls;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The gap of the cover's joint and the flow resistivity of the liner that explain measured reductions best.
 *
 * <p>Method: the likely insertion loss of the box is worked out for a grid of both; of all pairs that one is taken whose sum
 * over the bands of ((measured less predicted) / s)² is least, with s² = (u/2)² + m², u the uncertainty of the reduction for 95
 * of 100 and m = 2 dB what a right model may still be off (our own judgement, no source). A band whose reduction may be more
 * than measured counts only where less is predicted. A value is held possible as long as the best of all pairs with it adds
 * no more than 3.84 to the least sum, times that sum over the number of bands less two where that is above one: the limit of
 * chi-square with one degree of freedom for 95 of 100 (statistical tables, from memory). A value is told only if both ends of
 * what is possible lie within the grid; a gap of nothing is a natural end.
 *
 * <p>The path is the quick wave's with each flow resistivity, shifted by what the best method of the prediction has over the
 * quick wave at the resistivity of the project, and so is the sound in every pass; walls, mouths and glued joints are those of the likely edge. Gaps that are not in the
 * cover's joint count as if they were.
 *
 * <p>Range: six bands or more that can be held against the prediction; flow resistivities from an eighth of the liner's to
 * eight times, gaps up to 5 mm. If even the best pair leaves more than {@link #EXPLAINED} of the sum a band, something
 * else is the matter, and neither is told.
 *
 * @param gap of the cover's joint, m
 * @param resistivity of the liner, Pa·s/m²; null for a box without one
 * @param explains whether the best pair explains the readings
 * @param before root of the mean square of measured less predicted, as the project has it, dB
 * @param after the same with the best pair, dB
 * @param bands how many bands it rests on
 */
public record BoxFitting(Value gap, Value resistivity, boolean explains, double before, double after, int bands) {
    /** Most of the sum that each band may leave for the readings to be explained. */
    static final double EXPLAINED = 2;

    private static final int LEAST_BANDS = 6;
    private static final double MODEL_DB = 2;
    private static final double CHI_SQUARE = 3.84;
    private static final int RESISTIVITIES = 13;
    private static final double RESISTIVITY_SPAN = 8;
    private static final double LEAST_RESISTIVITY = 500;
    private static final double MOST_RESISTIVITY = 500_000;
    private static final int GAPS = 60;
    private static final double NARROWEST = 5e-6;
    private static final double WIDEST = 5e-3;

    /**
     * What the readings say of one number.
     *
     * @param least that is possible; null if nothing that was tried is too small
     * @param likely that explains the readings best
     * @param most that is possible; null if nothing that was tried is too large
     */
    public record Value(Double least, double likely, Double most) {
        /** Whether the readings hold it in from both sides. */
        public boolean told() {
            return least != null && most != null;
        }
    }

    /** Whether the gap can be kept. */
    public boolean tellsGap() {
        return explains && gap.told();
    }

    /** Whether the flow resistivity can be kept. */
    public boolean tellsResistivity() {
        return explains && resistivity != null && resistivity.told();
    }

    /**
     * The gap as a project keeps it.
     *
     * @param source which readings
     * @throws IllegalStateException if it is not told
     */
    public JointGap asGap(String source) {
        require(tellsGap());
        return new JointGap(gap.least(), gap.likely(), gap.most(), source);
    }

    /**
     * A liner with what was found for its flow resistivity.
     *
     * @param source which readings; what the liner's own source says is left out
     * @throws IllegalStateException if it is not told
     */
    public Liner asLiner(Liner liner, String source) {
        require(tellsResistivity());
        return liner.resisting(resistivity.likely(), resistivity.least(), resistivity.most(), source);
    }

    private static void require(boolean told) {
        if (!told) {
            throw new IllegalStateException("the readings do not tell");
        }
    }

    /**
     * Fits a box to its readings.
     *
     * @param project the path is of
     * @param predicted the path
     * @param comparison of its readings with the prediction
     * @return nothing if too few bands can be held against it
     */
    public static Optional<BoxFitting> of(
            Project project, PathResult predicted, Comparison comparison, Progress progress) {
        List<ComparedBand> rows =
                comparison.rows().stream().filter(ComparedBand::judged).toList();
        if (rows.size() < LEAST_BANDS) {
            return Optional.empty();
        }
        return Optional.of(new Fitter(project, predicted, comparison).fit(progress));
    }

    /** One box held against one set of readings. */
    private static final class Fitter {
        private final PathResult predicted;
        private final VentPath path;
        private final List<ComparedBand> rows;
        private final BandSet set;
        private final double soundSpeed;
        private final PathCalculator paths;
        private final Spectrum shift;
        /** The same for the sound in every pass. */
        private final List<Spectrum> levelShifts;

        private final double[] gaps = new double[GAPS + 1];

        Fitter(Project project, PathResult predicted, Comparison comparison) {
            this.predicted = predicted;
            this.path = predicted.path();
            this.rows = comparison.rows();
            this.set = comparison.bands();
            this.soundSpeed = AirState.of(project.room()).soundSpeed();
            this.paths = new PathCalculator(soundSpeed);
            PathMethods known = predicted.sound().loss().methods();
            PathMethods quick = methods(predicted.solid());
            this.shift = known.best().minus(quick.quickLoss());
            this.levelShifts = IntStream.range(0, quick.levels().size())
                    .mapToObj(pass ->
                            known.levels().get(pass).minus(quick.levels().get(pass)))
                    .toList();
            for (int i = 1; i < gaps.length; i++) {
                gaps[i] = NARROWEST * Math.pow(WIDEST / NARROWEST, (i - 1.0) / (GAPS - 1));
            }
        }

        BoxFitting fit(Progress progress) {
            double[] resistivities = resistivities();
            double[][] sums = IntStream.range(0, resistivities.length)
                    .parallel()
                    .mapToObj(i -> {
                        progress.check((double) i / resistivities.length, path.name());
                        return sums(resistivities[i]);
                    })
                    .toArray(double[][]::new);
            int bestLiner = 0;
            int bestGap = 0;
            for (int i = 0; i < sums.length; i++) {
                for (int k = 0; k < gaps.length; k++) {
                    if (sums[i][k] < sums[bestLiner][bestGap]) {
                        bestLiner = i;
                        bestGap = k;
                    }
                }
            }
            double least = sums[bestLiner][bestGap];
            int judged = (int) rows.stream().filter(ComparedBand::judged).count();
            double limit = least + CHI_SQUARE * Math.max(1, least / Math.max(1, judged - 2));
            Value gap = value(gaps, leastBy(sums, true), bestGap, limit, true);
            Value resistivity = path.box().liner() == null
                    ? null
                    : value(resistivities, leastBy(sums, false), bestLiner, limit, false);
            Spectrum best = tried(resistivities[bestLiner]).with(gaps[bestGap]);
            return new BoxFitting(
                    gap, resistivity, least <= EXPLAINED * judged, misfit(likely()), misfit(inBands(best)), judged);
        }

        /** Flow resistivities to try; the one of the project is among them. */
        private double[] resistivities() {
            Liner liner = path.box().liner();
            if (liner == null) {
                return new double[1];
            }
            List<Double> tried = new ArrayList<>();
            int middle = RESISTIVITIES / 2;
            for (int i = 0; i < RESISTIVITIES; i++) {
                double value = liner.flowResistivity() * Math.pow(RESISTIVITY_SPAN, (double) (i - middle) / middle);
                if (value >= LEAST_RESISTIVITY && value <= MOST_RESISTIVITY) {
                    tried.add(value);
                }
            }
            return tried.stream().mapToDouble(Double::doubleValue).toArray();
        }

        private double[] sums(double resistivity) {
            Tried tried = tried(resistivity);
            double[] sums = new double[gaps.length];
            for (int k = 0; k < gaps.length; k++) {
                double[] expected = inBands(tried.with(gaps[k]));
                for (int i = 0; i < rows.size(); i++) {
                    sums[k] += rows.get(i).judged() ? square(rows.get(i), expected[i]) : 0;
                }
            }
            return sums;
        }

        /** The box with one flow resistivity: its walls, the loss along its path and the sound in every pass. */
        private record Tried(BoxWalls walls, Spectrum along, List<Spectrum> inside) {
            /** Likely loss with a gap of the cover's joint, m. */
            Spectrum with(double gap) {
                return BoxLoss.likely(walls, along, inside, gap);
            }
        }

        private Tried tried(double resistivity) {
            Solid solid = solid(resistivity);
            PathMethods methods = methods(solid);
            return new Tried(
                    BoxWalls.of(solid, path.brief().opening(), soundSpeed),
                    methods.quickLoss().plus(shift),
                    inside(methods));
        }

        private List<Spectrum> inside(PathMethods methods) {
            return IntStream.range(0, levelShifts.size())
                    .mapToObj(pass -> methods.levels().get(pass).plus(levelShifts.get(pass)))
                    .toList();
        }

        private PathMethods methods(Solid solid) {
            return paths.methods(solid, path.brief().opening(), PathCalculator.Quick.PLAIN, null);
        }

        private Solid solid(double resistivity) {
            Box box = path.box();
            Liner liner = box.liner();
            if (liner == null || resistivity == liner.flowResistivity()) {
                return predicted.solid();
            }
            return SolidBuilder.build(
                    box.withLiner(liner.resisting(resistivity, resistivity, resistivity, liner.source())));
        }

        /** Measured less expected, dB; nothing where the reduction may be more than measured and more is expected. */
        private static double off(ComparedBand row, double expected) {
            double off = row.reduction() - expected;
            return row.atLeast() && off < 0 ? 0 : off;
        }

        private static double square(ComparedBand row, double expected) {
            double off = off(row, expected);
            double u = row.uncertainty() / 2;
            return off * off / (u * u + MODEL_DB * MODEL_DB);
        }

        /** A loss in third octaves in the bands of the readings; octaves as heard with the path's own noise. */
        private double[] inBands(Spectrum thirds) {
            if (set == BandSet.THIRD_OCTAVE) {
                return thirds.values();
            }
            Spectrum noise = Spectrum.of(
                    BandSet.THIRD_OCTAVE, i -> predicted.thirds().get(i).noise());
            return noise.levelsInOctaves()
                    .minus(noise.minus(thirds).levelsInOctaves())
                    .values();
        }

        private double[] likely() {
            return rows.stream().mapToDouble(ComparedBand::likely).toArray();
        }

        private double misfit(double[] expected) {
            double squares = 0;
            int count = 0;
            for (int i = 0; i < rows.size(); i++) {
                ComparedBand row = rows.get(i);
                if (row.judged()) {
                    double off = off(row, expected[i]);
                    squares += off * off;
                    count++;
                }
            }
            return Math.sqrt(squares / count);
        }

        /** Least sums with each gap, or with each flow resistivity. */
        private static double[] leastBy(double[][] sums, boolean byGap) {
            double[] least = new double[byGap ? sums[0].length : sums.length];
            Arrays.fill(least, Double.POSITIVE_INFINITY);
            for (int i = 0; i < sums.length; i++) {
                for (int k = 0; k < sums[i].length; k++) {
                    int at = byGap ? k : i;
                    least[at] = Math.min(least[at], sums[i][k]);
                }
            }
            return least;
        }

        private static double between(double low, double high) {
            return low == 0 ? high / 2 : Math.sqrt(low * high);
        }

        private static Value value(double[] tried, double[] sums, int best, double limit, boolean zeroIsEnd) {
            int from = best;
            while (from > 0 && sums[from - 1] <= limit) {
                from--;
            }
            int to = best;
            while (to < tried.length - 1 && sums[to + 1] <= limit) {
                to++;
            }
            Double least = zeroIsEnd ? Double.valueOf(0) : null;
            // an end lies somewhere between what is possible and what is not any more
            return new Value(
                    from > 0 ? Double.valueOf(between(tried[from - 1], tried[from])) : least,
                    tried[best],
                    to < tried.length - 1 ? Double.valueOf(between(tried[to], tried[to + 1])) : null);
        }
    }
}
