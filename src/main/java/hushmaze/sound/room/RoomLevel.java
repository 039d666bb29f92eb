package hushmaze.sound.room;

import hushmaze.project.Noise;
import hushmaze.project.Room;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;

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
    /** Where in the room's surfaces the opening is. */
    public enum Position {
        MIDDLE_OF_SURFACE(2),
        EDGE(4),
        CORNER(8);

        private final double directivity;

        Position(double directivity) {
            this.directivity = directivity;
        }

        /** Directivity factor Q. */
        public double directivity() {
            return directivity;
        }
    }

    private RoomLevel() {}

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

    /** Level at a distance in m less power level, per band, dB. */
    public static Spectrum gain(Room room, Position position, double distance, BandSet bands) {
        Spectrum areas = absorption(room, bands);
        return Spectrum.of(bands, i -> gain(position.directivity(), distance, areas.value(i)));
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
        Position position = Position.MIDDLE_OF_SURFACE;
        return gain(room, position, room.microphoneDistance(), bands).minus(gain(room, position, from, bands));
    }

    private static Spectrum absorption(Room room, BandSet bands) {
        Spectrum octaves =
                Spectrum.of(BandSet.OCTAVE, i -> room.absorptionArea().get(i));
        return bands == BandSet.OCTAVE ? octaves : octaves.interpolatedInThirds();
    }
}
