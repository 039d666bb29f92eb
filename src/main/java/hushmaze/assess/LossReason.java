package hushmaze.assess;

import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.BoxLoss;

/**
 * Why a box reduces as much as it does and no more.
 *
 * @param wallsFrom lowest octave from which the walls let through more than the path in every octave up; null if the path
 *     decides in the highest one
 * @param wallsLimit least the walls let the box have in those octaves, likely figure, dB; null without them
 * @param spreadBand octave below them in which the methods disagree most; null if there is none
 * @param spread how far apart the ends of the range are there, dB
 */
public record LossReason(Band wallsFrom, Double wallsLimit, Band spreadBand, double spread) {
    static LossReason of(BoxLoss loss) {
        Spectrum path = loss.path().likely().lossesInOctaves();
        Spectrum walls = loss.walls().likely().lossesInOctaves();
        Spectrum whole = loss.thirds().likely().lossesInOctaves();
        int from = path.size();
        while (from > 0 && walls.value(from - 1) < path.value(from - 1)) {
            from--;
        }
        Double limit = null;
        for (int i = from; i < path.size(); i++) {
            limit = limit == null ? whole.value(i) : Math.min(limit, whole.value(i));
        }
        Spectrum low = loss.thirds().low().lossesInOctaves();
        Spectrum high = loss.thirds().high().lossesInOctaves();
        int widest = -1;
        double spread = 0;
        for (int i = 0; i < from; i++) {
            double here = high.value(i) - low.value(i);
            if (here > spread) {
                spread = here;
                widest = i;
            }
        }
        return new LossReason(from < path.size() ? band(from) : null, limit, widest < 0 ? null : band(widest), spread);
    }

    private static Band band(int octave) {
        return BandSet.OCTAVE.bands().get(octave);
    }
}
