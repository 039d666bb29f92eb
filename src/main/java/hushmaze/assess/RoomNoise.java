package hushmaze.assess;

import hushmaze.project.Envelope;
import hushmaze.project.MouthPosition;
import hushmaze.project.Opening;
import hushmaze.project.Project;
import hushmaze.project.Room;
import hushmaze.project.VentPath;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.criterion.AWeighting;
import hushmaze.sound.room.RoomLevel;
import hushmaze.sound.room.RoomSum;
import hushmaze.sound.wall.EnvelopeLoss;
import hushmaze.sound.wall.LevelOutside;
import hushmaze.sound.wall.RoomRoutes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Everything heard in the room, pessimistic edge: the paths, the room's own noise, and what comes through its envelope.
 *
 * @param sum the parts and their sum: one per path under its name, then {@link #OWN} and {@link #ENVELOPE} where known
 * @param envelope what comes through the envelope; null when none is given, or the level outside is not known
 * @param routes the paths against everything else
 */
public record RoomNoise(RoomSum sum, EnvelopeNoise envelope, RoomRoutes routes) {
    /** Name of the room's own noise among the parts. */
    public static final String OWN = "own noise";
    /** Name of the envelope among the parts. */
    public static final String ENVELOPE = "envelope";

    /**
     * What comes through the envelope.
     *
     * @param loss of its elements
     * @param outside level outside, third octaves, dB
     * @param derivedFrom path from whose noise the level outside was derived; null if it was given
     * @param level in the room, third octaves, dB
     */
    public record EnvelopeNoise(EnvelopeLoss loss, Spectrum outside, String derivedFrom, Spectrum level) {
        /** Name of the element that lets most through where what comes in is loudest, A-weighted. */
        public String governing() {
            int loudest = 0;
            for (int i = 1; i < level.size(); i++) {
                loudest = weighted(i) > weighted(loudest) ? i : loudest;
            }
            return loss.governing(loudest).name();
        }

        private double weighted(int band) {
            return level.value(band) + AWeighting.at(level.bands().centreHz(band));
        }
    }

    static RoomNoise of(Project project, List<PathResult> paths, double soundSpeed) {
        Room room = project.room();
        List<RoomSum.Part> parts = new ArrayList<>();
        List<Spectrum> boxes = new ArrayList<>();
        for (PathResult path : paths) {
            Spectrum level =
                    Spectrum.of(BandSet.THIRD_OCTAVE, i -> path.thirds().get(i).level());
            parts.add(new RoomSum.Part(path.path().name(), level));
            boxes.add(level);
        }
        Spectrum rest = Spectrum.flat(BandSet.THIRD_OCTAVE, Double.NEGATIVE_INFINITY);
        Spectrum own = NoiseNeeds.ownNoise(room, BandSet.THIRD_OCTAVE);
        if (own != null) {
            parts.add(new RoomSum.Part(OWN, own));
            rest = rest.energyPlus(own);
        }
        EnvelopeNoise envelope = envelope(project, soundSpeed);
        if (envelope != null) {
            parts.add(new RoomSum.Part(ENVELOPE, envelope.level()));
            rest = rest.energyPlus(envelope.level());
        }
        return new RoomNoise(RoomSum.of(parts), envelope, new RoomRoutes(rest, boxes));
    }

    /** All together, third octaves, dB. */
    public Spectrum level() {
        return sum.level();
    }

    private static EnvelopeNoise envelope(Project project, double soundSpeed) {
        Envelope envelope = project.room().envelope();
        if (envelope == null) {
            return null;
        }
        Spectrum outside = envelope.outsideLevel();
        String from = null;
        if (outside == null) {
            Optional<VentPath> hole = hole(project);
            if (hole.isEmpty()) {
                return null;
            }
            from = hole.get().name();
            outside = behind(hole.get(), project.room());
        }
        EnvelopeLoss loss = EnvelopeLoss.of(envelope, soundSpeed);
        Spectrum thirds = outside.levelsInThirds();
        return new EnvelopeNoise(loss, thirds, from, loss.levelIn(project.room(), thirds));
    }

    /** The first path whose opening is a plain hole through the envelope. */
    private static Optional<VentPath> hole(Project project) {
        return project.paths().stream()
                .filter(p -> p.brief().opening().kind() == Opening.Kind.WALL_OPENING)
                .findFirst();
    }

    private static Spectrum behind(VentPath path, Room room) {
        Spectrum heard = RoomLevel.atMicrophone(path.brief().noise(), room, BandSet.THIRD_OCTAVE);
        Spectrum gain =
                RoomLevel.gain(room, MouthPosition.MIDDLE_OF_SURFACE, room.microphoneDistance(), BandSet.THIRD_OCTAVE);
        return LevelOutside.behindOpening(heard, gain, path.brief().opening().area());
    }
}
