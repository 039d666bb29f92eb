package hushmaze.sound.quick;

import hushmaze.sound.porous.Complex;

/**
 * A change of section: the smaller one opens into the larger one in one plane.
 *
 * @param forward amplitudes in the larger section for waves that come in the smaller one
 * @param backSmall reflected in the smaller one
 * @param backward amplitudes in the smaller section for waves that come in the larger one
 * @param backLarge reflected in the larger one
 */
record Step(CMatrix forward, CMatrix backSmall, CMatrix backward, CMatrix backLarge) {
    /** With X = Hᵀ Kl⁻¹ H Ks: (1 + X) bs = 2 Hᵀ al - (1 - X) as, bl = al + Kl⁻¹ H Ks (as - bs). */
    static Step between(ModeSet small, ModeSet large) {
        return between(Coupling.between(small, large), small.axial, large.axial);
    }

    /** The same where the layers of the smaller section have a facing in this plane: X = Hᵀ Kl⁻¹ H Ks + Z Ks. */
    static Step behind(Complex facing, ModeSet small, ModeSet large) {
        CMatrix through =
                facing.absSquared() == 0 ? null : Coupling.throughFacing(facing.times(1 / large.height), small);
        return between(Coupling.between(small, large), small.axial, large.axial, through);
    }

    static Step between(CMatrix h, CVector small, CVector large) {
        return between(h, small, large, null);
    }

    /** @param through impedance of what lies in the plane over the smaller section; null if there is nothing */
    private static Step between(CMatrix h, CVector small, CVector large, CMatrix through) {
        CVector thin = large.inverted();
        CMatrix flow = h.copy().scaleColumns(small);
        CMatrix p = h.copy().scaleRows(thin);
        CMatrix t = h.transposed();
        CMatrix x = t.timesToSymmetric(p).scaleColumns(small);
        p.scaleColumns(small);
        if (through != null) {
            x.add(through.scaleColumns(small), 1);
        }
        int n = small.size();
        CMatrix right = new CMatrix(n, n + large.size());
        right.put(0, 0, x.copy().addIdentity(-1));
        right.put(0, n, new CMatrix(n, large.size()).add(t, 2));
        CMatrix solved = x.addIdentity(1).solve(right);
        CMatrix backSmall = solved.part(0, 0, n, n);
        CMatrix backward = solved.part(0, n, n, large.size());
        CMatrix forward = p.times(new CMatrix(n, n).add(backSmall, -1).addIdentity(1));
        CMatrix backLarge = new CMatrix(large.size(), large.size())
                .add(flow.timesToSymmetric(backward).scaleRows(thin), -1)
                .addIdentity(1);
        return new Step(forward, backSmall, backward, backLarge);
    }
}
