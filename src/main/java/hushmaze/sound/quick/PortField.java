package hushmaze.sound.quick;

import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.SlitMedia;

/**
 * A port at one frequency by mode matching.
 *
 * @param entry amplitudes of the pass's first modes for each propagating mode of the port's duct, rows modes of the pass
 * @param reflection of the pass's first modes at the port
 * @param ductAxial axial wavenumbers of the duct's propagating modes, 1/m
 * @param passAxial axial wavenumbers of the pass's first modes, 1/m
 */
record PortField(CMatrix entry, CMatrix reflection, CVector ductAxial, CVector passAxial) {
    /**
     * A port in the end of its pass: duct, stretch through the end's liner, pass.
     *
     * @param duct modes of the port's duct
     * @param through modes of the hole through the end's liner; null if the end is bare
     * @param depth of the end's liner, m
     * @param pass modes of the pass, all in the same coordinates
     * @param facing of the end's liner, towards the pass
     */
    static PortField end(ModeSet duct, ModeSet through, double depth, ModeSet pass, Complex facing, int carried) {
        int open = propagating(duct);
        Step last = through == null ? Step.between(duct, pass) : Step.behind(facing, through, pass);
        if (through == null) {
            return new PortField(
                    last.forward().part(0, 0, carried, open),
                    last.backLarge().part(0, 0, carried, carried),
                    head(duct.axial, open),
                    head(pass.axial, carried));
        }
        Step first = Step.between(duct, through);
        CVector along = Fields.along(through.axial, depth);
        // waves in the hole: a = S1 in + R1 b, b = R2 a + S2 back, with R1, R2 seen through the hole's length
        CMatrix r1 = Fields.before(first.backLarge(), along);
        CMatrix entry = first.forward().part(0, 0, through.count, open).scaleRows(along);
        CMatrix loop = new CMatrix(r1.rows, r1.rows)
                .add(r1.times(last.backSmall()), -1)
                .addIdentity(1);
        CMatrix right = new CMatrix(through.count, open + pass.count);
        right.put(0, 0, entry);
        right.put(0, open, r1.times(last.backward()));
        CMatrix inside = last.forward().times(loop.solve(right));
        CMatrix reflection =
                inside.part(0, open, carried, carried).add(last.backLarge().part(0, 0, carried, carried), 1);
        return new PortField(
                inside.part(0, 0, carried, open), reflection, head(duct.axial, open), head(pass.axial, carried));
    }

    /** The same where the hole through the end's liner has the section of the pass. */
    static PortField end(ModeSet duct, double depth, ModeSet pass, int carried) {
        int open = propagating(duct);
        Step step = Step.between(duct, pass);
        CVector along = Fields.along(pass.axial, depth);
        return new PortField(
                step.forward().part(0, 0, pass.count, open).scaleRows(along).part(0, 0, carried, open),
                Fields.before(step.backLarge(), along).part(0, 0, carried, carried),
                head(duct.axial, open),
                head(pass.axial, carried));
    }

    /**
     * A port in the side of its pass.
     *
     * <p>Under the port's mouth the pass is a section without liner on that side. Its modes carry the field to the faces
     * towards the pass and towards the closed stub between port and end; the duct's modes drive it from the mouth.
     *
     * @param duct modes of the port's duct, which runs across the pass
     * @param mouth modes of the section under the mouth, the port on its low side
     * @param pass modes of the pass in the same coordinates
     * @param stub from the mouth's edge to the end, m
     * @param endLiner depth of the liner on the end, m
     */
    static PortField side(
            ModeSet duct, ModeSet mouth, ModeSet pass, double stub, double endLiner, SlitMedia media, int carried) {
        CMatrix z = new MouthField(duct, mouth, pass, media).impedance(stub, endLiner);
        int open = propagating(duct);
        int[] kept = kept(carried, pass.count, open);
        CMatrix s = Fields.scattering(z, axial(pass, duct), kept);
        return new PortField(
                s.part(0, carried, carried, open),
                s.part(0, 0, carried, carried),
                head(duct.axial, open),
                head(pass.axial, carried));
    }

    /** The same, which holds for waves in the pass's first mode alone: what is reflected of the others is not known. */
    static PortField sideForFirst(
            ModeSet duct, ModeSet mouth, ModeSet pass, double stub, double endLiner, SlitMedia media) {
        CMatrix z = new MouthField(duct, mouth, pass, media).impedance(stub, endLiner);
        int open = propagating(duct);
        CMatrix s = Fields.scattering(z, axial(pass, duct), kept(pass.count, pass.count, 0), kept(1, pass.count, open));
        return new PortField(s.part(0, 1, pass.count, open), s.part(0, 0, 1, 1), head(duct.axial, open), pass.axial);
    }

    /** Numbers of the first modes of the pass, and of the first of the duct, which come after all of the pass. */
    private static int[] kept(int ofPass, int all, int ofDuct) {
        int[] kept = new int[ofPass + ofDuct];
        for (int i = 0; i < kept.length; i++) {
            kept[i] = i < ofPass ? i : all + i - ofPass;
        }
        return kept;
    }

    private static CVector axial(ModeSet pass, ModeSet duct) {
        CVector axial = new CVector(pass.count + duct.count);
        for (int i = 0; i < pass.count; i++) {
            axial.set(i, pass.axial.re[i], pass.axial.im[i]);
        }
        for (int i = 0; i < duct.count; i++) {
            axial.set(pass.count + i, duct.axial.re[i], duct.axial.im[i]);
        }
        return axial;
    }

    /**
     * The same with the pass's first mode alone, among so many. Of the power P that enters all modes and the P1 that enters
     * the first one √(P P1) is taken to travel with it: two such ports in a row then pass as much as if every mode ran the
     * whole way on its own. No more goes out or back than comes in.
     *
     * @param carried how many modes the pass carries on
     * @param chain axial wavenumber of the first mode in the plane of the fold, which differs a little from that across it, 1/m
     */
    PortField onlyFirst(int carried, Complex chain) {
        int open = entry.columns;
        CMatrix one = new CMatrix(carried, open);
        double out = 0;
        for (int d = 0; d < open; d++) {
            double first = entry.re[d] * entry.re[d] + entry.im[d] * entry.im[d];
            double all = 0;
            for (int p = 0; p < entry.rows; p++) {
                int at = p * open + d;
                double share = Math.max(0, passAxial.re[p] / passAxial.re[0]);
                all += share * (entry.re[at] * entry.re[at] + entry.im[at] * entry.im[at]);
            }
            double gain = first > 0 ? Math.sqrt(Math.sqrt(Math.max(1, all / first))) : 1;
            one.set(0, d, gain * entry.re[d], gain * entry.im[d]);
            out += gain * gain * first * passAxial.re[0] / ductAxial.re[d];
        }
        double held = out > 1 ? 1 / Math.sqrt(out) : 1;
        // the same power by the other wavenumber
        Complex ratio = new Complex(passAxial.re[0], passAxial.im[0]).dividedBy(chain);
        Complex scale = ratio.sqrt().times(held);
        for (int d = 0; d < open; d++) {
            Complex scaled = new Complex(one.re[d], one.im[d]).times(scale);
            one.set(0, d, scaled.re(), scaled.im());
        }
        double size = Math.hypot(reflection.re[0], reflection.im[0]);
        double room = Math.sqrt(Math.max(0, 1 - Math.min(1, out)));
        double less = size > room ? room / size : 1;
        CMatrix back = new CMatrix(carried, carried);
        back.set(0, 0, less * reflection.re[0], less * reflection.im[0]);
        CVector axial = new CVector(carried);
        for (int i = 0; i < carried; i++) {
            axial.set(i, chain.re(), chain.im());
        }
        return new PortField(one, back, ductAxial, axial);
    }

    /** Modes of a duct that carry power: of the others the wavenumber is imaginary. */
    private static int propagating(ModeSet duct) {
        int n = 0;
        while (n < duct.count && duct.axial.re[n] > -duct.axial.im[n]) {
            n++;
        }
        return Math.max(1, n);
    }

    private static CVector head(CVector v, int n) {
        CVector head = new CVector(n);
        for (int i = 0; i < n; i++) {
            head.set(i, v.re[i], v.im[i]);
        }
        return head;
    }
}
