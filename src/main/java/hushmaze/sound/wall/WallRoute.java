package hushmaze.sound.wall;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.Spectrum;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The route through a box's walls, with its parts: third octaves.
 *
 * @param loss insertion loss of the whole route, dB
 * @param parts boards, joints and cover joint of every pass
 */
public record WallRoute(Spectrum loss, List<Part> parts) {
    /** What sound goes through. */
    public enum Kind {
        /** The boards themselves. */
        BOARDS,
        /** Glued joints. */
        JOINTS,
        /** The joint around the screwed cover. */
        COVER
    }

    /**
     * One part of the route.
     *
     * @param pass counted from 0 at the opening
     * @param kind what sound goes through
     * @param loss power into the bare opening over power through this part, dB; infinite for a tight joint. Parts add by
     *     energy; where a sum comes near 0 dB, the loss of the whole route is higher, since no more can come out than goes in.
     */
    public record Part(int pass, Kind kind, Spectrum loss) {}

    public WallRoute {
        parts = List.copyOf(parts);
    }

    /** The route of these parts. */
    static WallRoute of(List<Part> parts) {
        Spectrum sum = together(parts);
        return new WallRoute(Spectrum.of(BandSet.THIRD_OCTAVE, i -> Energy.db(1 + Energy.ratio(sum.value(i)))), parts);
    }

    /** The part that lets through most in a band; none if nothing comes through at all. */
    public Optional<Part> governing(int band) {
        Part most = null;
        for (Part part : parts) {
            double loss = part.loss().value(band);
            if (loss < Double.POSITIVE_INFINITY
                    && (most == null || loss < most.loss().value(band))) {
                most = part;
            }
        }
        return Optional.ofNullable(most);
    }

    /** Loss through one kind in all passes together, dB. */
    public Spectrum lossThrough(Kind kind) {
        return together(parts.stream().filter(part -> part.kind() == kind).toList());
    }

    /** Loss through everything beside one pass, dB. */
    public Spectrum lossBeside(int pass) {
        return together(parts.stream().filter(part -> part.pass() == pass).toList());
    }

    private static Spectrum together(List<Part> parts) {
        List<Spectrum> losses = new ArrayList<>();
        losses.add(Spectrum.flat(BandSet.THIRD_OCTAVE, Double.POSITIVE_INFINITY));
        parts.forEach(part -> losses.add(part.loss()));
        return losses.stream().reduce(Spectrum::parallelLoss).orElseThrow();
    }
}
