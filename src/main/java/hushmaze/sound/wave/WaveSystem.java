package hushmaze.sound.wave;

import hushmaze.quantity.InvalidValue;
import hushmaze.sound.porous.Complex;
import java.util.ArrayList;
import java.util.List;

/** The equations of a space at one frequency, and their solutions. */
final class WaveSystem {
    /** Most unknowns of one system. */
    static final int MOST_UNKNOWNS = 400_000;

    final WaveMesh mesh;
    final FrontalPlan plan;
    private final double frequency;
    private final PortModes inlet;
    private final PortModes outlet;
    private final List<Element> elements = new ArrayList<>();

    WaveSystem(BlockGrid blocks, SharpEdges edges, double soundSpeed, double frequency, WaveAccuracy accuracy) {
        this.frequency = frequency;
        double k = 2 * Math.PI * frequency / soundSpeed;
        mesh = new WaveMesh(blocks, edges, k, frequency, accuracy);
        InvalidValue.within("unknowns", mesh.count(), 1, MOST_UNKNOWNS);
        inlet = new PortModes(blocks.inlet, mesh, k);
        outlet = new PortModes(blocks.outlet, mesh, k);
        elements.add(inlet.element());
        for (int cell = 0; cell < mesh.cells.size(); cell++) {
            elements.add(mesh.element(cell));
        }
        elements.add(placeOfOutlet(), outlet.element());
        List<int[]> unknowns = elements.stream().map(Element::unknown).toList();
        int[] late = elements.stream().mapToInt(Element::late).toArray();
        plan = new FrontalPlan(unknowns, late, mesh.count());
    }

    /** The outlet comes after the last cell that touches it. */
    private int placeOfOutlet() {
        boolean[] touched = new boolean[mesh.count()];
        for (int unknown : outlet.unknown()) {
            touched[unknown] = true;
        }
        int place = elements.size();
        while (place > 1) {
            for (int unknown : elements.get(place - 1).unknown()) {
                if (touched[unknown]) {
                    return place;
                }
            }
            place--;
        }
        return place;
    }

    WaveAnswer solve(Runnable pause) {
        FrontalFactor factor = new FrontalFactor(plan, elements, mesh.count(), pause);
        List<List<Complex>> reflected = new ArrayList<>();
        List<List<Complex>> transmitted = new ArrayList<>();
        double residual = 0;
        for (PortMode mode : inlet.carrying()) {
            double[] rightIm = new double[mesh.count()];
            inlet.addIncident(mode, rightIm);
            double[] re = new double[mesh.count()];
            double[] im = rightIm.clone();
            factor.solve(re, im);
            residual = Math.max(residual, residual(rightIm, re, im));
            reflected.add(amplitudes(inlet, mode, re, im));
            transmitted.add(amplitudes(outlet, null, re, im));
        }
        return new WaveAnswer(
                frequency,
                inlet.carrying(),
                outlet.carrying(),
                reflected,
                transmitted,
                outlet.area() / inlet.area(),
                residual,
                mesh.count());
    }

    private static List<Complex> amplitudes(PortModes port, PortMode incident, double[] re, double[] im) {
        List<Complex> out = new ArrayList<>();
        for (PortMode mode : port.carrying()) {
            Complex all = port.amplitude(mode, re, im);
            out.add(mode.equals(incident) ? all.plus(new Complex(-1, 0)) : all);
        }
        return out;
    }

    private double residual(double[] rightIm, double[] re, double[] im) {
        double[] leftRe = new double[re.length];
        double[] leftIm = rightIm.clone();
        elements.forEach(e -> e.subtractProduct(re, im, leftRe, leftIm));
        return Math.sqrt((squares(leftRe) + squares(leftIm)) / squares(rightIm));
    }

    private static double squares(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value * value;
        }
        return sum;
    }
}
