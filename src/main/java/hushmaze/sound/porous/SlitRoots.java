package hushmaze.sound.porous;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The squared axial wavenumbers of the modes of a lined slit, found as a set: of those that decay least none is passed over
 * and none counted twice.
 *
 * <p>Method: all roots of the slit's characteristic function together by the simultaneous iteration of Ehrlich and Aberth,
 * started from the roots of the frequency before, moved along with the air's wavenumber, or at first from the modes of air
 * between rigid walls and of the layers behind a soft face. A slit with equal layers is split into its symmetric and
 * antisymmetric modes. Then the modes that decay less than a rate are counted by the principle of the argument along the
 * edge of the strip |Im kx| &lt; rate. If any is missing it follows from power sums: those over all roots in a circle about
 * ka², by the trapezoidal rule, less those of the known ones.
 *
 * <p>Source: the iteration and the use of power sums (Delves and Lyness) from memory.
 *
 * <p>Range: any that keeps the exponentials finite; work grows with the number of roots asked for.
 *
 * <p>Not safe for use by two threads at once.
 */
public final class SlitRoots {
    /** Roots kept beyond those asked for, so that those that come in from far are seen coming. */
    private static final int SPARE = 4;
    /** So many modes that decay least are counted. */
    private static final int COUNTED = 4;

    private static final int TRIES = 6;

    private final SlitSection section;
    private final List<RootSet> sets = new ArrayList<>();
    private int calls;
    private int counted;
    private boolean complete = true;

    /** For equal layers of the same liner, or layers that differ in depth. */
    public SlitRoots(SlitSection section) {
        this(section, true);
    }

    /** @param sameLiner whether both layers are always filled with the same liner */
    public SlitRoots(SlitSection section, boolean sameLiner) {
        this.section = section;
        if (section.bare()) {
            return;
        }
        if (sameLiner && section.low() == section.high()) {
            SlitSection half = new SlitSection(section.low(), section.width() / 2, 0);
            sets.add(new RootSet(half, false));
            sets.add(new RootSet(half, true));
        } else {
            sets.add(new RootSet(section, false));
        }
    }

    /**
     * The squared axial wavenumbers of the first modes, 1/m², those that decay least first.
     *
     * @param media the fluids; from call to call the frequency is best changed by small steps
     * @param count how many; so many of lowest order are found
     * @param certain whether the count is to be made; without it a mode may be missing, which is unlikely when it was
     *     made at a frequency nearby
     */
    public Mode[] find(SlitMedia media, int count, boolean certain) {
        if (section.bare()) {
            return bare(media, count);
        }
        int each = count / sets.size() + SPARE;
        boolean whole = true;
        for (RootSet set : sets) {
            whole &= set.follow(media, each);
            set.trim(each);
        }
        calls++;
        if (certain || !whole || calls == 1) {
            complete(media, each);
        }
        return sorted(media, count);
    }

    /**
     * One mode.
     *
     * @param squared axial wavenumber squared, 1/m²
     * @param parity 1 for a symmetric mode of a slit with equal layers, -1 for an antisymmetric one, 0 if the layers differ
     */
    public record Mode(Complex squared, int parity) {
        /** The axial wavenumber of decay along +x, 1/m, time factor exp(+jωt): its imaginary part is not positive. */
        public Complex axial() {
            Complex root = squared.sqrt();
            return root.im() > 0 ? root.times(-1) : root;
        }
    }

    /** Whether every count so far found the modes it should; doubtful only for slits many waves wide. */
    public boolean complete() {
        return complete;
    }

    /** How many times the count was made; for tests. */
    int counted() {
        return counted;
    }

    private Mode[] bare(SlitMedia media, int count) {
        Mode[] modes = new Mode[count];
        for (int i = 0; i < count; i++) {
            double across = i * Math.PI / section.width();
            Complex squared = new Complex(
                    media.airSquared().re() - across * across,
                    media.airSquared().im());
            modes[i] = new Mode(squared, i % 2 == 0 ? 1 : -1);
        }
        return modes;
    }

    private void complete(SlitMedia media, int each) {
        int wanted = each;
        for (int i = 0; i < TRIES; i++) {
            for (RootSet set : sets) {
                set.complete(wanted);
            }
            counted++;
            if (isComplete(media)) {
                return;
            }
            // A mode that decays little may be of high order: look further out.
            wanted += each / 3 + 2;
        }
        complete &= isComplete(media);
    }

    private boolean isComplete(SlitMedia media) {
        double furthest = 2
                * Math.max(
                        Math.sqrt(media.airSquared().absSquared()),
                        Math.sqrt(Math.max(
                                media.low().squared().absSquared(),
                                media.high().squared().absSquared())));
        furthest = Math.sqrt(furthest) + 2 / section.total();
        for (int s = 0; s < sets.size(); s++) {
            Complex[] own = own(sets.get(s), s);
            int few = Math.min(COUNTED, own.length - 1);
            if (few < 1) {
                return false;
            }
            int best = few;
            double gap = 0;
            for (int i = few; i < Math.min(own.length, few + 3); i++) {
                double step = own[i - 1].im() - own[i].im();
                if (step > gap) {
                    gap = step;
                    best = i;
                }
            }
            double rate = -(own[best - 1].im() + own[best].im()) / 2;
            if (sets.get(s).countSlower(rate, furthest) != best) {
                return false;
            }
        }
        return true;
    }

    private Complex[] own(RootSet set, int index) {
        Complex[] axial = new Complex[set.size()];
        for (int i = 0; i < axial.length; i++) {
            axial[i] = new Mode(set.root(i), parity(index)).axial();
        }
        Arrays.sort(axial, (a, b) -> Double.compare(b.im(), a.im()));
        return axial;
    }

    private int parity(int set) {
        return sets.size() == 1 ? 0 : set == 0 ? 1 : -1;
    }

    private Mode[] sorted(SlitMedia media, int count) {
        List<Mode> all = new ArrayList<>();
        for (int s = 0; s < sets.size(); s++) {
            for (int i = 0; i < sets.get(s).size(); i++) {
                all.add(new Mode(sets.get(s).root(i), parity(s)));
            }
        }
        Complex air = media.airSquared().times(-1);
        all.sort((a, b) -> Double.compare(
                a.squared().plus(air).absSquared(), b.squared().plus(air).absSquared()));
        Mode[] nearest = all.subList(0, Math.min(count, all.size())).toArray(new Mode[0]);
        Arrays.sort(nearest, (a, b) -> Double.compare(b.axial().im(), a.axial().im()));
        return nearest;
    }
}
