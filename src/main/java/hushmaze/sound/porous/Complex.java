package hushmaze.sound.porous;

/**
 * A complex number, for the few places where single values are handled.
 *
 * @param re real part
 * @param im imaginary part
 */
public record Complex(double re, double im) {
    /** Squares of sizes between these have all their digits. */
    private static final double TINY = 1e-280;

    private static final double HUGE = 1e280;
    /** Beyond this imaginary part the cotangent is +j or -j to the last bit. */
    private static final double DEEP = 20;

    /** Product. */
    public Complex times(Complex b) {
        return new Complex(re * b.re - im * b.im, re * b.im + im * b.re);
    }

    /** Product with a real number. */
    public Complex times(double b) {
        return new Complex(re * b, im * b);
    }

    /** Quotient. */
    public Complex dividedBy(Complex b) {
        double size = b.re * b.re + b.im * b.im;
        return new Complex((re * b.re + im * b.im) / size, (im * b.re - re * b.im) / size);
    }

    /** Square of the size. */
    public double absSquared() {
        return re * re + im * im;
    }

    /** Sum. */
    public Complex plus(Complex b) {
        return new Complex(re + b.re, im + b.im);
    }

    /** Size of re + j im. */
    static double size(double re, double im) {
        double squared = re * re + im * im;
        if (squared > TINY && squared < HUGE) {
            return Math.sqrt(squared);
        }
        double larger = Math.max(Math.abs(re), Math.abs(im));
        if (larger == 0 || !(larger < Double.POSITIVE_INFINITY)) {
            return larger;
        }
        double r = re / larger;
        double i = im / larger;
        return larger * Math.sqrt(r * r + i * i);
    }

    /** The root with a real part that is not negative. */
    public Complex sqrt() {
        if (re == 0 && im == 0) {
            return this;
        }
        // The larger part first: the other one as a difference of nearly equal numbers would lose its digits.
        double larger = Math.sqrt((size(re, im) + Math.abs(re)) / 2);
        double smaller = Math.abs(im) / (2 * larger);
        double x = re >= 0 ? larger : smaller;
        double y = re >= 0 ? smaller : larger;
        return new Complex(x, im < 0 ? -y : y);
    }

    /** The cotangent, also where the hyperbolic functions would overflow. */
    public Complex cotangent() {
        if (Math.abs(im) > DEEP) {
            return new Complex(0, im < 0 ? 1 : -1);
        }
        // cot(x + jy) = (sin 2x - j sinh 2y) / (cosh 2y - cos 2x)
        double below = Math.cosh(2 * im) - Math.cos(2 * re);
        return new Complex(Math.sin(2 * re) / below, -Math.sinh(2 * im) / below);
    }
}
