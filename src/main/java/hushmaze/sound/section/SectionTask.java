package hushmaze.sound.section;

import hushmaze.quantity.InvalidValue;
import hushmaze.sound.wave.WaveSpace;
import java.util.List;

/**
 * A section and what is asked of it.
 *
 * @param space the section, flat
 * @param frequencies at which its transmission loss is wanted, in the order asked for, Hz
 */
public record SectionTask(WaveSpace space, List<Double> frequencies) {
    public SectionTask {
        InvalidValue.present("space", space);
        frequencies = List.copyOf(frequencies);
    }
}
