package hushmaze.assess;

import hushmaze.quantity.Band;
import hushmaze.quantity.BandLevels;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where it is louder with the fan on: 3 dB or more, which is as much again as without, in two or more bands. */
final class FanRise {
    private static final double RISE_DB = 3;
    private static final int LEAST_BANDS = 2;

    private FanRise() {}

    static Optional<Finding> of(List<BandLevels> off, List<BandLevels> on) {
        BandLevels quiet = BandLevels.mean(off);
        BandLevels loud = BandLevels.mean(on);
        if (quiet.bands() != loud.bands()) {
            quiet = quiet.inOctaves();
            loud = loud.inOctaves();
        }
        List<Band> bands = new ArrayList<>();
        double most = 0;
        for (int i = 0; i < quiet.bands().size(); i++) {
            if (quiet.covered(i) && loud.covered(i) && loud.level(i) - quiet.level(i) >= RISE_DB) {
                bands.add(quiet.bands().bands().get(i));
                most = Math.max(most, loud.level(i) - quiet.level(i));
            }
        }
        return bands.size() < LEAST_BANDS
                ? Optional.empty()
                : Optional.of(new Finding(Finding.Kind.FLOW_NOISE, bands.get(0), bands.get(bands.size() - 1), most));
    }
}
