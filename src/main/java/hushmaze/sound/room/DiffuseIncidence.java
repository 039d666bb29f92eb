package hushmaze.sound.room;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.sound.estimate.EndReflection;
import hushmaze.sound.estimate.EndReflection.Setting;

/**
 * Sound power that the diffuse field of a room drives onto a surface or into the mouth of a duct.
 *
 * <p>Formula: onto a surface, also a hole or a wall, W = p² S / (4 ρc), that is LW = Lp + 10 lg(S / 4). Into a duct LW = Lp
 * + 10 lg(S / 4) + 10 lg N - ERL, N = max(1, λ² / (π S)).
 *
 * <p>Symbols: LW in dB re 1 pW; Lp mean level in the room in dB; S clear area in m²; λ wavelength in m; ERL loss at the
 * mouth in dB, see {@link EndReflection}; ρc taken as 400 Pa·s/m.
 *
 * <p>Source: the first form is in any textbook (from memory). The second follows from it by reciprocity: each wave that
 * can run in the duct takes the energy of λ² / (4 π) of the field less what the mouth reflects, and there are π S / λ² of
 * them, at least the plane wave. For a mouth small to the wavelength it tends to 8 times, 9 dB more than, the first form:
 * the pressure at a stiff wall is doubled in energy, and the duct takes it as p² S / ρc.
 *
 * <p>Range: a diffuse field; mouths flush in a large surface.
 *
 * <p>Accuracy: 2 dB; more below the room's lowest resonances, and where the talker stands at the mouth.
 *
 * <p>Differs from the source: ρc = 400 Pa·s/m leaves out 0.1 dB, as the level formula of {@link RoomLevel} does; from room
 * to room it cancels.
 */
public final class DiffuseIncidence {
    private DiffuseIncidence() {}

    /** Power onto a surface of an area in m², dB re 1 pW, from levels in dB. */
    public static Spectrum onto(Spectrum levels, double area) {
        return levels.plus(onto(area));
    }

    /** Power onto a surface less the level in the room, dB; area in m². */
    static double onto(double area) {
        InvalidValue.within("area", area, 1e-9, 1e6, Unit.SQUARE_METRE);
        return 10 * Math.log10(area / 4);
    }

    /**
     * Power into the mouth of a duct, dB re 1 pW.
     *
     * @param levels mean level in the room, dB
     * @param area clear, of the mouth, m²
     * @param soundSpeed m/s
     */
    public static Spectrum intoDuct(Spectrum levels, double area, double soundSpeed) {
        Spectrum gain = Spectrum.ofFrequency(levels.bands(), f -> intoDuct(f, area, soundSpeed));
        return levels.plus(gain);
    }

    /** Power into a duct less the level in the room, dB, at a frequency in Hz. */
    static double intoDuct(double frequency, double area, double soundSpeed) {
        double wavelength = soundSpeed / frequency;
        double fewWaves = Math.max(1, wavelength * wavelength / (Math.PI * area));
        return onto(area) + 10 * Math.log10(fewWaves) - EndReflection.loss(frequency, area, soundSpeed, Setting.FLUSH);
    }
}
