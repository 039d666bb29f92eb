package hushmaze.sound.quick;

import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.SlitMedia;
import hushmaze.sound.porous.SlitSection;

/** A port over all frequencies. */
final class PortTable {
    private static final int MOST = 28;
    private static final int FEWEST_IN_DUCT = 4;

    private final PortShape shape;
    private final QuickTables tables;
    private final double[][] entry;
    private final double[][] reflection;
    private final double[][] outgoing;

    PortTable(PortShape shape, QuickTables tables) {
        this.shape = shape;
        this.tables = tables;
        entry = new double[tables.grid().size()][];
        reflection = new double[entry.length][];
        outgoing = new double[entry.length][];
        FieldAt field = switch (shape.kind()) {
            case END -> end();
            case SIDE -> side();
            case BROAD -> broad();
        };
        for (int f = 0; f < entry.length; f++) {
            PortField at = field.at(f);
            entry[f] = TurnTable.interleaved(at.entry().part(0, 0, at.entry().rows, 1));
            reflection[f] = TurnTable.interleaved(at.reflection());
            outgoing[f] = TurnTable.interleaved(power(at));
        }
    }

    private interface FieldAt {
        PortField at(int f);
    }

    /** Amplitudes of the pass's carried modes for a plane wave of amplitude one in the duct. */
    double[] entry(int f) {
        return entry[f];
    }

    /** Reflection of the carried modes at the port. */
    double[] reflection(int f) {
        return reflection[f];
    }

    /** Power that leaves through the duct as a Hermitian form of the carried modes' amplitudes. */
    double[] outgoing(int f) {
        return outgoing[f];
    }

    /** Clear area of the duct, m². */
    double area() {
        return shape.along() * shape.across();
    }

    private FieldAt end() {
        SlitSection section = shape.pass();
        SectionModes pass = tables.section(section, shape.fluids());
        SectionModes duct = tables.section(new SlitSection(0, shape.along(), 0), Fluids.PLAIN);
        SlitSection hole = new SlitSection(
                PathPlan.tidy(Math.max(0, shape.offset() + section.low())),
                shape.along(),
                PathPlan.tidy(Math.max(0, section.width() + section.high() - shape.offset() - shape.along())));
        SectionModes through = shape.endLiner() > 0
                ? tables.section(hole, shape.fluids().inHole(shape.height(), shape.across(), tables.faced()))
                : null;
        SlitMedia[] media = tables.media(shape.fluids());
        return f -> {
            int n = pass.enough(f, MOST);
            int inDuct = (int) Math.ceil(n * shape.along() / section.total()) + 1;
            ModeSet d =
                    duct.at(f, Math.max(FEWEST_IN_DUCT, inDuct), shape.across()).shifted(shape.offset());
            ModeSet p = pass.at(f, n, shape.height());
            if (through == pass && shape.across() == shape.height()) {
                return PortField.end(d, shape.endLiner(), p, pass.carried(f));
            }
            ModeSet t =
                    through == null ? null : through.at(f, n, shape.across()).shifted(shape.offset());
            return PortField.end(d, t, shape.endLiner(), p, media[f].high().facing(), pass.carried(f));
        };
    }

    private FieldAt side() {
        SlitSection section = shape.turned() ? shape.pass().mirrored() : shape.pass();
        SectionModes passModes = tables.section(shape.pass(), shape.fluids());
        SlitMedia[] media = tables.media(shape.fluids());
        SectionModes duct = tables.section(new SlitSection(0, shape.along(), 0), Fluids.PLAIN);
        SectionModes under = underMouth(section, media);
        double holeDepth = under.section.low();
        return f -> {
            int n = passModes.enough(f, MOST);
            ModeSet pass = passModes.at(f, n, shape.height());
            ModeSet seen = shape.turned() ? pass.mirrored() : pass;
            ModeSet mouth = under.at(f, n + 1, shape.height()).shifted(holeDepth - section.low());
            ModeSet d = duct.at(f, Math.max(FEWEST_IN_DUCT, duct.enough(f, MOST)), shape.across());
            return PortField.side(d, mouth, seen, shape.stub(), shape.endLiner(), media[f], passModes.carried(f));
        };
    }

    /**
     * The section under the mouth of a side port. The hole through the liner is as high as the port: where that is less than
     * the clear height it counts as a layer of denser air.
     */
    private SectionModes underMouth(SlitSection section, SlitMedia[] media) {
        double open = section.low() + section.width();
        SlitMedia[] plain = tables.media(Fluids.PLAIN);
        if (section.low() == 0
                || (shape.across() == shape.height() && shape.fluids().equals(Fluids.PLAIN))) {
            return tables.section(new SlitSection(0, open, section.high()), shape.fluids());
        }
        SlitMedia[] layered = new SlitMedia[media.length];
        for (int f = 0; f < media.length; f++) {
            SlitMedia.Layer hole =
                    new SlitMedia.Layer(plain[f].airSquared(), new Complex(shape.height() / shape.across(), 0));
            layered[f] = new SlitMedia(media[f].airSquared(), hole, media[f].high());
        }
        return new SectionModes(section, layered, tables);
    }

    /**
     * A port in a broad face, in the plane of x and z: the pass is the slit between the broad faces, whose air has the axial
     * wavenumber of the pass's least attenuated mode across y. Only that mode couples, without change along z; the power that
     * goes into modes across z is taken to travel with it.
     */
    private FieldAt broad() {
        double lining = shape.fluids().broadLiner();
        SectionModes flat = tables.section(shape.pass(), Fluids.PLAIN);
        SectionModes chain = tables.section(shape.pass(), shape.fluids());
        SlitMedia[] plain = tables.media(Fluids.PLAIN);
        SlitMedia[] media = new SlitMedia[plain.length];
        for (int f = 0; f < media.length; f++) {
            media[f] = plain[f].withAir(flat.mode(f, 0).squared());
        }
        SlitSection section = new SlitSection(lining, shape.height(), lining);
        SectionModes passModes = new SectionModes(section, media, tables);
        SectionModes under = new SectionModes(new SlitSection(0, lining + shape.height(), lining), media, tables);
        SectionModes duct = tables.section(new SlitSection(0, shape.along(), 0), Fluids.PLAIN);
        double width = shape.pass().width();
        return f -> {
            int n = passModes.enough(f, MOST);
            ModeSet pass = passModes.at(f, n, width);
            ModeSet mouth = under.at(f, n + 1, width).shifted(-lining);
            ModeSet d = duct.at(f, Math.max(FEWEST_IN_DUCT, duct.enough(f, MOST)), shape.across());
            PortField all = PortField.sideForFirst(d, mouth, pass, shape.stub(), shape.endLiner(), media[f]);
            return all.onlyFirst(flat.carried(f), chain.mode(f, 0).axial());
        };
    }

    /** Σ conj(g) gᵀ / Kd over the duct's modes, g = Kp S. */
    private static CMatrix power(PortField field) {
        int n = field.reflection().rows;
        int ducts = field.entry().columns;
        CMatrix power = new CMatrix(n, n);
        for (int d = 0; d < ducts; d++) {
            Complex[] g = new Complex[n];
            for (int p = 0; p < n; p++) {
                int at = p * ducts + d;
                g[p] = new Complex(field.entry().re[at], field.entry().im[at])
                        .times(new Complex(field.passAxial().re[p], field.passAxial().im[p]));
            }
            double k = field.ductAxial().re[d];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    Complex conj = new Complex(g[i].re(), -g[i].im());
                    Complex part = conj.times(g[j]);
                    power.re[i * n + j] += part.re() / k;
                    power.im[i * n + j] += part.im() / k;
                }
            }
        }
        return power;
    }
}
