package hushmaze.sound.quick;

import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.SlitMedia;

/** Pieces of mode matching that every junction needs. Amplitudes c = a + b, flows f = K (a - b), K the axial wavenumbers. */
final class Fields {
    private Fields() {}

    /**
     * Reflection at the closed end of a section: a slab of liner on a rigid wall over the whole section, or the bare wall.
     *
     * @param depth of the slab, m
     */
    static CMatrix end(ModeSet modes, double depth, SlitMedia media) {
        return depth <= 0 ? CMatrix.identity(modes.count) : slab(modes, depth, media);
    }

    private static CMatrix slab(ModeSet modes, double depth, SlitMedia media) {
        int n = modes.count;
        CMatrix c = Coupling.withSlab(modes, n);
        CVector y = slabFlow(modes, depth, media);
        CMatrix admittance = c.copy().scaleColumns(y).timesToSymmetric(c.transposed());
        return reflection(admittance, modes.axial);
    }

    /**
     * The same for modes that are all symmetric or antisymmetric: none of one kind reflects into the other.
     *
     * @param ofKind which modes are of each kind, symmetric ones first
     */
    static CMatrix[] ends(ModeSet modes, double depth, SlitMedia media, int[][] ofKind) {
        CMatrix c = depth <= 0 ? null : Coupling.withSlab(modes, modes.count);
        CVector y = depth <= 0 ? null : slabFlow(modes, depth, media);
        CMatrix[] ends = new CMatrix[ofKind.length];
        for (int kind = 0; kind < ofKind.length; kind++) {
            int[] rows = ofKind[kind];
            if (c == null) {
                ends[kind] = CMatrix.identity(rows.length);
                continue;
            }
            int[] slabs = new int[(modes.count + 1 - kind) / 2];
            for (int s = 0; s < slabs.length; s++) {
                slabs[s] = 2 * s + kind;
            }
            CMatrix own = c.chosen(rows, slabs);
            CMatrix admittance = own.copy().scaleColumns(y.chosen(slabs)).timesToSymmetric(own.transposed());
            ends[kind] = reflection(admittance, modes.axial.chosen(rows));
        }
        return ends;
    }

    /** Flow Y = j h κ tan(κ e) / ρ into each mode of the slab, through its facing Y / (1 + j φ Y / h). */
    private static CVector slabFlow(ModeSet modes, double depth, SlitMedia media) {
        int slabs = modes.count;
        double width = modes.high() - modes.low();
        CVector y = new CVector(slabs);
        Wave wave = new Wave();
        for (int s = 0; s < slabs; s++) {
            double across = s * Math.PI / width;
            Complex q = media.high().squared().plus(new Complex(-across * across, 0));
            Complex tangent = wave.tangent(q, depth);
            Complex flow = tangent.times(q)
                    .times(new Complex(0, modes.height))
                    .dividedBy(media.high().density());
            Complex held = flow.times(media.high().facing()).times(new Complex(0, 1 / modes.height));
            Complex through = flow.dividedBy(held.plus(new Complex(1, 0)));
            y.set(s, through.re(), through.im());
        }
        return y;
    }

    private static CMatrix reflection(CMatrix admittance, CVector axial) {
        int n = axial.size();
        CMatrix difference = new CMatrix(n, n).add(admittance, -1);
        for (int i = 0; i < n; i++) {
            int at = i * n + i;
            difference.re[at] += axial.re[i];
            difference.im[at] += axial.im[i];
            admittance.re[at] += axial.re[i];
            admittance.im[at] += axial.im[i];
        }
        return admittance.solve(difference);
    }

    /** exp(-j κ length) of every mode. */
    static CVector along(CVector axial, double length) {
        CVector e = new CVector(axial.size());
        for (int i = 0; i < e.size(); i++) {
            double size = Math.exp(axial.im[i] * length);
            e.set(i, size * Math.cos(axial.re[i] * length), -size * Math.sin(axial.re[i] * length));
        }
        return e;
    }

    /** A reflection seen through a length of the section. */
    static CMatrix before(CMatrix reflection, CVector along) {
        return reflection.scaleRows(along).scaleColumns(along);
    }

    /** Scattering (Z K + 1)⁻¹ (Z K - 1) between chosen ports of an impedance; the other ports lead on to infinity. */
    static CMatrix scattering(CMatrix impedance, CVector axial, int[] kept) {
        return scattering(impedance, axial, kept, kept);
    }

    /** The same out of some ports for waves that come in by others. */
    static CMatrix scattering(CMatrix impedance, CVector axial, int[] out, int[] in) {
        int n = impedance.rows;
        CMatrix zk = impedance.copy().scaleColumns(axial);
        CMatrix right = new CMatrix(n, in.length);
        for (int j = 0; j < in.length; j++) {
            for (int i = 0; i < n; i++) {
                right.set(i, j, zk.re[i * n + in[j]] - (i == in[j] ? 1 : 0), zk.im[i * n + in[j]]);
            }
        }
        return zk.addIdentity(1).solve(right).chosenRows(out);
    }
}
