package hushmaze.measure;

import hushmaze.quantity.Band;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.Energy;
import java.util.ArrayList;
import java.util.List;

/**
 * What a source makes by itself: the mean energy of several positions less that of the background. Where it is less than {@link
 * Reduction#LEAST_OVER_BACKGROUND} above the background, so much is taken off, and the level is a most one.
 *
 * @param levels of the source; octaves as soon as one of the readings is in octaves; none where a reading has none
 * @param most bands in which it may be less, lowest first
 */
public record NetLevels(BandLevels levels, List<Band> most) {
    public NetLevels {
        most = List.copyOf(most);
    }

    /**
     * Of readings.
     *
     * @param positions at least one
     * @param floor positions with the source off; may be empty
     */
    public static NetLevels of(List<BandLevels> positions, List<BandLevels> floor) {
        if (floor.isEmpty()) {
            return new NetLevels(BandLevels.mean(positions), List.of());
        }
        List<BandLevels> means = BandLevels.alike(List.of(BandLevels.mean(positions), BandLevels.mean(floor)));
        BandLevels loud = means.get(0);
        BandLevels quiet = means.get(1);
        List<Band> bands = loud.bands().bands();
        double[] levels = new double[bands.size()];
        boolean[] covered = new boolean[bands.size()];
        List<Band> most = new ArrayList<>();
        for (int i = 0; i < levels.length; i++) {
            covered[i] = loud.covered(i);
            if (covered[i]) {
                levels[i] = loud.level(i);
            }
            if (covered[i] && quiet.covered(i)) {
                levels[i] = net(loud.level(i), quiet.level(i));
                if (isHidden(loud.level(i), quiet.level(i))) {
                    most.add(bands.get(i));
                }
            }
        }
        return new NetLevels(new BandLevels(loud.bands(), levels, covered), most);
    }

    /** Whether background hides so much of a reading that what is left is a most level; both in dB. */
    static boolean isHidden(double reading, double background) {
        return reading - background < Reduction.LEAST_OVER_BACKGROUND;
    }

    /** A reading less the background, or so much less as makes it a most level; all in dB. */
    static double net(double reading, double background) {
        return isHidden(reading, background)
                ? reading - Reduction.LEAST_OVER_BACKGROUND
                : Energy.minus(reading, background);
    }
}
