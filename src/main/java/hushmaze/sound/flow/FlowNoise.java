package hushmaze.sound.flow;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Spectrum;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Flow noise of a whole path at its room port: every source less what lies between it and the room, added by energy.
 *
 * <p>The formulas give octaves; each is spread evenly over its three thirds before the losses are taken off.
 *
 * @param terms one per source, in the order given
 * @param power together at the room port, third octaves, dB re 1 pW; negative infinity if no air moves
 * @param notices where formulas are carried on beyond their range; the worst of a kind and unit speaks for the others
 */
public record FlowNoise(List<FlowTerm> terms, Spectrum power, List<Notice> notices) {
    public FlowNoise {
        terms = List.copyOf(terms);
        notices = List.copyOf(notices);
    }

    /**
     * A source in its place.
     *
     * @param source that makes noise
     * @param remaining loss between it and the room port, third octaves, dB
     */
    public record Placed(FlowSource source, Spectrum remaining) {
        public Placed {
            if (remaining.bands() != BandSet.THIRD_OCTAVE) {
                throw new IllegalArgumentException("the loss of " + source.part() + " is not in third octaves");
            }
        }
    }

    /** The noise of all sources together. */
    public static FlowNoise of(List<Placed> sources) {
        Spectrum power = Spectrum.flat(BandSet.THIRD_OCTAVE, Double.NEGATIVE_INFINITY);
        List<FlowTerm> terms = new ArrayList<>();
        List<Notice> notices = new ArrayList<>();
        for (Placed placed : sources) {
            FlowSource source = placed.source();
            Spectrum made = source.power();
            Spectrum there = made.levelsInThirds().minus(placed.remaining());
            terms.add(new FlowTerm(source.part(), source.source(), made, there));
            power = power.energyPlus(there);
            if (there.total() > FlowSource.NEGLIGIBLE) {
                notices.addAll(source.notices());
            }
        }
        return new FlowNoise(terms, power, worst(notices));
    }

    /** Power at the room port, octaves, dB re 1 pW. */
    public Spectrum octaves() {
        return power.levelsInOctaves();
    }

    /**
     * What remains between the entrance of each pass and the room: from the losses of the passes, first to last, the sums
     * over the pass and all after it. One entry more than passes; the last is nothing.
     *
     * @param passLosses loss from the entrance of a pass to the entrance of the next, or to the room, third octaves, dB
     */
    public static List<Spectrum> remaining(List<Spectrum> passLosses) {
        Spectrum[] sums = new Spectrum[passLosses.size() + 1];
        sums[passLosses.size()] = Spectrum.flat(BandSet.THIRD_OCTAVE, 0);
        for (int i = passLosses.size() - 1; i >= 0; i--) {
            sums[i] = sums[i + 1].plus(passLosses.get(i));
        }
        return List.of(sums);
    }

    /** Of the notices of one unit on one side of their limit the one furthest off. */
    private static List<Notice> worst(List<Notice> notices) {
        List<Notice> kept = new ArrayList<>();
        for (Notice notice : notices) {
            Notice worst = notices.stream()
                    .filter(n -> n.unit() == notice.unit() && isBelow(n) == isBelow(notice))
                    .max(Comparator.comparingDouble(FlowNoise::howFar))
                    .orElse(notice);
            if (!kept.contains(worst)) {
                kept.add(worst);
            }
        }
        return kept;
    }

    private static boolean isBelow(Notice notice) {
        return notice.value() < notice.limit();
    }

    private static double howFar(Notice notice) {
        return Math.abs(Math.log(notice.value() / notice.limit()));
    }
}
