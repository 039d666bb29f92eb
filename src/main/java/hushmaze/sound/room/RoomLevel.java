package hushmaze.sound.room;

import hushmaze.project.MouthPosition;
import hushmaze.project.Noise;
import hushmaze.project.Room;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * Level in a room for a source at its surface: direct sound and reverberant field.
 *
 * <p>Formula: Lp - LW = 10 lg[Q / (4 π r²) + 4 / A].
 *
 * <p>Symbols: Lp level in dB at the distance r in m; LW sound power level in dB; Q directivity factor; A equivalent
 * absorption area in m², given per octave.
 *
 * <p>Source: as read in <i>Building Acoustics</i>, equation 4.49; Q = 2 in the middle of a surface, 4 at an edge, 8 in a
 * corner: the low-frequency limit, from memory.
 *
 * <p>Range: rooms with a diffuse field. In a very small or very dead room the second term is an approximation.
 *
 * <p>Accuracy: 2 dB where the absorption is known.
 *
 * <p>Differs from the source: A per third octave is interpolated between octaves over log frequency.
 */
public final class RoomLevel {
    private RoomLevel() {}

    /** Directivity factor Q of an opening. */
    public static double directivity(MouthPosition position) {
        return switch (position) {
            case MIDDLE_OF_SURFACE -> 2;
            case EDGE -> 4;
            case CORNER -> 8;
        };
    }

    /**
     * Level less power level, dB.
     *
     * @param directivity Q
     * @param distance m
     * @param absorptionArea m²
     */
    public static double gain(double directivity, double distance, double absorptionArea) {
        InvalidValue.within("directivity", directivity, 1e-6, 1e6, Unit.NUMBER);
        InvalidValue.within("distance", distance, 1e-6, 1e6, Unit.METRE);
        InvalidValue.within("absorptionArea", absorptionArea, 1e-9, Double.POSITIVE_INFINITY, Unit.SQUARE_METRE);
        double direct = directivity / (4 * Math.PI * distance * distance);
        return 10 * Math.log10(direct + 4 / absorptionArea);
    }

    /** Level in the open at a distance in m less power level, dB: the direct sound alone. */
    public static double outdoors(double directivity, double distance) {
        InvalidValue.within("directivity", directivity, 1e-6, 1e6, Unit.NUMBER);
        InvalidValue.within("distance", distance, 1e-6, 1e6, Unit.METRE);
        return 10 * Math.log10(directivity / (4 * Math.PI * distance * distance));
    }

    /** Level at a distance in m less power level, per band, dB. */
    public static Spectrum gain(Room room, MouthPosition position, double distance, BandSet bands) {
        return gain(room.absorptionArea(), position, distance, bands);
    }

    /** Level at a distance in m less power level, per band, dB; absorption areas per octave 63 Hz to 8 kHz, m². */
    public static Spectrum gain(List<Double> absorptionArea, MouthPosition position, double distance, BandSet bands) {
        Spectrum octaves = Spectrum.of(BandSet.OCTAVE, absorptionArea::get);
        Spectrum areas = bands == BandSet.OCTAVE ? octaves : octaves.interpolatedInThirds();
        return Spectrum.of(bands, i -> gain(directivity(position), distance, areas.value(i)));
    }

    /** Level at the room's microphone for a sound power at an opening, dB re 1 pW, in the power's bands. */
    public static Spectrum fromPower(Spectrum power, Room room, MouthPosition position) {
        return power.plus(gain(room, position, room.microphoneDistance(), power.bands()));
    }

    /** Sound power of an opening, dB re 1 pW, that makes a level at the room's microphone, in the level's bands. */
    public static Spectrum powerFor(Spectrum level, Room room, MouthPosition position) {
        return level.minus(gain(room, position, room.microphoneDistance(), level.bands()));
    }

    /**
     * Noise through the bare opening at the room's microphone, the opening in the middle of a surface, dB.
     *
     * <p>Octave levels asked for in thirds are split evenly first; third-octave levels asked for in octaves are converted in
     * thirds and then summed.
     */
    public static Spectrum atMicrophone(Noise noise, Room room, BandSet bands) {
        Spectrum levels = bands == BandSet.THIRD_OCTAVE ? noise.levels().levelsInThirds() : noise.levels();
        Spectrum there = switch (noise.place()) {
            case AT_MICROPHONE -> levels;
            case AT_DISTANCE -> levels.plus(change(room, noise.distance(), levels.bands()));
        };
        return bands == BandSet.OCTAVE ? there.levelsInOctaves() : there;
    }

    private static Spectrum change(Room room, double from, BandSet bands) {
        MouthPosition position = MouthPosition.MIDDLE_OF_SURFACE;
        return gain(room, position, room.microphoneDistance(), bands).minus(gain(room, position, from, bands));
    }
}
