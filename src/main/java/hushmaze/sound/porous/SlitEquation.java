package hushmaze.sound.porous;

/**
 * The characteristic function of a lined slit and its derivative.
 *
 * <p>Formula, z = kx², α² = ka² - z, β² = kl² - z, S = sin(αw)/α, C = cos(αw), and for each layer t = β sin(βd)/ρ, c = cos(βd) - φ t:
 * F(z) = α² S c1 c2 + (t1 c2 + t2 c1) C - t1 t2 S. With a soft face in place of the second wall (the middle of a
 * symmetric slit, for its antisymmetric modes) F(z) = c1 C - t1 S. All terms are even in α and β, so F has no poles and
 * no branches.
 *
 * <p>Symbols: ka, kl wavenumbers of air and layer, 1/m; ρ density of the layer over that of the air; φ of its facing, m; w width of the air, d
 * depth of a layer, m.
 *
 * <p>Source: flow is continuous at the faces of the layers, pressure too but for what a facing takes; walls rigid.
 *
 * <p>Not safe for use by two threads at once: the last value is kept in fields.
 */
final class SlitEquation {
    private static final double SMALL = 1e-3;

    private final SlitSection section;
    private final boolean soft;
    private double airRe;
    private double airIm;
    private double lowRe;
    private double lowIm;
    private double highRe;
    private double highIm;
    /** One over the density of each layer. */
    private Complex lightLow = new Complex(1, 0);

    private Complex lightHigh = lightLow;
    private Complex facingLow = new Complex(0, 0);
    private Complex facingHigh = facingLow;
    private boolean alike;

    /** Value and derivative at the point asked last. */
    double re;

    double im;
    double slopeRe;
    double slopeIm;

    private final Strip air = new Strip();
    private final Strip low = new Strip();
    private final Strip high = new Strip();

    /** @param soft whether the second wall, which must be bare, is a soft face */
    SlitEquation(SlitSection section, boolean soft) {
        this.section = section;
        this.soft = soft;
    }

    void media(SlitMedia media) {
        airRe = media.airSquared().re();
        airIm = media.airSquared().im();
        lowRe = media.low().squared().re();
        lowIm = media.low().squared().im();
        highRe = media.high().squared().re();
        highIm = media.high().squared().im();
        lightLow = new Complex(1, 0).dividedBy(media.low().density());
        lightHigh = new Complex(1, 0).dividedBy(media.high().density());
        facingLow = media.low().facing();
        facingHigh = media.high().facing();
        alike = section.low() == section.high() && media.low().equals(media.high());
    }

    /** Computes value and derivative at z. */
    void at(double zr, double zi) {
        air.at(airRe - zr, airIm - zi, section.width());
        low.at(lowRe - zr, lowIm - zi, section.low());
        low.divide(lightLow);
        low.face(facingLow);
        if (soft) {
            combineSoft();
            return;
        }
        if (alike) {
            high.copy(low);
        } else {
            high.at(highRe - zr, highIm - zi, section.high());
            high.divide(lightHigh);
            high.face(facingHigh);
        }
        combine();
    }

    private void combineSoft() {
        re = low.cr * air.cr - low.ci * air.ci - (low.tr * air.sr - low.ti * air.si);
        im = low.cr * air.ci + low.ci * air.cr - (low.tr * air.si + low.ti * air.sr);
        slopeRe = -(low.dcr * air.cr
                - low.dci * air.ci
                + low.cr * air.dcr
                - low.ci * air.dci
                - (low.dtr * air.sr - low.dti * air.si + low.tr * air.dsr - low.ti * air.dsi));
        slopeIm = -(low.dcr * air.ci
                + low.dci * air.cr
                + low.cr * air.dci
                + low.ci * air.dcr
                - (low.dtr * air.si + low.dti * air.sr + low.tr * air.dsi + low.ti * air.dsr));
    }

    /** With t already over the layer's density: m = t1 c2 + t2 c1, n = c1 c2, q = t1 t2, and their derivatives. */
    private void combine() {
        double nr = low.cr * high.cr - low.ci * high.ci;
        double ni = low.cr * high.ci + low.ci * high.cr;
        double qr = low.tr * high.tr - low.ti * high.ti;
        double qi = low.tr * high.ti + low.ti * high.tr;
        double mr = low.tr * high.cr - low.ti * high.ci + high.tr * low.cr - high.ti * low.ci;
        double mi = low.tr * high.ci + low.ti * high.cr + high.tr * low.ci + high.ti * low.cr;
        re = air.tr * nr - air.ti * ni + mr * air.cr - mi * air.ci - (qr * air.sr - qi * air.si);
        im = air.tr * ni + air.ti * nr + mr * air.ci + mi * air.cr - (qr * air.si + qi * air.sr);
        double dnr = low.dcr * high.cr - low.dci * high.ci + low.cr * high.dcr - low.ci * high.dci;
        double dni = low.dcr * high.ci + low.dci * high.cr + low.cr * high.dci + low.ci * high.dcr;
        double dqr = low.dtr * high.tr - low.dti * high.ti + low.tr * high.dtr - low.ti * high.dti;
        double dqi = low.dtr * high.ti + low.dti * high.tr + low.tr * high.dti + low.ti * high.dtr;
        double dmr = low.dtr * high.cr - low.dti * high.ci + low.tr * high.dcr - low.ti * high.dci;
        dmr += high.dtr * low.cr - high.dti * low.ci + high.tr * low.dcr - high.ti * low.dci;
        double dmi = low.dtr * high.ci + low.dti * high.cr + low.tr * high.dci + low.ti * high.dcr;
        dmi += high.dtr * low.ci + high.dti * low.cr + high.tr * low.dci + high.ti * low.dcr;
        // dα²/dz = dβ²/dz = -1
        slopeRe = -(air.dtr * nr
                - air.dti * ni
                + air.tr * dnr
                - air.ti * dni
                + mr * air.dcr
                - mi * air.dci
                + dmr * air.cr
                - dmi * air.ci
                - (qr * air.dsr - qi * air.dsi + dqr * air.sr - dqi * air.si));
        slopeIm = -(air.dtr * ni
                + air.dti * nr
                + air.tr * dni
                + air.ti * dnr
                + mr * air.dci
                + mi * air.dcr
                + dmr * air.ci
                + dmi * air.cr
                - (qr * air.dsi + qi * air.dsr + dqr * air.si + dqi * air.sr));
    }

    /** c = cos(a d), s = sin(a d)/a, t = a sin(a d) and their derivatives by a², for one strip of depth d. */
    private static final class Strip {
        double cr;
        double ci;
        double sr;
        double si;
        double tr;
        double ti;
        double dcr;
        double dci;
        double dsr;
        double dsi;
        double dtr;
        double dti;

        void at(double ar, double ai, double d) {
            if (d == 0) {
                cr = 1;
                ci = 0;
                sr = 0;
                si = 0;
                tr = 0;
                ti = 0;
                dcr = 0;
                dci = 0;
                dsr = 0;
                dsi = 0;
                dtr = 0;
                dti = 0;
                return;
            }
            double size = Math.sqrt(ar * ar + ai * ai);
            if (size * d * d < SMALL) {
                series(ar, ai, d);
            } else {
                double x = Math.sqrt((size + ar) / 2);
                double y = Math.sqrt(Math.max(0, (size - ar) / 2));
                if (x > y) {
                    y = Math.abs(ai) / (2 * x);
                } else {
                    x = Math.abs(ai) / (2 * y);
                }
                y = ai < 0 ? -y : y;
                double up = Math.exp(y * d);
                double down = 1 / up;
                double ch = (up + down) / 2;
                double sh = (up - down) / 2;
                double cos = Math.cos(x * d);
                double sin = Math.sin(x * d);
                cr = cos * ch;
                ci = -sin * sh;
                double wr = sin * ch;
                double wi = cos * sh;
                // s = w/a, with 1/a = conj(a)/|a|²
                sr = (wr * x + wi * y) / size;
                si = (wi * x - wr * y) / size;
                tr = wr * x - wi * y;
                ti = wr * y + wi * x;
                // ds/da² = (d c - s) / (2 a²)
                double pr = d * cr - sr;
                double pi = d * ci - si;
                double norm = 2 * size * size;
                dsr = (pr * ar + pi * ai) / norm;
                dsi = (pi * ar - pr * ai) / norm;
            }
            dcr = -d * sr / 2;
            dci = -d * si / 2;
            dtr = (sr + d * cr) / 2;
            dti = (si + d * ci) / 2;
        }

        /** Power series in (a d)² where cosine and sine would lose digits. */
        private void series(double ar, double ai, double d) {
            double ur = ar * d * d;
            double ui = ai * d * d;
            double vr = ur * ur - ui * ui;
            double vi = 2 * ur * ui;
            cr = 1 - ur / 2 + vr / 24;
            ci = -ui / 2 + vi / 24;
            sr = d * (1 - ur / 6 + vr / 120);
            si = d * (-ui / 6 + vi / 120);
            tr = ar * sr - ai * si;
            ti = ar * si + ai * sr;
            double cube = d * d * d;
            dsr = cube * (-1.0 / 6 + ur / 60 - vr / 1680);
            dsi = cube * (ui / 60 - vi / 1680);
        }

        /** Divides t by the layer's density. */
        void divide(Complex light) {
            double r = tr * light.re() - ti * light.im();
            ti = tr * light.im() + ti * light.re();
            tr = r;
            double d = dtr * light.re() - dti * light.im();
            dti = dtr * light.im() + dti * light.re();
            dtr = d;
        }

        /** Takes φ t off c. */
        void face(Complex facing) {
            cr -= facing.re() * tr - facing.im() * ti;
            ci -= facing.re() * ti + facing.im() * tr;
            dcr -= facing.re() * dtr - facing.im() * dti;
            dci -= facing.re() * dti + facing.im() * dtr;
        }

        void copy(Strip o) {
            cr = o.cr;
            ci = o.ci;
            sr = o.sr;
            si = o.si;
            tr = o.tr;
            ti = o.ti;
            dcr = o.dcr;
            dci = o.dci;
            dsr = o.dsr;
            dsi = o.dsi;
            dtr = o.dtr;
            dti = o.dti;
        }
    }
}
