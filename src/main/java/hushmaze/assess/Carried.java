package hushmaze.assess;

import hushmaze.project.Construction;
import hushmaze.project.Doorway;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Module;
import hushmaze.solid.Solid;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Whether what is carried in one piece is light enough and goes through the doorway.
 *
 * @param modules the pieces, from the near end; one if the box does not come apart
 * @param heaviest of them
 * @param light whether that keeps the limit on mass
 * @param stuck the longest piece that does not go through the doorway; null if all do
 */
record Carried(List<Module> modules, Module heaviest, boolean light, Module stuck) {
    /** Rounding of pieces that just go through, m. */
    private static final double SLACK = 1e-9;

    static Carried of(Solid solid, Construction construction) {
        List<Module> modules = solid.modules();
        Module heaviest = solid.heaviestModule();
        Double limit = construction.maxMass();
        Doorway door = construction.doorway();
        Module stuck = modules.stream()
                .filter(m -> door != null && !door.lets(side(m, Axis.X), side(m, Axis.Y), side(m, Axis.Z)))
                .max(Comparator.comparingDouble(m -> side(m, Axis.X)))
                .orElse(null);
        return new Carried(modules, heaviest, limit == null || heaviest.mass() <= limit, stuck);
    }

    boolean ok() {
        return light && stuck == null;
    }

    boolean inOne() {
        return modules.size() == 1;
    }

    /** The side of the piece that is in the way, and what there is for it: of a block the two smaller sides matter. */
    double[] inTheWay(Doorway door) {
        Cuboid bounds = stuck.bounds();
        double[] sides = {bounds.size(Axis.X), bounds.size(Axis.Y), bounds.size(Axis.Z)};
        Arrays.sort(sides);
        return sides[1] > door.wide() + SLACK
                ? new double[] {sides[1], door.wide()}
                : new double[] {sides[0], door.narrow()};
    }

    private static double side(Module module, Axis axis) {
        return module.bounds().size(axis) - SLACK;
    }
}
