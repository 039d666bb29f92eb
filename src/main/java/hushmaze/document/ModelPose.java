package hushmaze.document;

import hushmaze.assess.PathResult;
import hushmaze.project.Opening;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Role;

/**
 * How a box hangs or stands in the room, in a right-handed space whose x runs level, whose y points up and whose z, for a box
 * on a wall, points away from that wall. Each of the three directions is one of the box's own, forwards or backwards.
 */
final class ModelPose {
    private final Axis[] axis = new Axis[3];
    private final int[] sign = new int[3];

    private ModelPose() {}

    /** The box over its opening: the surface behind, below or above it. */
    static ModelPose of(PathResult result) {
        return of(
                result.solid().openingPort().role(),
                result.level(),
                result.path().brief().opening().surface());
    }

    /**
     * A box with one of its faces against a surface.
     *
     * @param against the face
     * @param level direction of the box that is level on a wall, in that face
     */
    static ModelPose of(Role against, Axis level, Opening.Surface surface) {
        int[] away = unit(against.normal(), against.isLow() ? 1 : -1);
        int[] x = unit(level, 1);
        int[] y = switch (surface) {
            case FLOOR -> away;
            case CEILING -> new int[] {-away[0], -away[1], -away[2]};
            case WALL -> cross(away, x);
        };
        int[][] rows = {x, y, cross(x, y)};
        ModelPose pose = new ModelPose();
        for (int i = 0; i < rows.length; i++) {
            for (Axis of : Axis.values()) {
                if (rows[i][of.ordinal()] != 0) {
                    pose.axis[i] = of;
                    pose.sign[i] = rows[i][of.ordinal()];
                }
            }
        }
        return pose;
    }

    /** A place or direction of the box {x, y, z} in the room. */
    double[] turned(double[] place) {
        double[] turned = new double[3];
        for (int i = 0; i < 3; i++) {
            // Adding zero makes no minus zeros.
            turned[i] = sign[i] * place[axis[i].ordinal()] + 0.0;
        }
        return turned;
    }

    /** The low corner of a block of the box in the room. */
    double[] low(Cuboid block) {
        double[] low = new double[3];
        for (int i = 0; i < 3; i++) {
            low[i] = sign[i] > 0 ? block.low(axis[i]) : -block.high(axis[i]);
        }
        return low;
    }

    /** By how much a block of the box is moved to stand on the ground with its middle over the origin. */
    double[] onGround(Cuboid block) {
        double[] low = low(block);
        return new double[] {-low[0] - block.size(axis[0]) / 2, -low[1], -low[2] - block.size(axis[2]) / 2};
    }

    private static int[] unit(Axis axis, int sign) {
        int[] unit = new int[3];
        unit[axis.ordinal()] = sign;
        return unit;
    }

    private static int[] cross(int[] a, int[] b) {
        return new int[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }
}
