package hushmaze.sound.wave;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.sound.porous.MikiLiner;
import java.util.ArrayList;
import java.util.List;

/** Mazes of several passes side by side, for the benchmark and some tests; lengths in m. */
final class MazeSpaces {
    private static final double BAFFLE = 0.018;
    private static final double DUCT = 0.1;

    private MazeSpaces() {}

    /**
     * A maze seen from its broad face. Passes run along x; baffles start at low x and at high x in turn; liner on all faces
     * but the tips of the baffles; turn gaps as wide as the passes; both ports as wide as the passes, through the ends.
     *
     * @param passes how many
     * @param length of the cavity
     * @param width of the cavity across the passes
     * @param lining depth
     * @param flowResistivity of the liner, Pa·s/m²
     */
    static WaveSpace flat(int passes, double length, double width, double lining, double flowResistivity) {
        Medium liner = new LinerMedium(new MikiLiner(flowResistivity));
        double pitch = (width + BAFFLE) / passes;
        double clear = pitch - BAFFLE - 2 * lining;
        List<WaveBlock> blocks = new ArrayList<>();
        for (int i = 0; i < passes; i++) {
            double y = i * pitch;
            blocks.add(new WaveBlock(liner, Spaces.flat(0, y, length, y + pitch - BAFFLE)));
            if (i + 1 < passes) {
                boolean far = i % 2 == 0;
                double from = far ? length - lining - clear : 0;
                blocks.add(
                        new WaveBlock(liner, Spaces.flat(from, y + pitch - BAFFLE, from + lining + clear, y + pitch)));
            }
        }
        boolean outFar = passes % 2 == 1;
        for (int i = 0; i < passes; i++) {
            double y = i * pitch + lining;
            double low = i == 0 || i == passes - 1 && !outFar ? 0 : lining;
            double high = i == passes - 1 && outFar ? length : length - lining;
            blocks.add(Spaces.air(low, y, high, y + clear));
            if (i + 1 < passes) {
                double from = i % 2 == 0 ? length - lining - clear : lining;
                blocks.add(Spaces.air(from, y, from + clear, y + pitch + clear));
            }
        }
        double last = (passes - 1) * pitch + lining;
        WavePort outlet = outFar ? Spaces.high(length, last, last + clear) : Spaces.low(0, last, last + clear);
        return Spaces.space(blocks, Spaces.low(0, lining, lining + clear), outlet);
    }

    /**
     * The same maze in space: height between the broad liners, both broad faces lined pass by pass, the inlet through the
     * end of the first pass, the outlet through the front face over the closed end of the last.
     */
    static WaveSpace solid(WaveSpace flat, double height, double lining) {
        List<WaveBlock> blocks = new ArrayList<>();
        for (WaveBlock block : flat.blocks()) {
            boolean air = block.medium() instanceof AirMedium;
            double reach = air ? 0 : lining;
            blocks.add(new WaveBlock(block.medium(), block.place().with(Axis.Z, -reach, height + reach)));
            if (air) {
                Medium liner = flat.blocks().get(0).medium();
                blocks.add(new WaveBlock(liner, block.place().with(Axis.Z, -lining, 0)));
                blocks.add(new WaveBlock(liner, block.place().with(Axis.Z, height, height + lining)));
            }
        }
        Cuboid in = flat.inlet().start();
        Cuboid out = flat.outlet().start();
        double side = out.size(Axis.Y);
        double x = 0.025;
        Cuboid through = new Cuboid(x, out.y0(), height, x + side, out.y1(), height + lining);
        blocks.add(new WaveBlock(new AirMedium(), through));
        return new WaveSpace(
                flat.soundSpeed(),
                false,
                blocks,
                new WavePort(Axis.X, false, in.with(Axis.Z, 0, height)),
                new WavePort(Axis.Z, true, through.with(Axis.Z, height + lining, height + lining + DUCT)));
    }
}
