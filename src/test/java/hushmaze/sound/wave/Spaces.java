package hushmaze.sound.wave;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.sound.porous.MikiLiner;
import java.util.List;

/** Flat spaces of height 1 m that several tests use; lengths in m. */
final class Spaces {
    static final double C = 343.2;
    private static final double DUCT = 0.1;

    private Spaces() {}

    static Cuboid flat(double x0, double y0, double x1, double y1) {
        return new Cuboid(x0, y0, 0, x1, y1, 1);
    }

    static WaveBlock air(double x0, double y0, double x1, double y1) {
        return new WaveBlock(new AirMedium(), flat(x0, y0, x1, y1));
    }

    static WaveBlock liner(double flowResistivity, double x0, double y0, double x1, double y1) {
        return new WaveBlock(new LinerMedium(new MikiLiner(flowResistivity)), flat(x0, y0, x1, y1));
    }

    /** A duct that leads towards low x, its mouth at x, from y0 to y1. */
    static WavePort low(double x, double y0, double y1) {
        return new WavePort(Axis.X, false, flat(x - DUCT, y0, x, y1));
    }

    /** A duct that leads towards high x, its mouth at x, from y0 to y1. */
    static WavePort high(double x, double y0, double y1) {
        return new WavePort(Axis.X, true, flat(x, y0, x + DUCT, y1));
    }

    static WaveSpace space(List<WaveBlock> blocks, WavePort inlet, WavePort outlet) {
        return new WaveSpace(C, true, blocks, inlet, outlet);
    }

    /** A slit 1 m long, both sides lined, the liner in boxes with rigid ends. */
    static WaveSpace slit(double airway, double depth, double flowResistivity) {
        return space(
                List.of(
                        liner(flowResistivity, 0, -depth, 1, 0),
                        air(0, 0, 1, airway),
                        liner(flowResistivity, 0, airway, 1, airway + depth)),
                low(0, 0, airway),
                high(1, 0, airway));
    }

    /** A square turn in a duct. */
    static WaveSpace turn(double width) {
        return space(
                List.of(air(0, 0, width, width)),
                low(0, 0, width),
                new WavePort(Axis.Y, true, flat(0, width, width, width + DUCT)));
    }

    /** Two square turns a leg apart; back the way it came or on. */
    static WaveSpace twoTurns(double width, double leg, boolean back) {
        double from = width + leg;
        WavePort outlet = back ? low(0, from, from + width) : high(width, from, from + width);
        return space(List.of(air(0, 0, width, from + width)), low(0, 0, width), outlet);
    }

    /** The same space with inlet and outlet changed over. */
    static WaveSpace reversed(WaveSpace space) {
        return new WaveSpace(space.soundSpeed(), space.flat(), space.blocks(), space.outlet(), space.inlet());
    }
}
