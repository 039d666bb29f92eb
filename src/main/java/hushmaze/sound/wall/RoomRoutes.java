package hushmaze.sound.wall;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.criterion.AWeighting;
import java.util.List;

/**
 * The ways sound comes into the room, held against each other: what one box adds to everything else.
 *
 * @param envelope level in the room past the boxes, dB; with the room's own noise if that is to count
 * @param boxes level in the room through each vent path, dB, same bands
 */
public record RoomRoutes(Spectrum envelope, List<Spectrum> boxes) {
    /** Stands for the envelope where a route is named by a number. */
    public static final int ENVELOPE = -1;
    /** A route this far below the rest no longer limits the room, dB: without it the sum would be 0.4 dB lower. */
    public static final double NEGLIGIBLE = 10;

    public RoomRoutes {
        boxes = List.copyOf(boxes);
        for (Spectrum box : boxes) {
            if (box.bands() != envelope.bands()) {
                throw new IllegalArgumentException("routes in different bands");
            }
        }
    }

    /** Level of all routes together, dB. */
    public Spectrum total() {
        return boxes.stream().reduce(envelope, Spectrum::energyPlus);
    }

    /** Level of everything but one box, dB. */
    public Spectrum rest(int box) {
        Spectrum rest = envelope;
        for (int i = 0; i < boxes.size(); i++) {
            rest = i == box ? rest : rest.energyPlus(boxes.get(i));
        }
        return rest;
    }

    /** The loudest route in a band: the number of a box, or {@link #ENVELOPE}. */
    public int governing(int band) {
        int loudest = ENVELOPE;
        double most = envelope.value(band);
        for (int i = 0; i < boxes.size(); i++) {
            if (boxes.get(i).value(band) > most) {
                most = boxes.get(i).value(band);
                loudest = i;
            }
        }
        return loudest;
    }

    /** By how much one box is better than everything else together, dB; negative where it is worse. */
    public Spectrum margin(int box) {
        Spectrum rest = rest(box);
        return Spectrum.of(envelope.bands(), i -> margin(boxes.get(box).value(i), rest.value(i)));
    }

    /** The same for the A-weighted totals, dB. */
    public double marginDbA(int box) {
        return margin(AWeighting.total(boxes.get(box)), AWeighting.total(rest(box)));
    }

    /** Whether one box still limits the room in a band: less than 10 dB below the rest. */
    public boolean limits(int box, int band) {
        return margin(box).value(band) < NEGLIGIBLE;
    }

    /** Whether one box still limits the room's A-weighted level. */
    public boolean limits(int box) {
        return marginDbA(box) < NEGLIGIBLE;
    }

    /** What the level of all routes would fall by without one box, dB. */
    public Spectrum costOf(int box) {
        Spectrum margin = margin(box);
        return Spectrum.of(bands(), i -> Energy.db(1 + Energy.ratio(-margin.value(i))));
    }

    private BandSet bands() {
        return envelope.bands();
    }

    private static double margin(double box, double rest) {
        return box == Double.NEGATIVE_INFINITY ? Double.POSITIVE_INFINITY : rest - box;
    }
}
