package hushmaze.sound.wave;

import java.util.List;

/**
 * What the wave solution is computed for. What no block covers is rigid; where blocks overlap, the later one counts.
 *
 * @param soundSpeed of plain air, m/s
 * @param flat whether pressure does not change along z
 * @param blocks media in their places
 * @param inlet where the sound comes from
 * @param outlet where it goes
 */
public record WaveSpace(double soundSpeed, boolean flat, List<WaveBlock> blocks, WavePort inlet, WavePort outlet) {
    public WaveSpace {
        blocks = List.copyOf(blocks);
    }
}
