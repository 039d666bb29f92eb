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
 * @param fullThirds how many of the lowest bands were computed in all three directions; the others are of the flat section
 * @param worstResidual largest error of the equations over their right side
 * @param notices what the flat section leaves out, in the bands that are of it
 */
public record WaveResult(
        List<Double> thirds,
        List<Double> equalEnergyThirds,
        int fullThirds,
        double worstResidual,
        List<Notice> notices) {
    public WaveResult {
        thirds = List.copyOf(thirds);
        equalEnergyThirds = List.copyOf(equalEnergyThirds);
        notices = List.copyOf(notices);
        if (thirds.size() != equalEnergyThirds.size() || thirds.size() > BandSet.THIRD_OCTAVE.size()) {
            throw new IllegalArgumentException(
                    thirds.size() + " and " + equalEnergyThirds.size() + " bands of " + BandSet.THIRD_OCTAVE.size());
        }
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
