package hushmaze.sound.quick;

import hushmaze.sound.porous.SlitMedia;
import hushmaze.sound.porous.SlitRoots;
import hushmaze.sound.porous.SlitSection;

/** The modes of one section over all frequencies of the grid. */
final class SectionModes {
    /** Most modes of a section. */
    static final int MOST = 44;

    private static final int FEWEST = 6;
    /** Modes beyond those that travel: they make the field at edges, which matters most at low frequencies. */
    private static final int EVANESCENT = 6;

    private static final int EVANESCENT_HIGH = 4;
    private static final double HIGH = 5000;
    private static final int FEWEST_CARRIED = 5;
    /** Modes carried beyond those that travel: over a short pass they couple too. */
    private static final int BESIDE = 5;

    private static final int MOST_CARRIED = 18;

    final SlitSection section;
    private final SlitMedia[] media;
    private final QuickGrid grid;
    private final double soundSpeed;
    private final SlitRoots.Mode[][] modes;
    private final double[][] axial;
    /** Made when first asked for: only passes need it. */
    private volatile double[][] products;

    private volatile double[] firsts;

    private final boolean complete;

    /** @param tables whose grid and speed of sound these are */
    SectionModes(SlitSection section, SlitMedia[] media, QuickTables tables) {
        this.section = section;
        this.media = media;
        this.grid = tables.grid();
        this.soundSpeed = tables.soundSpeed();
        modes = new SlitRoots.Mode[media.length][];
        axial = new double[media.length][];
        SlitRoots roots = new SlitRoots(section, media[0].low().equals(media[0].high()));
        int most = enough(media.length - 1, MOST);
        for (int f = 0; f < media.length; f++) {
            modes[f] = roots.find(media[f], most, grid.counts(f));
            axial[f] = new double[2 * modes[f].length];
            for (int m = 0; m < modes[f].length; m++) {
                axial[f][2 * m] = modes[f][m].axial().re();
                axial[f][2 * m + 1] = modes[f][m].axial().im();
            }
        }
        complete = roots.complete();
    }

    /** How many modes describe the field in the section well at a frequency: those that travel and a few more. */
    int enough(int f, int limit) {
        int beyond = grid.hz(f) > HIGH ? EVANESCENT_HIGH : EVANESCENT;
        int some = Math.max(FEWEST, Math.min(limit, travelling(f, section.total()) + beyond));
        return Math.max(some, carried(f));
    }

    /** How many modes are carried on from junction to junction: those that travel in the air and a few more. */
    int carried(int f) {
        return Math.max(FEWEST_CARRIED, Math.min(MOST_CARRIED, travelling(f, section.width()) + BESIDE));
    }

    private int travelling(int f, double width) {
        return (int) Math.ceil(2 * grid.hz(f) * width / soundSpeed);
    }

    boolean complete() {
        return complete;
    }

    SlitRoots.Mode mode(int f, int i) {
        return modes[f][i];
    }

    /** Axial wavenumbers at a frequency, real and imaginary parts in turn. */
    double[] axial(int f) {
        return axial[f];
    }

    /** Means of u v* over the air for all pairs of carried modes at every frequency, at a height of 1 m, interleaved. */
    double[][] products() {
        double[][] all = products;
        if (all == null) {
            all = new double[media.length][];
            for (int f = 0; f < all.length; f++) {
                all[f] = TurnTable.interleaved(at(f, carried(f), 1).products());
            }
            products = all;
        }
        return all;
    }

    /** Mean of |u|² over the air for the first mode at every frequency, at a height of 1 m. */
    double[] firsts() {
        double[] all = firsts;
        if (all == null) {
            all = new double[media.length];
            for (int f = 0; f < all.length; f++) {
                all[f] = products()[f][0];
            }
            firsts = all;
        }
        return all;
    }

    /** The first modes at a frequency; the air starts at y = 0. */
    ModeSet at(int f, int count, double height) {
        return new ModeSet(section, media[f], modes[f], count, height);
    }
}
