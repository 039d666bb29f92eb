package hushmaze.sound.room;

import hushmaze.project.DuctRun;
import hushmaze.project.MouthPosition;
import hushmaze.project.Room;
import hushmaze.project.SharedDuct;
import hushmaze.project.Target;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.criterion.TargetMargin;
import hushmaze.sound.estimate.BandLoss;
import hushmaze.sound.estimate.EndReflection;
import hushmaze.sound.estimate.EndReflection.Setting;
import hushmaze.sound.estimate.ReynoldsBledsoe;
import java.util.List;

/**
 * Talk between two rooms on one duct: what is said in one room goes into its opening, along the duct and out of the other
 * room's opening.
 *
 * <p>Steps: the diffuse level in the first room; the power it drives into the mouth of the duct ({@link DiffuseIncidence});
 * the box over that mouth, if any; the bare duct ({@link BareDuct}); its lining ({@link ReynoldsBledsoe}); the share of
 * every branching, 10 lg of the areas; the box over the second mouth; the loss at that mouth ({@link EndReflection}); the
 * direct and reverberant sound in the second room ({@link RoomLevel}). Mouths count with the bare opening's area; a box's
 * loss is its insertion loss, in which its own mouths stand against the bare ones.
 *
 * <p>Not counted: turns and fittings of the duct, which take more, and sound through the duct's walls, which brings more.
 */
public final class CrossTalk {
    private static final String INTO = "power of a diffuse field into a duct, by reciprocity";
    private static final String BARE = "bare duct, ASHRAE Handbook, HVAC Applications (from memory); round as read";
    private static final String LINING = "Reynolds and Bledsoe regression, ASHRAE Handbook, HVAC Applications";
    private static final String BRANCH = "power shared by area";
    private static final String MOUTH = "end reflection after ASHRAE RP-1314 (constants from memory)";
    private static final String ROOM = "direct and reverberant sound, Building Acoustics, equation 4.49";

    private CrossTalk() {}

    /**
     * One end of the duct.
     *
     * @param part what the box or the opening is called
     * @param area clear area of the bare opening, m²
     * @param loss insertion loss of the box over it, third octaves, dB; zero for none
     */
    public record End(String part, double area, Spectrum loss) {
        /** An opening without a box. */
        public static End bare(String part, double area) {
            return new End(part, area, Spectrum.flat(BandSet.THIRD_OCTAVE, 0));
        }
    }

    /**
     * A place where somebody listens.
     *
     * @param absorptionArea of the room per octave 63 Hz to 8 kHz, m²
     * @param position where in its surfaces the opening is
     * @param distance from the opening, m
     * @param limit what may be heard there
     */
    public record Listener(List<Double> absorptionArea, MouthPosition position, double distance, Target limit) {}

    /** What the quiet room hears of the other one; its limit is the room's target. */
    public static Received fromOther(SharedDuct duct, Room room, MouthPosition position, End here, double soundSpeed) {
        Listener listener = new Listener(room.absorptionArea(), position, room.microphoneDistance(), room.target());
        return between(duct.levelThere(), there(duct), duct.run(), here, listener, soundSpeed);
    }

    /**
     * What the other room hears of the quiet one.
     *
     * @throws InvalidValue if no level in the quiet room is given
     */
    public static Received toOther(SharedDuct duct, End here, double soundSpeed) {
        Spectrum level = InvalidValue.present("levelHere", duct.levelHere());
        Listener listener = new Listener(duct.absorptionArea(), duct.position(), duct.distance(), duct.limit());
        return between(level, here, duct.run(), there(duct), listener, soundSpeed);
    }

    /**
     * What is heard of one room in another.
     *
     * @param levels diffuse level in the first room, dB
     * @param from its end of the duct
     * @param run the duct
     * @param to the other end
     * @param listener in the second room
     * @param soundSpeed m/s
     */
    public static Received between(
            Spectrum levels, End from, DuctRun run, End to, Listener listener, double soundSpeed) {
        Spectrum into =
                Spectrum.ofFrequency(BandSet.THIRD_OCTAVE, f -> DiffuseIncidence.intoDuct(f, from.area(), soundSpeed));
        Spectrum mouth = Spectrum.ofFrequency(
                BandSet.THIRD_OCTAVE, f -> EndReflection.loss(f, to.area(), soundSpeed, Setting.FLUSH));
        Spectrum room = RoomLevel.gain(
                listener.absorptionArea(), listener.position(), listener.distance(), BandSet.THIRD_OCTAVE);
        LevelChain chain = LevelChain.from("levelInRoom", "", levels)
                .then("powerIn", from.part(), INTO, into)
                .less("box", from.part(), "", from.loss())
                .less("duct", "", BARE, BareDuct.loss(run).interpolatedInThirds())
                .less("lining", "", LINING, lining(run).thirds())
                .less("branch", "", BRANCH, Spectrum.flat(BandSet.THIRD_OCTAVE, branches(run)))
                .less("box", to.part(), "", to.loss())
                .less("mouth", to.part(), MOUTH, mouth)
                .then("room", "", ROOM, room);
        return new Received(chain, TargetMargin.of(chain.level(), listener.limit()));
    }

    /** Where the formula for the duct's lining left its range. */
    public static List<Notice> notices(DuctRun run) {
        return lining(run).notices();
    }

    /** Loss of all branchings, dB. */
    static double branches(DuctRun run) {
        double share = 1;
        for (double each : run.branchShares()) {
            share *= each;
        }
        return -Energy.db(share);
    }

    private static End there(SharedDuct duct) {
        return End.bare(duct.room(), duct.openingArea());
    }

    private static BandLoss lining(DuctRun run) {
        if (run.linerThickness() == null) {
            Spectrum octaves = Spectrum.flat(BandSet.OCTAVE, 0);
            return new BandLoss(octaves, octaves.interpolatedInThirds(), List.of());
        }
        double perimeter = 2 * (run.width() + run.height());
        return ReynoldsBledsoe.loss(perimeter, run.area(), run.linerThickness(), run.length(), "duct");
    }
}
