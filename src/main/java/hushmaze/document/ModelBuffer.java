package hushmaze.document;

import hushmaze.solid.PartSurface;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The numbers of a three-dimensional model, and what describes them: for each shape its corners and directions as floats and
 * its triangles as corner numbers. Faces share no corners, so that their edges are sharp.
 */
final class ModelBuffer {
    private static final int FLOAT = 5126;
    private static final int UNSIGNED_INT = 5125;
    private static final int ARRAY_BUFFER = 34962;
    private static final int ELEMENT_ARRAY_BUFFER = 34963;

    /** Corners of the two triangles of a rectangle. */
    private static final int[] TRIANGLES = {0, 1, 2, 0, 2, 3};

    /** Numbers of the accessors that give a shape. */
    record Shape(int positions, int normals, int indices) {}

    private final List<byte[]> blocks = new ArrayList<>();
    private final List<String> accessors = new ArrayList<>();
    private final List<String> views = new ArrayList<>();
    private int size;

    /**
     * Adds a surface.
     *
     * @param pose turns it
     * @param from place of the turned box its corners are measured from, m
     */
    Shape add(List<PartSurface.Face> faces, ModelPose pose, double[] from) {
        List<float[]> corners = new ArrayList<>();
        List<float[]> normals = new ArrayList<>();
        List<Integer> indices = new ArrayList<>();
        for (PartSurface.Face face : faces) {
            for (int index : TRIANGLES) {
                indices.add(corners.size() + index);
            }
            float[] outward = floats(pose.turned(outward(face)), new double[3]);
            for (double[] corner : face.corners()) {
                corners.add(floats(pose.turned(corner), from));
                normals.add(outward);
            }
        }
        return new Shape(vectors(corners, true), vectors(normals, false), indices(indices));
    }

    private static double[] outward(PartSurface.Face face) {
        double[] outward = new double[3];
        outward[face.across().ordinal()] = face.high() ? 1 : -1;
        return outward;
    }

    private static float[] floats(double[] place, double[] from) {
        float[] floats = new float[3];
        for (int i = 0; i < 3; i++) {
            floats[i] = (float) (place[i] - from[i]);
        }
        return floats;
    }

    private int vectors(List<float[]> vectors, boolean bounded) {
        ByteBuffer block = bytes(vectors.size() * 3 * Float.BYTES);
        double[] least = new double[3];
        double[] most = new double[3];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        Arrays.fill(most, Double.NEGATIVE_INFINITY);
        for (float[] vector : vectors) {
            for (int i = 0; i < 3; i++) {
                block.putFloat(vector[i]);
                least[i] = Math.min(least[i], vector[i]);
                most[i] = Math.max(most[i], vector[i]);
            }
        }
        return bounded
                ? accessor(
                        block,
                        ARRAY_BUFFER,
                        FLOAT,
                        vectors.size(),
                        "VEC3",
                        "min",
                        Json.numbers(least),
                        "max",
                        Json.numbers(most))
                : accessor(block, ARRAY_BUFFER, FLOAT, vectors.size(), "VEC3");
    }

    private int indices(List<Integer> indices) {
        ByteBuffer block = bytes(indices.size() * Integer.BYTES);
        indices.forEach(block::putInt);
        return accessor(block, ELEMENT_ARRAY_BUFFER, UNSIGNED_INT, indices.size(), "SCALAR");
    }

    private static ByteBuffer bytes(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }

    private int accessor(ByteBuffer block, int target, int component, int count, String type, String... more) {
        views.add(Json.object(
                "buffer",
                Json.number(0),
                "byteOffset",
                Json.number(size),
                "byteLength",
                Json.number(block.capacity()),
                "target",
                Json.number(target)));
        blocks.add(block.array());
        size += block.capacity();
        List<String> members = new ArrayList<>(List.of(
                "bufferView",
                Json.number(views.size() - 1),
                "componentType",
                Json.number(component),
                "count",
                Json.number(count),
                "type",
                Json.text(type)));
        members.addAll(List.of(more));
        accessors.add(Json.object(members.toArray(String[]::new)));
        return accessors.size() - 1;
    }

    List<String> accessors() {
        return accessors;
    }

    List<String> views() {
        return views;
    }

    /** Bytes so far; always a multiple of four. */
    int size() {
        return size;
    }

    byte[] bytes() {
        ByteBuffer all = ByteBuffer.allocate(size);
        blocks.forEach(all::put);
        return all.array();
    }
}
