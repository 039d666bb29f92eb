package hushmaze.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * The two sets of bands the program works in: third octaves 50 Hz to 10 kHz, and the octaves 63 Hz to 8 kHz that those
 * third octaves fill, three to an octave.
 *
 * <p>Source: IEC 61260-1, base-10 system, G = 10^0.3.
 */
public enum BandSet {
    /** Octave bands 63 Hz to 8 kHz: eight bands. */
    OCTAVE(1, -4, 3),
    /** Third-octave bands 50 Hz to 10 kHz: twenty-four bands. */
    THIRD_OCTAVE(3, -13, 10);

    private final int fraction;
    private final List<Band> bands;
    private final double[] centres;

    BandSet(int fraction, int first, int last) {
        this.fraction = fraction;
        List<Band> list = new ArrayList<>();
        for (int i = first; i <= last; i++) {
            list.add(new Band(fraction, i));
        }
        this.bands = List.copyOf(list);
        this.centres = list.stream().mapToDouble(Band::centreHz).toArray();
    }

    /** Bands per octave: 1 or 3. */
    public int fraction() {
        return fraction;
    }

    /** The bands, lowest first. */
    public List<Band> bands() {
        return bands;
    }

    /** Number of bands. */
    public int size() {
        return bands.size();
    }

    /** Exact centre frequency of one band, Hz. */
    public double centreHz(int index) {
        return centres[index];
    }
}
