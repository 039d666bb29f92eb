package hushmaze.sound.quick;

import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.SlitMedia;

/** The stretch of a pass under a port's mouth: impedances between the pass, the stub behind the port and the port's duct. */
final class MouthField {
    /** Decay along the mouth from which on nothing gets across, Np. */
    private static final double DEEP = 30;

    private static final Complex ONE = new Complex(1, 0);

    private final ModeSet duct;
    private final ModeSet mouth;
    private final ModeSet pass;
    private final SlitMedia media;
    private final double length;

    MouthField(ModeSet duct, ModeSet mouth, ModeSet pass, SlitMedia media) {
        this.duct = duct;
        this.mouth = mouth;
        this.pass = pass;
        this.media = media;
        this.length = duct.high() - duct.low();
    }

    /** Impedance seen by the modes of the pass and, after them, those of the duct. */
    CMatrix impedance(double stub, double endLiner) {
        CMatrix h = Coupling.between(pass, mouth);
        CMatrix t = h.transposed();
        // along the mouth: closed at the other face, -j cot(κ l)/κ at the same face and -j/(κ sin κ l) across
        CVector same = new CVector(mouth.count);
        CVector across = new CVector(mouth.count);
        faces(same, across);
        CMatrix own = t.timesToSymmetric(h.copy().scaleRows(same));
        CMatrix over = t.timesToSymmetric(h.copy().scaleRows(across));
        CMatrix toPass = t.times(drive(length));
        CMatrix toStub = t.times(drive(0));
        int n = pass.count;
        int all = n + duct.count;
        CMatrix z = new CMatrix(all, all);
        z.put(0, 0, own);
        z.put(0, n, toPass);
        z.put(n, 0, toPass.transposed());
        mouthItself(z, n);
        if (stub < 1e-6 && endLiner <= 0) {
            return z;
        }
        CMatrix end = Fields.before(Fields.end(pass, endLiner, media), Fields.along(pass.axial, stub));
        CMatrix link = new CMatrix(n, all);
        link.put(0, 0, over);
        link.put(0, n, toStub);
        return z.add(link.transposed().timesToSymmetric(behind(end, own, link.copy())), -1);
    }

    /**
     * (Z + own)⁻¹ link, Z = (1 + R) (K (1 - R))⁻¹ the impedance of a reflection R. Where some field is reflected as by a rigid
     * wall Z is infinite, so it is not computed by itself.
     */
    private CMatrix behind(CMatrix reflection, CMatrix own, CMatrix link) {
        CMatrix flow = new CMatrix(pass.count, pass.count)
                .add(reflection, -1)
                .addIdentity(1)
                .scaleRows(pass.axial);
        CMatrix sum = own.times(flow).add(reflection, 1).addIdentity(1);
        return flow.times(sum.solve(link));
    }

    private void faces(CVector same, CVector across) {
        Wave wave = new Wave();
        for (int m = 0; m < mouth.count; m++) {
            Complex k = new Complex(mouth.axial.re[m], mouth.axial.im[m]);
            if (-k.im() * length > DEEP) {
                // dies on the way: nothing across, and 1/κ at the same face
                Complex own = new Complex(1, 0).dividedBy(k);
                same.set(m, own.re(), own.im());
                continue;
            }
            Complex q = new Complex(mouth.squaredRe(m), mouth.squaredIm(m));
            wave.functions(q.re(), q.im(), length);
            Complex below = new Complex(wave.sinRe, wave.sinIm).times(q);
            Complex cot = new Complex(wave.cosRe, wave.cosIm)
                    .times(new Complex(0, -1))
                    .dividedBy(below);
            Complex csc = new Complex(0, -1).dividedBy(below);
            same.set(m, cot.re(), cot.im());
            across.set(m, csc.re(), csc.im());
        }
    }

    /** Amplitudes at a face for unit flow of each duct mode, -j hp ψ(mouth) χ(x) / (κ² - kx²). */
    private CMatrix drive(double x) {
        CMatrix drive = new CMatrix(mouth.count, duct.count);
        Wave wave = new Wave();
        for (int m = 0; m < mouth.count; m++) {
            mouth.at(m, 0, mouth.low(), wave);
            Complex value = new Complex(wave.valueRe, wave.valueIm);
            for (int n = 0; n < duct.count; n++) {
                double k = n * Math.PI / length;
                Complex below = new Complex(mouth.squaredRe(m) - k * k, mouth.squaredIm(m));
                Complex entry =
                        value.times(new Complex(0, -duct.height * shape(n, x))).dividedBy(below);
                drive.set(m, n, entry.re(), entry.im());
            }
        }
        return drive;
    }

    private double shape(int n, double x) {
        return Math.sqrt((n == 0 ? 1 : 2) / (length * duct.height)) * Math.cos(n * Math.PI * x / length);
    }

    /**
     * The duct's own impedance: straight across the pass, one wave along x at a time. Through a layer with P' (h/ρ) = B P on
     * its far face, (s q² T + B) / (1 - B T / s) on the near one, with s = h/ρ, T = tan(qd)/q; before a facing B / (1 - φ B / h).
     */
    private void mouthItself(CMatrix z, int from) {
        Wave w = new Wave();
        for (int n = 0; n < duct.count; n++) {
            double k = n * Math.PI / length;
            Complex b = new Complex(0, 0);
            for (int l = mouth.layers() - 1; l >= 0; l--) {
                Complex q = mouth.layerSquared(l).plus(new Complex(-k * k, 0));
                Complex s = new Complex(mouth.weightRe(l), mouth.weightIm(l));
                Complex t = w.tangent(q, mouth.edge(l + 1) - mouth.edge(l));
                Complex below = ONE.plus(b.times(t).dividedBy(s).times(-1));
                b = t.times(q).times(s).plus(b).dividedBy(below);
                if (l > 0) {
                    Complex lets = b.times(mouth.facing(l - 1)).times(-1 / mouth.height);
                    b = b.dividedBy(ONE.plus(lets));
                }
            }
            Complex own = new Complex(0, -duct.height).dividedBy(b);
            z.set(from + n, from + n, own.re(), own.im());
        }
    }
}
