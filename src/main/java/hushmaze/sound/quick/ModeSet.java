package hushmaze.sound.quick;

import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.SlitMedia;
import hushmaze.sound.porous.SlitRoots;
import hushmaze.sound.porous.SlitSection;
import java.util.Arrays;
import java.util.Collections;
import java.util.stream.IntStream;

/**
 * The modes of a layered section at one frequency: axial wavenumbers and shapes u(y), scaled so that ∫ (h/ρ) u² dy = 1.
 *
 * <p>h is the height of the section in m, ρ the density over that of air. The air starts at {@link #airLow}.
 */
final class ModeSet {
    /** What is left of a difference that is nothing but rounding. */
    private static final double ROUNDING = 1e-8;

    final int count;
    /** Axial wavenumbers of decay along +x, 1/m. */
    final CVector axial;

    final double height;
    private final int layers;
    private final double[] edges;
    private final boolean[] fromTop;
    private final double[] layerRe;
    private final double[] layerIm;
    private final double[] weightRe;
    private final double[] weightIm;
    /** Per inner edge, the pressure that is more behind it for a slope over density of one, m. */
    private final Complex[] facings;

    private final CVector squared;
    private final CVector values;
    private final CVector slopes;
    private final int airLayer;
    private final int[] parities;
    /** Per mode: whether the air holds the values at its low and high face instead of value and slope at one. */
    private final boolean[] steep;

    private ModeSet(ModeSet o, double[] edges, boolean[] fromTop, CVector values, CVector slopes, boolean reversed) {
        count = o.count;
        axial = o.axial;
        height = o.height;
        layers = o.layers;
        squared = o.squared;
        steep = o.steep;
        parities = o.parities;
        this.edges = edges;
        this.fromTop = fromTop;
        this.values = values;
        this.slopes = slopes;
        layerRe = reversed ? reversed(o.layerRe) : o.layerRe;
        layerIm = reversed ? reversed(o.layerIm) : o.layerIm;
        weightRe = reversed ? reversed(o.weightRe) : o.weightRe;
        weightIm = reversed ? reversed(o.weightIm) : o.weightIm;
        airLayer = reversed ? layers - 1 - o.airLayer : o.airLayer;
        facings = o.facings.clone();
        if (reversed) {
            Collections.reverse(Arrays.asList(facings));
        }
    }

    /**
     * @param section layers; the air starts at y = 0
     * @param media fluids
     * @param modes roots, those that decay least first
     * @param count how many of them to use
     * @param height of the section, m
     */
    ModeSet(SlitSection section, SlitMedia media, SlitRoots.Mode[] modes, int count, double height) {
        this.count = Math.min(count, modes.length);
        this.height = height;
        boolean low = section.low() > 0;
        boolean high = section.high() > 0;
        layers = 1 + (low ? 1 : 0) + (high ? 1 : 0);
        airLayer = low ? 1 : 0;
        edges = new double[layers + 1];
        fromTop = new boolean[layers];
        layerRe = new double[layers];
        layerIm = new double[layers];
        weightRe = new double[layers];
        weightIm = new double[layers];
        for (int l = 0; l < layers; l++) {
            boolean air = l == airLayer;
            SlitMedia.Layer layer = l < airLayer ? media.low() : media.high();
            Complex square = air ? media.airSquared() : layer.squared();
            Complex light = new Complex(1, 0).dividedBy(layer.density());
            layerRe[l] = square.re();
            layerIm[l] = square.im();
            weightRe[l] = height * (air ? 1 : light.re());
            weightIm[l] = height * (air ? 0 : light.im());
        }
        facings = new Complex[layers - 1];
        if (low) {
            facings[0] = media.low().facing();
        }
        if (high) {
            facings[layers - 2] = media.high().facing();
        }
        edges[0] = -section.low();
        edges[airLayer] = 0;
        edges[airLayer + 1] = section.width();
        if (high) {
            edges[layers] = section.width() + section.high();
            fromTop[layers - 1] = true;
        }
        axial = new CVector(this.count);
        squared = new CVector(this.count);
        steep = new boolean[this.count];
        parities = new int[this.count];
        values = new CVector(this.count * layers);
        slopes = new CVector(this.count * layers);
        for (int m = 0; m < this.count; m++) {
            Complex k = modes[m].axial();
            axial.set(m, k.re(), k.im());
            squared.set(m, modes[m].squared().re(), modes[m].squared().im());
            parities[m] = modes[m].parity();
            shape(m, media, parities[m]);
            scale(m);
        }
    }

    /** 1 for a mode that is its own mirror image about the middle of the section, -1 for one that is minus it, 0 for others. */
    int parity(int mode) {
        return parities[mode];
    }

    /** Whether every mode has a parity. */
    boolean mirrorsItself() {
        return Arrays.stream(parities).noneMatch(parity -> parity == 0);
    }

    int[] ofParity(int parity) {
        return IntStream.range(0, count).filter(m -> parities[m] == parity).toArray();
    }

    double airLow() {
        return edges[airLayer];
    }

    double low() {
        return edges[0];
    }

    double high() {
        return edges[layers];
    }

    int layers() {
        return layers;
    }

    boolean isAir(int layer) {
        return layer == airLayer;
    }

    double edge(int i) {
        return edges[i];
    }

    /** The layer that holds a place. */
    int layerAt(double y) {
        int l = 0;
        while (l < layers - 1 && y > edges[l + 1]) {
            l++;
        }
        return l;
    }

    double weightRe(int layer) {
        return weightRe[layer];
    }

    double weightIm(int layer) {
        return weightIm[layer];
    }

    /** What lies between a layer and the next one: pressure is higher by so much times (1/ρ) dp/dy beyond it, m. */
    Complex facing(int layer) {
        return facings[layer];
    }

    /** Squared wavenumber of what fills a layer, 1/m². */
    Complex layerSquared(int layer) {
        return new Complex(layerRe[layer], layerIm[layer]);
    }

    double acrossRe(int mode, int layer) {
        return layerRe[layer] - squared.re[mode];
    }

    double acrossIm(int mode, int layer) {
        return layerIm[layer] - squared.im[mode];
    }

    double squaredRe(int mode) {
        return squared.re[mode];
    }

    double squaredIm(int mode) {
        return squared.im[mode];
    }

    /** Value and slope of a mode's shape at a place in a layer. */
    void at(int mode, int layer, double y, Wave out) {
        int i = mode * layers + layer;
        if (steep[mode] && layer == airLayer) {
            out.between(
                    acrossRe(mode, layer),
                    acrossIm(mode, layer),
                    new Complex(values.re[i], values.im[i]),
                    new Complex(slopes.re[i], slopes.im[i]),
                    edges[layer + 1] - edges[layer],
                    y - edges[layer]);
            return;
        }
        out.set(values.re[i], values.im[i], slopes.re[i], slopes.im[i]);
        double reference = fromTop[layer] ? edges[layer + 1] : edges[layer];
        if (y != reference) {
            out.move(acrossRe(mode, layer), acrossIm(mode, layer), y - reference);
        }
    }

    /** The same modes with the origin moved by dy. */
    ModeSet shifted(double dy) {
        double[] moved = edges.clone();
        for (int i = 0; i < moved.length; i++) {
            moved[i] += dy;
        }
        return new ModeSet(this, moved, fromTop, values, slopes, false);
    }

    /** The same modes seen from the other side: y becomes (low + high of the air) - y. */
    ModeSet mirrored() {
        double sum = edges[airLayer] + edges[airLayer + 1];
        double[] turned = new double[layers + 1];
        boolean[] top = new boolean[layers];
        CVector v = new CVector(values.size());
        CVector s = new CVector(values.size());
        for (int i = 0; i <= layers; i++) {
            turned[i] = sum - edges[layers - i];
        }
        for (int l = 0; l < layers; l++) {
            top[l] = !fromTop[layers - 1 - l];
            for (int m = 0; m < count; m++) {
                int from = m * layers + layers - 1 - l;
                if (steep[m] && layers - 1 - l == airLayer) {
                    v.set(m * layers + l, slopes.re[from], slopes.im[from]);
                    s.set(m * layers + l, values.re[from], values.im[from]);
                    continue;
                }
                v.set(m * layers + l, values.re[from], values.im[from]);
                s.set(m * layers + l, -slopes.re[from], -slopes.im[from]);
            }
        }
        return new ModeSet(this, turned, top, v, s, true);
    }

    /** Means of u v* over the air, rows u. */
    CMatrix products() {
        CMatrix products = new CMatrix(count, count);
        double from = edges[airLayer];
        double width = edges[airLayer + 1] - from;
        int points = 8 + 2 * count;
        Wave w = new Wave();
        CVector u = new CVector(count);
        for (int i = 0; i < points; i++) {
            for (int m = 0; m < count; m++) {
                at(m, airLayer, from + width * (i + 0.5) / points, w);
                u.set(m, w.valueRe, w.valueIm);
            }
            for (int m = 0; m < count; m++) {
                for (int n = 0; n < count; n++) {
                    int at = m * count + n;
                    products.re[at] += (u.re[m] * u.re[n] + u.im[m] * u.im[n]) / points;
                    products.im[at] += (u.im[m] * u.re[n] - u.re[m] * u.im[n]) / points;
                }
            }
        }
        return products;
    }

    /** Follows the shape from the low wall through the layers. */
    private void shape(int m, SlitMedia media, int parity) {
        Complex density = media.low().density();
        Wave w = new Wave();
        w.set(1, 0, 0, 0);
        int at = m * layers;
        if (airLayer == 1) {
            store(at, w);
            at(m, 0, edges[1], w);
            // (1/ρ) u' is continuous
            w.set(
                    w.valueRe,
                    w.valueIm,
                    (w.slopeRe * density.re() + w.slopeIm * density.im()) / density.absSquared(),
                    (w.slopeIm * density.re() - w.slopeRe * density.im()) / density.absSquared());
            w.face(facings[0]);
        }
        store(at + airLayer, w);
        double width = edges[airLayer + 1] - edges[airLayer];
        if (Wave.steep(acrossRe(m, airLayer), acrossIm(m, airLayer), width)) {
            steep[m] = true;
            Complex far = parity == 0 ? far(m, w, width) : new Complex(w.valueRe, w.valueIm).times(parity);
            slopes.set(at + airLayer, far.re(), far.im());
        }
        if (!fromTop[layers - 1]) {
            return;
        }
        int top = at + layers - 1;
        if (parity != 0 && airLayer == 1) {
            values.set(top, parity * values.re[at], parity * values.im[at]);
            return;
        }
        at(m, airLayer, edges[airLayer + 1], w);
        w.face(facings[layers - 2]);
        topValue(m, top, w, media.high().density());
    }

    /** The value at the air's high face from value and slope at its low one: nothing if it is only rounding. */
    private Complex far(int m, Wave low, double width) {
        Wave f = new Wave();
        f.functions(acrossRe(m, airLayer), acrossIm(m, airLayer), width);
        Complex one = new Complex(low.valueRe, low.valueIm).times(new Complex(f.cosRe, f.cosIm));
        Complex other = new Complex(low.slopeRe, low.slopeIm).times(new Complex(f.sinRe, f.sinIm));
        Complex sum = one.plus(other);
        boolean rounding = sum.absSquared() < ROUNDING * ROUNDING * (one.absSquared() + other.absSquared());
        return rounding ? new Complex(0, 0) : sum;
    }

    /** The value at the high wall from value or slope at the face of its layer, whichever is better conditioned. */
    private void topValue(int m, int top, Wave face, Complex density) {
        Wave f = new Wave();
        double depth = edges[layers] - edges[layers - 1];
        double qr = acrossRe(m, layers - 1);
        double qi = acrossIm(m, layers - 1);
        f.functions(qr, qi, depth);
        Complex cos = new Complex(f.cosRe, f.cosIm);
        // u = A cos β(top - y): u' = A β sin β(top - y) = A β² (sin β d / β)
        Complex rise = new Complex(f.sinRe, f.sinIm).times(new Complex(qr, qi));
        Complex a;
        if (cos.absSquared() * (Math.hypot(qr, qi)) >= rise.absSquared()) {
            a = new Complex(face.valueRe, face.valueIm).dividedBy(cos);
        } else {
            a = new Complex(face.slopeRe, face.slopeIm).times(density).dividedBy(rise);
        }
        values.set(top, a.re(), a.im());
    }

    private void store(int i, Wave w) {
        values.set(i, w.valueRe, w.valueIm);
        slopes.set(i, w.slopeRe, w.slopeIm);
    }

    private void scale(int m) {
        Wave a = new Wave();
        Wave b = new Wave();
        Overlap overlap = new Overlap();
        double nr = 0;
        double ni = 0;
        for (int l = 0; l < layers; l++) {
            at(m, l, edges[l], a);
            at(m, l, edges[l + 1], b);
            overlap.square(acrossRe(m, l), acrossIm(m, l), a, b, edges[l + 1] - edges[l]);
            nr += weightRe[l] * overlap.re - weightIm[l] * overlap.im;
            ni += weightRe[l] * overlap.im + weightIm[l] * overlap.re;
        }
        Complex factor = new Complex(1, 0).dividedBy(new Complex(nr, ni).sqrt());
        for (int i = m * layers; i < (m + 1) * layers; i++) {
            Complex v = new Complex(values.re[i], values.im[i]).times(factor);
            Complex s = new Complex(slopes.re[i], slopes.im[i]).times(factor);
            values.set(i, v.re(), v.im());
            slopes.set(i, s.re(), s.im());
        }
    }

    private static double[] reversed(double[] a) {
        double[] b = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            b[i] = a[a.length - 1 - i];
        }
        return b;
    }
}
