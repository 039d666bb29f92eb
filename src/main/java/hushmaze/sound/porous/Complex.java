package hushmaze.sound.porous;

/**
 * A complex number, for the few places where single values are handled.
 *
 * @param re real part
 * @param im imaginary part
 */
public record Complex(double re, double im) {
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

    /** The root with a real part that is not negative. */
    public Complex sqrt() {
        if (re == 0 && im == 0) {
            return this;
        }
        // The larger part first: the other one as a difference of nearly equal numbers would lose its digits.
        double larger = Math.sqrt((Math.hypot(re, im) + Math.abs(re)) / 2);
        double smaller = Math.abs(im) / (2 * larger);
        double x = re >= 0 ? larger : smaller;
        double y = re >= 0 ? smaller : larger;
        return new Complex(x, im < 0 ? -y : y);
    }
}
