package hushmaze.app.field;

/**
 * Colours for shares from 0 to 1.
 *
 * <p>Both maps run along straight pieces between anchors of lightness, chroma and hue in the CIE 1976 L*a*b* space (D65), and a
 * colour that a screen cannot show gets less chroma, never another lightness. That lightness alone should carry the order,
 * so that it is read whatever colours an eye tells apart, and in grey, is a published idea; the anchors are of our own choosing. The map of levels
 * gets lighter evenly from quiet to loud. That of pressures is as light at one end as at the other, blue where the air is thinned, orange
 * where it is pressed together, two hues that nearly every eye tells apart, and without chroma in the middle.
 */
public final class ColourMap {
    /** Colours of a map. */
    static final int SIZE = 256;

    private static final int OPAQUE = 0xff000000;
    /** Lightness, chroma and hue in degrees at even distances, from quiet to loud. */
    private static final double[][] LEVEL = {{13, 30, 280}, {33, 48, 315}, {54, 62, 372}, {74, 60, 425}, {94, 40, 455}};

    /** Chroma and hue of thinned and of pressed air. */
    private static final double[] THIN = {48, 258};

    private static final double[] DENSE = {64, 60};
    /** Lightness of both ends beside a light and beside a dark middle. */
    private static final double DEEP = 40;

    private static final double BRIGHT = 78;
    private static final double HALF = 50;

    private final int[] colours = new int[SIZE];

    private ColourMap() {}

    /** For levels, from quiet to loud. */
    public static ColourMap level() {
        ColourMap map = new ColourMap();
        for (int i = 0; i < SIZE; i++) {
            double place = (double) i / (SIZE - 1) * (LEVEL.length - 1);
            int low = Math.min(LEVEL.length - 2, (int) place);
            map.colours[i] = colour(mixed(LEVEL[low], LEVEL[low + 1], place - low));
        }
        return map;
    }

    /**
     * For pressures, from thinned air over still to pressed air.
     *
     * @param still lightness of the middle, 0 to 100
     */
    static ColourMap pressure(double still) {
        double end = still > HALF ? DEEP : BRIGHT;
        ColourMap map = new ColourMap();
        for (int i = 0; i < SIZE; i++) {
            double share = 2.0 * i / (SIZE - 1) - 1;
            double[] side = share < 0 ? THIN : DENSE;
            double from = Math.abs(share);
            map.colours[i] = colour(new double[] {still + from * (end - still), side[0] * from, side[1]});
        }
        return map;
    }

    /** As a pixel, opaque: alpha, red, green, blue. */
    public int at(double share) {
        return colours[(int) Math.round(Math.max(0, Math.min(1, share)) * (SIZE - 1))];
    }

    private static double[] mixed(double[] a, double[] b, double share) {
        double[] out = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            out[i] = a[i] + share * (b[i] - a[i]);
        }
        return out;
    }

    /** Of lightness, chroma and hue, with as much of the chroma as the screen has. */
    private static int colour(double[] wanted) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 30; i++) {
            double half = (low + high) / 2;
            if (isShown(linear(wanted[0], half * wanted[1], wanted[2]))) {
                low = half;
            } else {
                high = half;
            }
        }
        double most = isShown(linear(wanted[0], wanted[1], wanted[2])) ? 1 : low;
        double[] rgb = linear(wanted[0], most * wanted[1], wanted[2]);
        return OPAQUE | screen(rgb[0]) << 16 | screen(rgb[1]) << 8 | screen(rgb[2]);
    }

    private static boolean isShown(double[] rgb) {
        for (double part : rgb) {
            if (part < 0 || part > 1) {
                return false;
            }
        }
        return true;
    }

    /** Linear red, green and blue; CIE 15 for L*a*b*, IEC 61966-2-1 for the matrix, both from memory. */
    private static double[] linear(double lightness, double chroma, double hue) {
        double fy = (lightness + 16) / 116;
        double fx = fy + chroma * Math.cos(Math.toRadians(hue)) / 500;
        double fz = fy - chroma * Math.sin(Math.toRadians(hue)) / 200;
        double x = 0.95047 * cube(fx);
        double y = cube(fy);
        double z = 1.08883 * cube(fz);
        return new double[] {
            3.2406 * x - 1.5372 * y - 0.4986 * z,
            -0.9689 * x + 1.8758 * y + 0.0415 * z,
            0.0557 * x - 0.2040 * y + 1.0570 * z
        };
    }

    private static double cube(double f) {
        return f > 6.0 / 29 ? f * f * f : 3 * (6.0 / 29) * (6.0 / 29) * (f - 4.0 / 29);
    }

    private static int screen(double linear) {
        double v = Math.max(0, Math.min(1, linear));
        double s = v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * s);
    }
}
