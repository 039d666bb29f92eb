package hushmaze.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Lengths as a builder reads them: millimetres to a tenth where needed, or inches with the nearest 1/32. Rounding for
 * people happens here and nowhere else.
 */
public final class LengthFormat {
    /** Finest fraction of an inch that is printed. */
    public static final int DENOMINATOR = 32;

    /** Fraction of an inch for lengths that need no more. */
    private static final int COARSE = 8;

    private static final double INCH_M = 0.0254;
    /** A length so near to a step, in steps, is that step. */
    private static final double SAME = 1e-6;

    private LengthFormat() {}

    /** A length in the given system with its unit: "140 mm", "5 1/2 in". */
    public static String withUnit(double metres, UnitSystem system) {
        return bare(metres, system) + (system == UnitSystem.INCH ? " in" : " mm");
    }

    /** A length without its unit: "140", "18.5", "5 1/2", "3/32". */
    public static String bare(double metres, UnitSystem system) {
        return system == UnitSystem.INCH ? inches(metres) : millimetres(metres);
    }

    /** A length that need not be kept to the millimetre, with whole ones or eighths of an inch: "95", "3 3/4". */
    public static String coarse(double metres, UnitSystem system) {
        double step = system == UnitSystem.INCH ? INCH_M / COARSE : 1e-3;
        return bare(Math.round(metres / step) * step, system);
    }

    /**
     * A board's real thickness with its unit: as other lengths in millimetres, in inches with three decimals, since boards that
     * differ by a step of a builder's rule are different boards: "18.4 mm", "0.724 in".
     */
    public static String thickness(double metres, UnitSystem system) {
        return fine(metres, system) + (system == UnitSystem.INCH ? " in" : " mm");
    }

    /** A thickness, or a small difference, without its unit: "18.4", "0.724". */
    public static String fine(double metres, UnitSystem system) {
        return system == UnitSystem.INCH
                ? BigDecimal.valueOf(metres / INCH_M)
                        .setScale(3, RoundingMode.HALF_UP)
                        .toPlainString()
                : millimetres(metres);
    }

    /** The length that is printed for a length, m. */
    public static double rounded(double metres, UnitSystem system) {
        return metres + roundingError(metres, system);
    }

    /** The shortest length that can be printed and is not shorter, m. */
    public static double roundedUp(double metres, UnitSystem system) {
        return Math.ceil(metres / step(system) - SAME) * step(system);
    }

    /** The longest length that can be printed and is not longer, m. */
    public static double roundedDown(double metres, UnitSystem system) {
        return Math.floor(metres / step(system) + SAME) * step(system);
    }

    private static double step(UnitSystem system) {
        return system == UnitSystem.INCH ? INCH_M / DENOMINATOR : 1e-4;
    }

    /** What the printed length differs from the true one, printed minus true, metres. */
    public static double roundingError(double metres, UnitSystem system) {
        boolean inch = system == UnitSystem.INCH;
        double printed = inch ? parts(metres) * INCH_M / DENOMINATOR : tenths(metres) / 1e4;
        return Math.copySign(printed, metres) - metres;
    }

    private static String millimetres(double metres) {
        long tenths = tenths(metres);
        String sign = metres < 0 && tenths != 0 ? "-" : "";
        return sign + tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10);
    }

    /** Tenths of a millimetre of a length without its sign, so that both signs round alike. */
    private static long tenths(double metres) {
        return Math.round(Math.abs(metres) * 1e4);
    }

    /** Thirty-seconds of an inch of a length without its sign. */
    private static long parts(double metres) {
        return Math.round(Math.abs(metres) / INCH_M * DENOMINATOR);
    }

    private static String inches(double metres) {
        long parts = parts(metres);
        long whole = parts / DENOMINATOR;
        long rest = parts % DENOMINATOR;
        String sign = metres < 0 && parts != 0 ? "-" : "";
        if (rest == 0) {
            return sign + whole;
        }
        long common = Long.lowestOneBit(rest);
        String fraction = rest / common + "/" + DENOMINATOR / common;
        return sign + (whole == 0 ? fraction : whole + " " + fraction);
    }
}
