package hushmaze.app.solid;

import hushmaze.solid.Cuboid;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.shape.TriangleMesh;

/**
 * Collects flat faces. Places are the box's own, in metres; on the screen they are in millimetres, with the second and
 * third direction turned round, because the screen's y runs down and its z away from the viewer.
 */
final class MeshDraft {
    private static final double MM = 1000;

    /** A place or a direction in the box, m. */
    record Spot(double x, double y, double z) {
        Spot plus(Spot other) {
            return new Spot(x + other.x, y + other.y, z + other.z);
        }

        Spot times(double factor) {
            return new Spot(factor * x, factor * y, factor * z);
        }

        private Spot minus(Spot other) {
            return plus(other.times(-1));
        }

        private Spot cross(Spot b) {
            return new Spot(y * b.z - z * b.y, z * b.x - x * b.z, x * b.y - y * b.x);
        }

        private double dot(Spot b) {
            return x * b.x + y * b.y + z * b.z;
        }
    }

    private final List<Spot> spots = new ArrayList<>();

    /** A triangle seen from the side its outward direction points to. */
    void triangle(Spot a, Spot b, Spot c, Spot outward) {
        boolean turned = b.minus(a).cross(c.minus(a)).dot(outward) < 0;
        spots.add(a);
        spots.add(turned ? c : b);
        spots.add(turned ? b : c);
    }

    /** A flat face with four corners, in turn. */
    void quad(Spot a, Spot b, Spot c, Spot d, Spot outward) {
        triangle(a, b, c, outward);
        triangle(a, c, d, outward);
    }

    /** All six faces of a block. */
    void block(Cuboid b) {
        for (int side = 0; side < 2; side++) {
            double out = side == 0 ? -1 : 1;
            double x = side == 0 ? b.x0() : b.x1();
            double y = side == 0 ? b.y0() : b.y1();
            double z = side == 0 ? b.z0() : b.z1();
            quad(
                    new Spot(x, b.y0(), b.z0()),
                    new Spot(x, b.y1(), b.z0()),
                    new Spot(x, b.y1(), b.z1()),
                    new Spot(x, b.y0(), b.z1()),
                    new Spot(out, 0, 0));
            quad(
                    new Spot(b.x0(), y, b.z0()),
                    new Spot(b.x1(), y, b.z0()),
                    new Spot(b.x1(), y, b.z1()),
                    new Spot(b.x0(), y, b.z1()),
                    new Spot(0, out, 0));
            quad(
                    new Spot(b.x0(), b.y0(), z),
                    new Spot(b.x1(), b.y0(), z),
                    new Spot(b.x1(), b.y1(), z),
                    new Spot(b.x0(), b.y1(), z),
                    new Spot(0, 0, out));
        }
    }

    /** Three corners of each triangle in turn, on the screen, mm. */
    float[] points() {
        float[] all = new float[3 * spots.size()];
        for (int i = 0; i < spots.size(); i++) {
            Spot s = spots.get(i);
            all[3 * i] = (float) (s.x() * MM);
            all[3 * i + 1] = (float) (-s.y() * MM);
            all[3 * i + 2] = (float) (-s.z() * MM);
        }
        return all;
    }

    /** The mesh, with hard edges. */
    TriangleMesh mesh() {
        TriangleMesh mesh = new TriangleMesh();
        mesh.getTexCoords().addAll(0, 0);
        mesh.getPoints().addAll(points());
        for (int i = 0; i < spots.size(); i += 3) {
            mesh.getFaces().addAll(i, 0, i + 1, 0, i + 2, 0);
            mesh.getFaceSmoothingGroups().addAll(0);
        }
        return mesh;
    }
}
