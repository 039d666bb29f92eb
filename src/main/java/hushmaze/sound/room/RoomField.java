package hushmaze.sound.room;

import hushmaze.project.Room;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * How far a room is from the diffuse field that the level formula assumes.
 *
 * <p>Formula: limit frequency fs = 2000 sqrt(T / V) with T = 0.161 V / A, so fs = 2000 sqrt(0.161 / A); mean absorption α =
 * A / S with S = 6 V^(2/3).
 *
 * <p>Symbols: fs in Hz, below which resonances stand alone; T reverberation time in s; V volume in m³; A absorption area in
 * m²; S surface in m², of a cube, the least a room of straight walls can have, so α is an upper estimate.
 *
 * <p>Source: Schroeder's limit frequency and Sabine's formula, from memory. That a mean absorption above 0.5 is no field for
 * Sabine's formula is common textbook advice, from memory.
 *
 * <p>Range: any room.
 *
 * <p>Accuracy: a third of an octave; a booth of a few m³ is outside the statistics of furnished rooms in any case.
 *
 * <p>Differs from the source: A is taken at the octave in question.
 */
public final class RoomField {
    private static final double SCHROEDER = 2000;
    private static final double SABINE = 0.161;
    private static final double DEAD = 0.5;
    private static final int CUBE_FACES = 6;

    private RoomField() {}

    /** Lowest octave centre, Hz, from which the field is statistical in all octaves up; the highest centre if nowhere. */
    public static double limitFrequency(Room room) {
        int octave = BandSet.OCTAVE.size() - 1;
        while (octave > 0 && isStatistical(room, octave - 1)) {
            octave--;
        }
        return BandSet.OCTAVE.bands().get(octave).nominalHz();
    }

    /** What the listener must know about levels in this room; empty for a large, live one. */
    public static List<Notice> notices(Room room) {
        List<Notice> notices = new ArrayList<>();
        double lowest = BandSet.OCTAVE.bands().get(0).nominalHz();
        double limit = limitFrequency(room);
        if (limit > lowest) {
            notices.add(Notice.of(NoticeKind.ROOM_HAS_FEW_MODES, Severity.NOTE, "", limit, lowest, Unit.NUMBER));
        }
        int deadest = 0;
        for (int i = 1; i < BandSet.OCTAVE.size(); i++) {
            deadest = room.absorptionArea().get(i) > room.absorptionArea().get(deadest) ? i : deadest;
        }
        double alpha = meanAbsorption(room, deadest);
        if (alpha > DEAD) {
            String band = BandSet.OCTAVE.bands().get(deadest).label() + " Hz";
            notices.add(Notice.of(NoticeKind.ROOM_VERY_DEAD, Severity.NOTE, band, alpha, DEAD, Unit.NUMBER));
        }
        return notices;
    }

    /** Upper estimate of the mean absorption coefficient in one octave. */
    static double meanAbsorption(Room room, int octave) {
        return room.absorptionArea().get(octave) / (CUBE_FACES * Math.pow(room.volume(), 2 / 3.0));
    }

    private static boolean isStatistical(Room room, int octave) {
        double limit = SCHROEDER * Math.sqrt(SABINE / room.absorptionArea().get(octave));
        return BandSet.OCTAVE.centreHz(octave) >= limit;
    }
}
