package hushmaze.sound;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.sound.wall.BoxWalls;
import hushmaze.sound.wall.BoxWalls.Edge;
import hushmaze.sound.wall.WallChoices;
import hushmaze.sound.wall.WallRoute;
import java.util.List;

/**
 * Insertion loss of a whole box: the path and the route through its walls together by energy.
 *
 * <p>T = Tp + Tw (1 - Tp), IL = -10 lg T, with Tw and Tp what walls and path let through: what has gone through one is not
 * in the other any more. For losses of 10 dB and more this is the plain sum.
 *
 * <p>The range of the path is {@link PathMethods#range}, that of the walls {@link BoxWalls}. How far the sound inside has
 * fallen by each pass is taken from the best method that was run; at the edges it falls in the same ratio as the path's loss is less or
 * more than likely.
 *
 * @param methods the path by every method
 * @param path range of the path alone, third octaves
 * @param walls range of the route through the walls, third octaves
 * @param lowWalls that route's parts at the pessimistic edge
 * @param thirds range of the whole box, third octaves
 */
public record BoxLoss(PathMethods methods, LossRange path, LossRange walls, WallRoute lowWalls, LossRange thirds) {
    /** Losses below this are too small for a ratio, dB. */
    private static final double SMALL = 1;

    /**
     * The loss of a box.
     *
     * @param boards walls of the box
     * @param methods the path by every method that was run
     */
    public static BoxLoss of(BoxWalls boards, PathMethods methods) {
        LossRange path = methods.range();
        List<Spectrum> inside = methods.levels();
        WallRoute low = boards.route(levels(inside, path.likely(), path.low()), Edge.LOW);
        WallRoute likely = boards.route(inside, Edge.LIKELY);
        WallRoute high = boards.route(levels(inside, path.likely(), path.high()), Edge.HIGH);
        LossRange walls = new LossRange(low.loss(), likely.loss(), high.loss());
        LossRange thirds = new LossRange(
                together(path.low(), low.loss()),
                together(path.likely(), likely.loss()),
                together(path.high(), high.loss()));
        return new BoxLoss(methods, path, walls, low, thirds);
    }

    /**
     * Pessimistic edge of the whole box alone, third octaves, dB: what {@link #of} says of it, without the other edges.
     *
     * @param boards walls of the box
     * @param methods the path by every method that was run
     */
    public static Spectrum low(BoxWalls boards, PathMethods methods) {
        LossRange path = methods.range();
        WallRoute walls = boards.route(levels(methods.levels(), path.likely(), path.low()), Edge.LOW);
        return together(path.low(), walls.loss());
    }

    /**
     * Likely insertion loss of a whole box with a gap all along its cover's joint, third octaves, dB.
     *
     * @param boards walls of the box
     * @param path loss of the path, third octaves, dB
     * @param inside sound in every pass over the wave that comes into the opening, third octaves, dB
     * @param gap m
     */
    public static Spectrum likely(BoxWalls boards, Spectrum path, List<Spectrum> inside, double gap) {
        return together(path, boards.routeWithCoverGap(inside, Edge.LIKELY, gap).loss());
    }

    /**
     * The same box with its cover's joint open all along, at the pessimistic edge and in the likely figure.
     *
     * @param boards walls of the box
     * @param gap m; at least what the pessimistic edge has where no gap was measured
     */
    public BoxLoss withCoverGap(BoxWalls boards, double gap) {
        InvalidValue.within("gap", gap, Edge.LOW.coverGap(), 0.1, Unit.MILLIMETRE);
        List<Spectrum> inside = methods.levels();
        WallRoute low = boards.routeWithCoverGap(levels(inside, path.likely(), path.low()), Edge.LOW, gap);
        WallRoute likely = boards.routeWithCoverGap(inside, Edge.LIKELY, gap);
        return new BoxLoss(
                methods,
                path,
                new LossRange(low.loss(), likely.loss(), walls.high()),
                low,
                new LossRange(together(path.low(), low.loss()), together(path.likely(), likely.loss()), thirds.high()));
    }

    /** The same box with the likely figure for its pessimistic edge too. */
    public BoxLoss asLikely() {
        return new BoxLoss(
                methods, path, walls, lowWalls, new LossRange(thirds.likely(), thirds.likely(), thirds.high()));
    }

    /** What one more layer and tight joints would make of the pessimistic edge of these walls. */
    public WallChoices choices(BoxWalls boards) {
        return boards.choices(levels(methods.levels(), path.likely(), path.low()), Edge.LOW);
    }

    /** Pessimistic edge of the whole box with another route through its walls, third octaves, dB. */
    public Spectrum lowWith(WallRoute other) {
        return together(path.low(), other.loss());
    }

    /** Sound in every pass when the path loses something else than likely. */
    private static List<Spectrum> levels(List<Spectrum> inside, Spectrum likely, Spectrum loss) {
        return inside.stream()
                .map(level -> Spectrum.of(BandSet.THIRD_OCTAVE, i -> {
                    double ratio = likely.value(i) < SMALL ? 1 : Math.max(0, loss.value(i) / likely.value(i));
                    // A level above that of the incident wave is a standing wave, which no lining less takes away.
                    return level.value(i) > 0 ? level.value(i) : level.value(i) * ratio;
                }))
                .toList();
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
