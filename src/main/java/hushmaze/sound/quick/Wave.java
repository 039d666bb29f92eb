package hushmaze.sound.quick;

import hushmaze.sound.porous.Complex;

/** Value and slope of u'' = -q² u at a place, from those at another; kept in fields to spare objects. */
final class Wave {
    /** Beyond this imaginary part the tangent is j to the last bit. */
    private static final double DEEP = 20;
    /** Nepers over a stretch from which on the values at both ends are needed: from one end it would drown in rounding. */
    private static final double STEEP = 8;

    double valueRe;
    double valueIm;
    double slopeRe;
    double slopeIm;

    /** cos(q d) and sin(q d)/q. */
    double cosRe;

    double cosIm;
    double sinRe;
    double sinIm;

    /** Even functions of q at a distance d. */
    void functions(double qr, double qi, double d) {
        double size = Math.sqrt(qr * qr + qi * qi);
        if (size * d * d < 1e-4) {
            double ur = qr * d * d;
            double ui = qi * d * d;
            double vr = ur * ur - ui * ui;
            double vi = 2 * ur * ui;
            cosRe = 1 - ur / 2 + vr / 24;
            cosIm = -ui / 2 + vi / 24;
            sinRe = d * (1 - ur / 6 + vr / 120);
            sinIm = d * (-ui / 6 + vi / 120);
            return;
        }
        double x = Math.sqrt((size + qr) / 2);
        double y = Math.sqrt(Math.max(0, (size - qr) / 2));
        if (x > y) {
            y = Math.abs(qi) / (2 * x);
        } else {
            x = Math.abs(qi) / (2 * y);
        }
        y = qi < 0 ? -y : y;
        double up = Math.exp(y * d);
        double down = 1 / up;
        double ch = (up + down) / 2;
        double sh = (up - down) / 2;
        double cos = Math.cos(x * d);
        double sin = Math.sin(x * d);
        cosRe = cos * ch;
        cosIm = -sin * sh;
        double wr = sin * ch;
        double wi = cos * sh;
        sinRe = (wr * x + wi * y) / size;
        sinIm = (wi * x - wr * y) / size;
    }

    /** tan(q d)/q, also where the exponentials overflow. */
    Complex tangent(Complex q, double d) {
        Complex root = q.sqrt();
        if (Math.abs(root.im()) * d > DEEP) {
            return new Complex(0, root.im() > 0 ? 1 : -1).dividedBy(root);
        }
        functions(q.re(), q.im(), d);
        return new Complex(sinRe, sinIm).dividedBy(new Complex(cosRe, cosIm));
    }

    /** Whether a wave dies away over a distance so far that it cannot be followed from one end alone. */
    static boolean steep(double qr, double qi, double d) {
        double root = Math.sqrt(Math.max(0, (Math.sqrt(qr * qr + qi * qi) - qr) / 2));
        return root * d > STEEP;
    }

    /** Value and slope at a place within a stretch of length d, from those at its ends. */
    void inside(double qr, double qi, Wave a, Wave b, double d, double at) {
        if (!steep(qr, qi, d)) {
            copy(a);
            move(qr, qi, at);
            return;
        }
        between(qr, qi, new Complex(a.valueRe, a.valueIm), new Complex(b.valueRe, b.valueIm), d, at);
    }

    /** u = (ua S(d - y) + ub S(y)) / S(d), S = sin(q y)/q, and its slope, from the values at both ends. */
    void between(double qr, double qi, Complex a, Complex b, double d, double at) {
        functions(qr, qi, d);
        Complex whole = new Complex(sinRe, sinIm);
        Complex low = a.dividedBy(whole);
        Complex high = b.dividedBy(whole);
        functions(qr, qi, d - at);
        Complex value = low.times(new Complex(sinRe, sinIm));
        Complex slope = low.times(new Complex(-cosRe, -cosIm));
        functions(qr, qi, at);
        value = value.plus(high.times(new Complex(sinRe, sinIm)));
        slope = slope.plus(high.times(new Complex(cosRe, cosIm)));
        set(value.re(), value.im(), slope.re(), slope.im());
    }

    /** Moves on by d. */
    void move(double qr, double qi, double d) {
        functions(qr, qi, d);
        double tr = qr * sinRe - qi * sinIm;
        double ti = qr * sinIm + qi * sinRe;
        double vr = valueRe * cosRe - valueIm * cosIm + slopeRe * sinRe - slopeIm * sinIm;
        double vi = valueRe * cosIm + valueIm * cosRe + slopeRe * sinIm + slopeIm * sinRe;
        double sr = slopeRe * cosRe - slopeIm * cosIm - (valueRe * tr - valueIm * ti);
        double si = slopeRe * cosIm + slopeIm * cosRe - (valueRe * ti + valueIm * tr);
        valueRe = vr;
        valueIm = vi;
        slopeRe = sr;
        slopeIm = si;
    }

    void set(double vr, double vi, double sr, double si) {
        valueRe = vr;
        valueIm = vi;
        slopeRe = sr;
        slopeIm = si;
    }

    /** Goes on behind a facing: the value is more by so much times the slope. */
    void face(Complex facing) {
        valueRe += facing.re() * slopeRe - facing.im() * slopeIm;
        valueIm += facing.re() * slopeIm + facing.im() * slopeRe;
    }

    void copy(Wave o) {
        set(o.valueRe, o.valueIm, o.slopeRe, o.slopeIm);
    }
}
