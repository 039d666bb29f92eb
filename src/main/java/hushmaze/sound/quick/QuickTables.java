package hushmaze.sound.quick;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.LinerModel;
import hushmaze.sound.porous.SlitMedia;
import hushmaze.sound.porous.SlitRoots;
import hushmaze.sound.porous.SlitSection;
import hushmaze.work.Kept;

/**
 * What boxes of one liner have in common: modes of sections, turns and ports, each computed when first asked for and then
 * kept. Safe for use by several threads.
 */
public final class QuickTables {
    /** How many of each are kept, those asked for last; the wider the passes, the larger they are. */
    private static final int SECTIONS = 100;

    private static final int MOUTHS = 12;
    private static final int TURNS = 100;
    private static final int PORTS = 80;
    /** Part of these that is enough for a few boxes. */
    private static final int FEW = 6;

    /** Loss in the air, k² (1 - j loss), so that nothing resonates for ever; far below anything that can be heard. */
    private static final double LOSS = 1e-6;

    private static final int BETWEEN_BROAD_FACES = 8;

    private final LinerModel liner;
    private final QuickGrid grid;
    private final double soundSpeed;
    private final Kept<Fluids, SlitMedia[]> media;
    private final Kept<Slit, SectionModes> sections;
    private final Kept<TurnMouth.Shape, TurnMouth> mouths;
    private final Kept<TurnPlace, TurnTable> turns;
    private final Kept<PortShape, PortTable> ports;

    private record Slit(SlitSection section, Fluids fluids) {}

    /**
     * @param liner of all lined faces; null for bare boxes only
     * @param soundSpeed m/s
     */
    public QuickTables(LinerModel liner, double soundSpeed) {
        this(liner, soundSpeed, 1, QuickGrid.FINE);
    }

    private QuickTables(LinerModel liner, double soundSpeed, int part, QuickGrid grid) {
        this.liner = liner;
        this.grid = grid;
        this.soundSpeed = InvalidValue.within("soundSpeed", soundSpeed, 200, 500, Unit.METRE_PER_SECOND);
        media = new Kept<>(SECTIONS / part);
        sections = new Kept<>(SECTIONS / part);
        mouths = new Kept<>(MOUTHS / part);
        turns = new Kept<>(TURNS / part);
        ports = new Kept<>(PORTS / part);
    }

    /** The same for a few boxes at a time: less is kept. */
    public static QuickTables ofFew(LinerModel liner, double soundSpeed) {
        return new QuickTables(liner, soundSpeed, FEW, QuickGrid.FINE);
    }

    /** For differences of boxes that hardly differ: at three frequencies of every third octave instead of five. */
    public static QuickTables ofDifferences(LinerModel liner, double soundSpeed) {
        return new QuickTables(liner, soundSpeed, FEW, QuickGrid.COARSE);
    }

    QuickGrid grid() {
        return grid;
    }

    /** Whether the liner has a facing. */
    boolean faced() {
        return liner != null && liner.faced();
    }

    /** Whether boxes with liner can be asked for. */
    boolean hasLiner() {
        return liner != null;
    }

    /** m/s. */
    public double soundSpeed() {
        return soundSpeed;
    }

    SlitMedia[] media(Fluids fluids) {
        return media.get(fluids, this::makeMedia);
    }

    SectionModes section(SlitSection section, Fluids fluids) {
        return sections.get(new Slit(section, fluids), this::makeSection);
    }

    TurnMouth mouth(TurnMouth.Shape shape) {
        return mouths.get(shape, made -> new TurnMouth(made, this));
    }

    TurnTable turn(TurnPlace place) {
        return turns.get(place, made -> new TurnTable(made, this));
    }

    PortTable port(PortShape shape) {
        return ports.get(shape, made -> new PortTable(made, this));
    }

    private SectionModes makeSection(Slit slit) {
        return new SectionModes(slit.section(), media(slit.fluids()), this);
    }

    /** With lined broad faces the first cross wavenumber of the slit between them is taken from the air's: k² - kz². */
    private SlitMedia[] makeMedia(Fluids fluids) {
        SlitMedia[] all = new SlitMedia[grid.size()];
        SlitRoots roots = fluids.broadLiner() > 0
                ? new SlitRoots(new SlitSection(fluids.broadLiner(), fluids.height(), fluids.broadLiner()))
                : null;
        for (int f = 0; f < all.length; f++) {
            SlitMedia plain = plain(grid.hz(f));
            plain = plain.withAir(plain.airSquared().times(new Complex(1, -LOSS)));
            Complex air = roots == null
                    ? plain.airSquared()
                    : roots.find(plain, BETWEEN_BROAD_FACES, grid.counts(f))[0].squared();
            SlitMedia.Layer layer = fluids.cut() ? plain.high().bare() : plain.high();
            SlitMedia.Layer weighted = layer.weighted(fluids.linerWeight());
            all[f] = new SlitMedia(air, weighted, weighted);
        }
        return all;
    }

    private SlitMedia plain(double hz) {
        if (liner != null) {
            return SlitMedia.of(liner, hz, soundSpeed);
        }
        double k = 2 * Math.PI * hz / soundSpeed;
        Complex air = new Complex(k * k, 0);
        SlitMedia.Layer nothing = new SlitMedia.Layer(air, new Complex(1, 0));
        return new SlitMedia(air, nothing, nothing);
    }
}
