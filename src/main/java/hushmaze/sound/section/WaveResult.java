package hushmaze.sound.section;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Spectrum;
import java.util.List;

/**
 * What the wave solution finds for the path of a box. All lists are per third octave, from 50 Hz up, as far as it was computed;
 * every figure is the mean transmitted energy over a few frequencies of the band.
 *
 * @param thirds transmission loss for a plane wave that comes in at the opening port, all of what leaves counted, dB
 * @param equalEnergyThirds the same for equal energy in all waves that the opening port's duct can carry, dB
 * @param passLevels per pass, from the opening: mean square of the pressure in its air over that of the plane wave that
 *     comes in, dB; by the flat section of a box with lined broad faces half way between them
 * @param fullThirds how many of the lowest bands were computed in all three directions; the others are of the flat section
 * @param standIn whether in those others a mouth in the long side stands for a port through a broad face
 * @param worstResidual largest error of the equations over their right side
 * @param notices what the flat section leaves out, in the bands that are of it
 */
public record WaveResult(
        List<Double> thirds,
        List<Double> equalEnergyThirds,
        List<List<Double>> passLevels,
        int fullThirds,
        boolean standIn,
        double worstResidual,
        List<Notice> notices) {
    /**
     * By how much the loss may come out too high where a mouth stands for a port through a broad face, dB, and as a share
     * of it. Measured against the solution in three directions, 1.25 to 2 kHz, in seventeen boxes, most of one pass: mostly the
     * flat section is 3 to 11 dB too low; in two of 27 figures it is too high, by 3.7 of 41 dB and by 6.9 of 20.6 dB.
     */
    private static final double STAND_IN = 7.5;

    private static final double STAND_IN_SHARE = 0.15;

    public WaveResult {
        thirds = List.copyOf(thirds);
        equalEnergyThirds = List.copyOf(equalEnergyThirds);
        passLevels = passLevels.stream().map(List::copyOf).toList();
        notices = List.copyOf(notices);
        if (thirds.size() != equalEnergyThirds.size() || thirds.size() > BandSet.THIRD_OCTAVE.size()) {
            throw new IllegalArgumentException(
                    thirds.size() + " and " + equalEnergyThirds.size() + " bands of " + BandSet.THIRD_OCTAVE.size());
        }
    }

    /**
     * Level in a pass with those of another method in the bands above what was computed, third octaves, dB.
     *
     * @param pass from the opening
     * @param above third octaves, dB
     */
    public Spectrum levelCompletedBy(int pass, Spectrum above) {
        List<Double> own = passLevels.get(pass);
        return Spectrum.of(BandSet.THIRD_OCTAVE, i -> i < own.size() ? own.get(i) : above.value(i));
    }

    /** By how much the loss of a third octave may be too high because the flat section is not the box, dB. */
    public double doubt(int third) {
        return standIn && third >= fullThirds && third < computed() ? standInDoubt(thirds.get(third)) : 0;
    }

    /** By how much a loss may be too high that is of a path with another port in the stead of one through a broad face, dB. */
    public static double standInDoubt(double loss) {
        return Math.min(STAND_IN, STAND_IN_SHARE * Math.max(0, loss));
    }

    /** How many bands were computed. */
    public int computed() {
        return thirds.size();
    }

    /** Whether some bands were computed in all three directions. */
    public boolean threeDimensional() {
        return fullThirds > 0;
    }

    /**
     * The transmission losses with those of another method in the bands above what was computed.
     *
     * @param above third octaves, dB
     */
    public Spectrum completedBy(Spectrum above) {
        return Spectrum.of(BandSet.THIRD_OCTAVE, i -> i < computed() ? thirds.get(i) : above.value(i));
    }
}
