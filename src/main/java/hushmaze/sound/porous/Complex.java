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
        double size = Math.hypot(re, im);
        double x = Math.sqrt((size + re) / 2);
        double y = Math.sqrt((size - re) / 2);
        return new Complex(x, im < 0 ? -y : y);
    }
}
