package hushmaze.sound.quick;

import hushmaze.sound.porous.SlitMedia;
import hushmaze.sound.porous.SlitSection;
import java.util.Arrays;

/**
 * Where two passes open side by side into the wide section beyond a baffle's tip, and the lined end of that section, over all
 * frequencies: what turns of every gap have in common.
 */
final class TurnMouth {
    private static final int MOST_IN_PASS = 30;

    /**
     * @param first section of the pass before
     * @param second section of the pass after
     * @param tip what the two clear widths are apart, m
     * @param endLiner depth of the liner on the end, m
     * @param fluids of the passes
     */
    record Shape(SlitSection first, SlitSection second, double tip, double endLiner, Fluids fluids) {
        /** From the first pass's wall to the second one's. */
        SlitSection wide() {
            return new SlitSection(first.low(), PathPlan.tidy(first.width() + tip + second.width()), second.high());
        }
    }

    /**
     * The field at one frequency, or the half of it that is symmetric or antisymmetric about the middle.
     *
     * @param back scattering of the passes' carried modes into each other, the wide section going on for ever
     * @param in amplitudes in the wide section for each carried mode
     * @param out amplitudes of the carried modes for each mode of the wide section
     * @param wide reflection in the wide section
     * @param end reflection at the end, in its own plane
     * @param axial wavenumbers of the wide section, 1/m
     */
    record Part(CMatrix back, CMatrix in, CMatrix out, CMatrix wide, CMatrix end, CVector axial) {}

    /**
     * The field at one frequency.
     *
     * @param parts the whole field; or its symmetric and its antisymmetric half, where a pass's modes stand for waves in both
     *     passes at once, 1/√2 in each, in the second one as seen in a mirror
     * @param parities of the carried modes of one pass, if there are halves
     */
    record At(Part[] parts, int[] parities) {}

    private final At[] fields;
    private final Shape shape;

    TurnMouth(Shape shape, QuickTables tables) {
        this.shape = shape;
        this.fields = new At[tables.grid().size()];
        SectionModes first = tables.section(shape.first(), shape.fluids());
        SectionModes second = tables.section(shape.second(), shape.fluids());
        SectionModes wide = tables.section(shape.wide(), shape.fluids());
        SlitMedia[] media = tables.media(shape.fluids());
        double ratio =
                shape.wide().total() / (shape.first().total() + shape.second().total());
        for (int f = 0; f < fields.length; f++) {
            int n1 = first.enough(f, MOST_IN_PASS);
            int n2 = second.enough(f, MOST_IN_PASS);
            ModeSet a = first.at(f, n1, 1);
            ModeSet w = wide.at(f, (int) Math.ceil((n1 + n2) * ratio) + 1, 1);
            if (first == second && a.mirrorsItself() && w.mirrorsItself()) {
                fields[f] = halves(a, w, first.carried(f), media[f]);
                continue;
            }
            ModeSet b = second.at(f, n2, 1).shifted(shape.first().width() + shape.tip());
            fields[f] = match(a, b, w, first.carried(f), Fields.end(w, shape.endLiner(), media[f]));
        }
    }

    At at(int f) {
        return fields[f];
    }

    /** Both passes are matched to the wide section at once; the tip between them is rigid. */
    private static At match(ModeSet a, ModeSet b, ModeSet w, int carried, CMatrix end) {
        int n = a.count + b.count;
        CMatrix h = new CMatrix(w.count, n);
        h.put(0, 0, Coupling.between(a, w));
        h.put(0, a.count, Coupling.between(b, w));
        CVector axial = new CVector(n);
        for (int i = 0; i < n; i++) {
            boolean first = i < a.count;
            axial.set(
                    i,
                    first ? a.axial.re[i] : b.axial.re[i - a.count],
                    first ? a.axial.im[i] : b.axial.im[i - a.count]);
        }
        int[] kept = new int[2 * carried];
        for (int i = 0; i < carried; i++) {
            kept[i] = i;
            kept[carried + i] = a.count + i;
        }
        return new At(new Part[] {part(h, axial, w.axial, kept, end)}, null);
    }

    /** Equal passes: what is symmetric stays so, and half the coupling times √2 is that of both passes. */
    private At halves(ModeSet a, ModeSet w, int carried, SlitMedia media) {
        CMatrix h = Coupling.between(a, w);
        int[][] ofKind = {w.ofParity(1), w.ofParity(-1)};
        CMatrix[] ends = Fields.ends(w, shape.endLiner(), media, ofKind);
        int[] all = new int[a.count];
        Arrays.setAll(all, i -> i);
        int[] kept = Arrays.copyOf(all, carried);
        Part[] parts = new Part[2];
        for (int kind = 0; kind < 2; kind++) {
            CMatrix own = h.chosen(ofKind[kind], all);
            CMatrix both = new CMatrix(own.rows, own.columns).add(own, Math.sqrt(2));
            parts[kind] = part(both, a.axial, w.axial.chosen(ofKind[kind]), kept, ends[kind]);
        }
        int[] parities = new int[carried];
        Arrays.setAll(parities, a::parity);
        return new At(parts, parities);
    }

    private static Part part(CMatrix h, CVector small, CVector large, int[] kept, CMatrix end) {
        Step step = Step.between(h, small, large);
        return new Part(
                step.backSmall().chosen(kept, kept),
                step.forward().transposed().chosenRows(kept).transposed(),
                step.backward().chosenRows(kept),
                step.backLarge(),
                end,
                large);
    }
}
