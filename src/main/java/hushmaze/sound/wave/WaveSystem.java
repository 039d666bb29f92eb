package hushmaze.sound.wave;

import hushmaze.solid.Cuboid;
import hushmaze.sound.porous.Complex;
import java.util.ArrayList;
import java.util.List;

/** The equations of a space at one frequency, and their solutions. */
final class WaveSystem {
    private static final int BYTES = 16;

    final WaveMesh mesh;
    final FrontalPlan plan;
    private final double frequency;
    private final PortModes inlet;
    private final PortModes outlet;
    private final List<Element> elements = new ArrayList<>();

    /**
     * @param blocks of the space
     * @param soundSpeed m/s
     * @param frequency Hz
     * @param accuracy asked for
     * @param pause called now and then; may throw to stop the work
     */
    WaveSystem(BlockGrid blocks, double soundSpeed, double frequency, WaveAccuracy accuracy, Runnable pause) {
        this.frequency = frequency;
        double k = 2 * Math.PI * frequency / soundSpeed;
        mesh = new WaveMesh(blocks, k, frequency, accuracy, pause);
        inlet = new PortModes(blocks.inlet, mesh, k);
        outlet = new PortModes(blocks.outlet, mesh, k);
        pause.run();
        for (int cell = 0; cell < mesh.cells.size(); cell++) {
            elements.add(mesh.element(cell));
        }
        elements.add(inlet.element());
        elements.add(outlet.element());
        pause.run();
        List<int[]> unknowns = elements.stream().map(Element::unknown).toList();
        int[] late = elements.stream().mapToInt(Element::late).toArray();
        plan = new FrontalPlan(unknowns, late, mesh.count());
    }

    /** Memory that solving takes, about. */
    long bytes() {
        return BYTES * (plan.stored + plan.open);
    }

    /**
     * What passes.
     *
     * @param rooms blocks whose mean square pressure is wanted
     * @param mostBytes memory that may be used if pivoting is needed
     * @param pause called now and then; may throw to stop the work
     */
    WaveAnswer solve(List<Cuboid> rooms, long mostBytes, Runnable pause) {
        SafeSolver solver = new SafeSolver(plan, elements, mesh.count(), mostBytes, pause);
        List<List<Complex>> reflected = new ArrayList<>();
        List<List<Complex>> transmitted = new ArrayList<>();
        List<Double> meanSquare = new ArrayList<>();
        for (PortMode mode : inlet.carrying()) {
            double[][] x = solution(solver, mode);
            reflected.add(amplitudes(inlet, mode, x));
            transmitted.add(amplitudes(outlet, null, x));
            if (meanSquare.size() < rooms.size()) {
                WaveField field = new WaveField(mesh, x[0], x[1]);
                rooms.forEach(room -> meanSquare.add(field.meanSquare(room)));
            }
        }
        return new WaveAnswer(
                frequency,
                inlet.carrying(),
                outlet.carrying(),
                reflected,
                transmitted,
                outlet.area() / inlet.area(),
                meanSquare,
                solver.worst(),
                mesh.count());
    }

    WaveField field(long mostBytes, Runnable pause) {
        SafeSolver solver = new SafeSolver(plan, elements, mesh.count(), mostBytes, pause);
        double[][] x = solution(solver, inlet.carrying().get(0));
        return new WaveField(mesh, x[0], x[1]);
    }

    private double[][] solution(SafeSolver solver, PortMode incident) {
        double[] rightIm = new double[mesh.count()];
        inlet.addIncident(incident, rightIm);
        return solver.solve(new double[mesh.count()], rightIm);
    }

    private static List<Complex> amplitudes(PortModes port, PortMode incident, double[][] x) {
        List<Complex> out = new ArrayList<>();
        for (PortMode mode : port.carrying()) {
            Complex all = port.amplitude(mode, x[0], x[1]);
            out.add(mode.equals(incident) ? all.plus(new Complex(-1, 0)) : all);
        }
        return out;
    }
}
