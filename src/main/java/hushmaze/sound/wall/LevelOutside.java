package hushmaze.sound.wall;

import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;

/**
 * Level of the diffuse field outside that makes a known level in the room through a bare opening.
 *
 * <p>Formula: L1 = L2 - G - 10 lg So + 10 lg 4. It follows from the intensity that a diffuse field sends onto a surface, I =
 * p1² / (4 ρc): the opening lets the power W = I So through, so LW = L1 - 10 lg 4 + 10 lg So, and in the room L2 = LW + G. In a
 * reverberant field, G = 10 lg(4/A), it is the usual L2 = L1 + 10 lg(So/A).
 *
 * <p>Symbols: L1 level outside, L2 level in the room in dB; G level less power level in the room in dB ({@link
 * hushmaze.sound.room.RoomLevel}); So area of the opening in m²; A absorption area in m².
 *
 * <p>Source: derived here; the diffuse intensity is the textbook's.
 *
 * <p>Range: a plain hole through the same wall, with the same noise in front of both; not for a duct, whose sound is not that
 * in front of the wall. The level of power (re 1 pW) and of pressure (re 20 µPa) are taken to agree at 1 m², 0.1 dB off.
 *
 * <p>Accuracy: 3 dB: the hole is taken to let all sound pass.
 *
 * <p>Differs from the source: nothing.
 */
public final class LevelOutside {
    private static final double QUARTER = Energy.db(4);

    private LevelOutside() {}

    /**
     * Level outside, dB, in the bands of the arguments.
     *
     * @param inRoom level in the room through the bare opening, dB
     * @param gain level less power level at the same place, dB
     * @param openingArea m²
     */
    public static Spectrum behindOpening(Spectrum inRoom, Spectrum gain, double openingArea) {
        return inRoom.minus(gain).plus(QUARTER - areaDb(openingArea));
    }

    /** Level in the room through the bare opening, dB: the other way round. */
    public static Spectrum throughOpening(Spectrum outside, Spectrum gain, double openingArea) {
        return outside.plus(gain).plus(areaDb(openingArea) - QUARTER);
    }

    private static double areaDb(double area) {
        return Energy.db(InvalidValue.within("area", area, 1e-6, 1e3, Unit.SQUARE_METRE));
    }
}
