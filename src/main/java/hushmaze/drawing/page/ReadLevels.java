package hushmaze.drawing.page;

import hushmaze.assess.BandResult;
import hushmaze.project.PathReadings;
import hushmaze.project.Reading;
import hushmaze.project.Reading.Round;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The mean level of every round as it was read, background and all.
 *
 * @param set bands of all: thirds only if every reading is in thirds
 * @param means of the rounds there are, in their order
 * @param absolute whether the levels count from something, so that they may stand beside those of the project
 * @param predicted the path's bands of the same set
 */
record ReadLevels(BandSet set, Map<Round, BandLevels> means, boolean absolute, List<BandResult> predicted) {
    ReadLevels {
        means = Collections.unmodifiableMap(means);
    }

    /** @param readings at least one of a level */
    static ReadLevels of(Job job, PathReadings readings) {
        BandSet set = BandLevels.alike(
                        readings.levels().stream().map(Reading::levels).toList())
                .get(0)
                .bands();
        Map<Round, BandLevels> means = new EnumMap<>(Round.class);
        for (Round round : Round.values()) {
            if (readings.has(round)) {
                BandLevels mean = BandLevels.mean(readings.of(round));
                means.put(round, mean.bands() == set ? mean : mean.inOctaves());
            }
        }
        boolean absolute = readings.scale() != Reading.Scale.FULL_SCALE;
        return new ReadLevels(set, means, absolute, job.result().bands(set));
    }
}
