package hushmaze.sound;

import hushmaze.project.Opening;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Solid;
import hushmaze.sound.estimate.PathEstimate;
import hushmaze.sound.estimate.PathEstimate.Leg;
import hushmaze.sound.wall.BoxWalls;
import hushmaze.sound.wall.BoxWalls.Edge;
import java.util.List;

/**
 * Insertion loss of a whole box: the path and the route through its walls together by energy.
 *
 * <p>T = Tp + Tw (1 - Tp), IL = -10 lg T, with Tw and Tp what walls and path let through: what has gone through one is not
 * in the other any more. For losses of 10 dB and more this is the plain sum.
 *
 * <p>One path method exists, so the range is an allowance for method and workmanship, and the factors are our own judgement
 * without a source. Pessimistic: lining × 0.7, turns × 0.5, chamber × 0.6, no area steps, mouths only where they cost.
 * Optimistic: the estimate × 1.15. The sound inside the box that reaches the walls falls by the same reduced or raised
 * losses.
 *
 * @param estimate of the path, term by term
 * @param path range of the path alone, third octaves
 * @param walls range of the route through the walls, third octaves
 * @param thirds range of the whole box, third octaves
 * @param octaves range of the whole box per octave, for equal incident energy in the three thirds
 */
public record BoxLoss(PathEstimate estimate, LossRange path, LossRange walls, LossRange thirds, LossRange octaves) {
    private static final double LOW_LINING = 0.7;
    private static final double LOW_TURNS = 0.5;
    private static final double LOW_CHAMBER = 0.6;
    private static final double HIGH_ALL = 1.15;

    /**
     * The loss of a box over an opening.
     *
     * @param solid of the box
     * @param opening the bare opening
     * @param soundSpeed m/s
     */
    public static BoxLoss of(Solid solid, Opening opening, double soundSpeed) {
        PathEstimate estimate = PathEstimate.of(solid, opening, soundSpeed);
        LossRange path = path(estimate);
        BoxWalls boards = BoxWalls.of(solid, opening, soundSpeed);
        LossRange walls = new LossRange(
                boards.loss(scaled(estimate.legs(), LOW_TURNS, LOW_LINING), Edge.LOW),
                boards.loss(estimate.legs(), Edge.LIKELY),
                boards.loss(scaled(estimate.legs(), HIGH_ALL, HIGH_ALL), Edge.HIGH));
        LossRange thirds = new LossRange(
                together(path.low(), walls.low()),
                together(path.likely(), walls.likely()),
                together(path.high(), walls.high()));
        return new BoxLoss(estimate, path, walls, thirds, thirds.inOctaves());
    }

    /** Pessimistic edge of the path alone, third octaves, dB. */
    public Spectrum pathLow() {
        return path.low();
    }

    private static LossRange path(PathEstimate estimate) {
        Spectrum lining = estimate.thirdsOf("lining");
        Spectrum turns = estimate.thirdsOf("turn");
        Spectrum chamber = estimate.thirdsOf("chamber");
        Spectrum mouths = estimate.thirdsOf("mouths");
        Spectrum likely = estimate.thirds();
        Spectrum low = Spectrum.of(
                BandSet.THIRD_OCTAVE,
                i -> LOW_LINING * lining.value(i)
                        + LOW_TURNS * turns.value(i)
                        + LOW_CHAMBER * chamber.value(i)
                        + Math.min(0, mouths.value(i)));
        Spectrum high = Spectrum.of(BandSet.THIRD_OCTAVE, i -> Math.max(likely.value(i), HIGH_ALL * likely.value(i)));
        return new LossRange(low, likely, high);
    }

    private static List<Leg> scaled(List<Leg> legs, double entry, double along) {
        return legs.stream()
                .map(leg -> new Leg(leg.pass(), times(leg.entry(), entry), times(leg.along(), along)))
                .toList();
    }

    private static Spectrum times(Spectrum loss, double factor) {
        return Spectrum.of(loss.bands(), i -> factor * loss.value(i));
    }

    private static Spectrum together(Spectrum path, Spectrum walls) {
        return Spectrum.of(BandSet.THIRD_OCTAVE, i -> {
            double throughWalls = Energy.ratio(-walls.value(i));
            double throughPath = Energy.ratio(-path.value(i));
            // A path that gains, by mouths larger than the opening, takes nothing from the walls.
            return -Energy.db(throughPath + throughWalls * (1 - Math.min(1, throughPath)));
        });
    }
}
