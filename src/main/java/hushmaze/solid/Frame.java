package hushmaze.solid;

import hushmaze.project.Box;
import java.util.List;
import java.util.stream.IntStream;

/** Where the walls, passes and baffles of a box come to lie. The origin is the low corner of the bare cavity; metres. */
final class Frame {
    private final Box box;
    private final double[] passLow;
    private final double[] passHigh;
    private final Cuboid cavity;

    Frame(Box box) {
        this.box = box;
        int n = box.passes();
        passLow = new double[n];
        passHigh = new double[n];
        double y = 0;
        for (int i = 0; i < n; i++) {
            passLow[i] = y;
            y += lowLiner(i) + box.clearWidth() + highLiner(i);
            passHigh[i] = y;
            y += i < n - 1 ? box.baffleThickness() : 0;
        }
        cavity = new Cuboid(
                0, 0, 0, box.clearLength() + 2 * box.endLiner(), y, box.clearHeight() + 2 * box.broadLiner());
    }

    Box box() {
        return box;
    }

    int passes() {
        return box.passes();
    }

    /** Space between the inner faces of the innermost boards. */
    Cuboid cavity() {
        return cavity;
    }

    /** Block the finished box fills. */
    Cuboid outer() {
        return cavity.grown(box.shellThickness());
    }

    /** Space between the broad liners, with everything else still in it. */
    Cuboid betweenBroadLiners() {
        return cavity.with(Axis.Z, box.broadLiner(), cavity.z1() - box.broadLiner());
    }

    /** Low y of a pass between boards. */
    double passLow(int pass) {
        return passLow[pass];
    }

    /** High y of a pass between boards. */
    double passHigh(int pass) {
        return passHigh[pass];
    }

    double lowLiner(int pass) {
        return pass == 0 ? box.wallLiner() : box.baffleLiner();
    }

    double highLiner(int pass) {
        return pass == box.passes() - 1 ? box.wallLiner() : box.baffleLiner();
    }

    /** The air of a pass. */
    Cuboid clear(int pass) {
        return new Cuboid(
                box.endLiner(),
                passLow[pass] + lowLiner(pass),
                box.broadLiner(),
                cavity.x1() - box.endLiner(),
                passHigh[pass] - highLiner(pass),
                cavity.z1() - box.broadLiner());
    }

    /** Whether the turn round a baffle is at the far end, so that the baffle starts at the near end. */
    boolean turnsAtFarEnd(int baffle) {
        return baffle % 2 == 0;
    }

    /** A baffle with all its layers. */
    Cuboid baffle(int baffle) {
        double stop = box.endLiner() + box.turnGap();
        double x0 = turnsAtFarEnd(baffle) ? 0 : stop;
        double x1 = turnsAtFarEnd(baffle) ? cavity.x1() - stop : cavity.x1();
        return new Cuboid(x0, passHigh[baffle], 0, x1, passLow[baffle + 1], cavity.z1());
    }

    /** All baffles, each with all its layers. */
    List<Cuboid> baffles() {
        return IntStream.range(0, passes() - 1).mapToObj(this::baffle).toList();
    }
}
