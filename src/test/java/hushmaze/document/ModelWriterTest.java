package hushmaze.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hushmaze.assess.PathResult;
import hushmaze.build.CutItem;
import hushmaze.drawing.SampleAssessment;
import hushmaze.drawing.page.PartNames;
import hushmaze.project.Opening;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Part;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Role;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Validation: the file read back by the rules of glTF 2.0 alone (container, chunks, counts, bounds, alignment, unit normals).
 * Property: over seeded random boxes every part is there once under its own name, closed, with its volume, and all lie within
 * the box that stands on the ground.
 */
class ModelWriterTest {
    /** Places are single floats of up to 2 m: 1.2e-7 m off at most, over a surface of up to 4 m². */
    private static final double FLOAT_VOLUME = 5e-7;

    private JsonNode root;
    private ByteBuffer binary;

    @Test
    void theContainerIsAsTheStandardSays() throws IOException {
        byte[] bytes = ModelWriter.write("A \"model\"\n", sample());
        read(bytes);
        assertThat(root.at("/asset/version").asText()).isEqualTo("2.0");
        assertThat(root.at("/scenes/0/name").asText()).isEqualTo("A \"model\"\n");
        assertThat(root.at("/scene").asInt()).isZero();
        assertThat(root.at("/buffers/0").has("uri")).isFalse();
        for (JsonNode material : root.get("materials")) {
            JsonNode look = material.get("pbrMetallicRoughness");
            assertThat(look.get("baseColorFactor")).hasSize(4).allMatch(c -> c.asDouble() >= 0 && c.asDouble() <= 1);
        }
        assertThat(ModelWriter.write("A \"model\"\n", sample())).isEqualTo(bytes);
    }

    @Test
    void everyPartIsThereClosedAndOfItsVolume() throws IOException {
        check(sample());
        check(SampleAssessment.twoPaths(UnitSystem.METRIC).paths().get(1));
        RandomBoxes boxes = new RandomBoxes(31);
        for (int i = 0; i < 25; i++) {
            check(SampleAssessment.of(UnitSystem.METRIC, boxes.next()).paths().get(0));
        }
    }

    @Test
    void aBoxOnAWallHasItsCoverTowardsTheViewerAndItsLevelSideLevel() throws IOException {
        PathResult result = sample();
        read(ModelWriter.write("Sample", result));
        // The sample's opening is in a wall and its port over it goes through the back: the cover is away from the
        // wall.
        JsonNode cover = named("B2 front cover, layer 2");
        JsonNode back = named("B1 back, layer 1");
        assertThat(cover.at("/translation/2").asDouble())
                .isGreaterThan(back.at("/translation/2").asDouble() + 0.2);
        Bounds all = check(result);
        assertThat(all.high[0] - all.low[0]).isCloseTo(result.fits().width(), within(1e-6));
        assertThat(all.high[1] - all.low[1]).isCloseTo(result.fits().height(), within(1e-6));
        assertThat(all.high[2] - all.low[2]).isCloseTo(result.fits().depth(), within(1e-6));
    }

    @Test
    void everyPoseIsATurnAndNoMirrorImage() {
        for (Role against : Role.values()) {
            if (against == Role.BAFFLE) {
                continue;
            }
            double[] away = new double[3];
            away[against.normal().ordinal()] = against.isLow() ? 1 : -1;
            for (Axis level : List.of(against.normal().u(), against.normal().v())) {
                for (Opening.Surface surface : Opening.Surface.values()) {
                    ModelPose pose = ModelPose.of(against, level, surface);
                    double[] x = pose.turned(new double[] {1, 0, 0});
                    double[] y = pose.turned(new double[] {0, 1, 0});
                    assertThat(cross(x, y)).containsExactly(pose.turned(new double[] {0, 0, 1}), within(0.0));
                    double[] expected = switch (surface) {
                        case FLOOR -> new double[] {0, 1, 0};
                        case CEILING -> new double[] {0, -1, 0};
                        case WALL -> new double[] {0, 0, 1};
                    };
                    assertThat(pose.turned(away)).containsExactly(expected, within(0.0));
                }
            }
        }
    }

    private static PathResult sample() {
        return SampleAssessment.twoPaths(UnitSystem.METRIC).paths().get(0);
    }

    private Bounds check(PathResult result) throws IOException {
        read(ModelWriter.write("Path", result));
        Map<String, Part> parts = new HashMap<>();
        int wanted = 0;
        for (CutItem item : result.cutList().items().toList()) {
            for (Part part : item.parts()) {
                // Two pieces beside a port are called alike; the second says so.
                String name =
                        item.mark() + " " + PartNames.of(part, result.path().box());
                for (int number = 2; parts.containsKey(name); number++) {
                    name = item.mark() + " " + PartNames.of(part, result.path().box()) + " (" + number + ")";
                }
                parts.put(name, part);
                wanted++;
            }
        }
        assertThat(parts).as("names are unlike").hasSize(wanted);
        Set<String> seen = new HashSet<>();
        Bounds all = new Bounds();
        JsonNode top = root.get("nodes").get(root.at("/scenes/0/nodes/0").asInt());
        for (JsonNode group : top.get("children")) {
            for (JsonNode child : root.get("nodes").get(group.asInt()).get("children")) {
                JsonNode node = root.get("nodes").get(child.asInt());
                Part part = parts.get(node.get("name").asText());
                assertThat(part).as(node.get("name").asText()).isNotNull();
                assertThat(seen.add(node.get("name").asText())).isTrue();
                mesh(node, part);
                all.add(vectors(accessor(node, "POSITION")), node.get("translation"), top.get("translation"));
            }
        }
        assertThat(seen).hasSize(wanted);
        inTheRoom(all, result.solid().outer());
        return all;
    }

    /** The whole stands on the ground over the origin, as large as the box. */
    private static void inTheRoom(Bounds all, Cuboid outer) {
        assertThat(all.low[1]).isCloseTo(0, within(1e-6));
        assertThat(all.low[0]).isCloseTo(-all.high[0], within(1e-6));
        assertThat(all.low[2]).isCloseTo(-all.high[2], within(1e-6));
        double[] sizes = new double[3];
        Arrays.setAll(sizes, i -> all.high[i] - all.low[i]);
        double[] box = {outer.x1() - outer.x0(), outer.y1() - outer.y0(), outer.z1() - outer.z0()};
        Arrays.sort(sizes);
        Arrays.sort(box);
        assertThat(sizes).containsExactly(box, within(1e-6));
    }

    private void mesh(JsonNode node, Part part) {
        float[][] corners = vectors(accessor(node, "POSITION"));
        float[][] normals = vectors(accessor(node, "NORMAL"));
        assertThat(normals.length).isEqualTo(corners.length);
        JsonNode primitive = primitive(node);
        JsonNode indexed = root.get("accessors").get(primitive.get("indices").asInt());
        assertThat(indexed.get("count").asInt() % 3).isZero();
        JsonNode material = root.get("materials").get(primitive.get("material").asInt());
        assertThat(material.get("name").asText()).isEqualTo(part.material());
        Map<List<Float>, Integer> walked = new HashMap<>();
        double six = 0;
        int[] indices = indices(indexed);
        for (int i = 0; i < indices.length; i += 3) {
            float[] a = corners[indices[i]];
            float[] b = corners[indices[i + 1]];
            float[] c = corners[indices[i + 2]];
            walk(walked, a, b);
            walk(walked, b, c);
            walk(walked, c, a);
            double[] area = cross(minus(b, a), minus(c, a));
            double length = Math.sqrt(dot(area, area));
            for (int k = 0; k < 3; k++) {
                float[] normal = normals[indices[i + k]];
                assertThat(dot(normal, normal)).isCloseTo(1, within(1e-6));
                assertThat(dot(area, normal) / length).as("looks outwards").isCloseTo(1, within(1e-6));
            }
            six += dot(area, a);
        }
        walked.forEach((edge, times) -> {
            assertThat(times).isEqualTo(1);
            List<Float> back = new ArrayList<>(edge.subList(3, 6));
            back.addAll(edge.subList(0, 3));
            assertThat(walked).containsEntry(back, 1);
        });
        assertThat(six / 6).isCloseTo(part.volume(), within(FLOAT_VOLUME));
    }

    private static void walk(Map<List<Float>, Integer> walked, float[] a, float[] b) {
        walked.merge(List.of(a[0], a[1], a[2], b[0], b[1], b[2]), 1, Integer::sum);
    }

    /** Opens the container and checks what the standard asks of every accessor and buffer view. */
    private void read(byte[] bytes) throws IOException {
        ByteBuffer file = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        byte[] magic = new byte[4];
        file.get(magic);
        assertThat(new String(magic, StandardCharsets.US_ASCII)).isEqualTo("glTF");
        assertThat(file.getInt()).isEqualTo(2);
        assertThat(file.getInt()).isEqualTo(bytes.length);
        byte[] json = chunk(file, "JSON");
        byte[] data = chunk(file, "BIN\0");
        assertThat(file.remaining()).isZero();
        root = new ObjectMapper().readTree(json);
        binary = ByteBuffer.wrap(data).order(ByteOrder.LITTLE_ENDIAN);
        int length = root.at("/buffers/0/byteLength").asInt();
        assertThat(data.length - length).isBetween(0, 3);
        for (JsonNode view : root.get("bufferViews")) {
            assertThat(view.get("byteOffset").asInt() + view.get("byteLength").asInt())
                    .isLessThanOrEqualTo(length);
        }
        for (JsonNode accessor : root.get("accessors")) {
            JsonNode view =
                    root.get("bufferViews").get(accessor.get("bufferView").asInt());
            int parts = accessor.get("type").asText().equals("VEC3") ? 3 : 1;
            assertThat(view.get("byteOffset").asInt() % 4).isZero();
            assertThat(view.get("byteLength").asInt())
                    .isEqualTo(4 * parts * accessor.get("count").asInt());
            assertThat(accessor.get("componentType").asInt()).isEqualTo(parts == 3 ? 5126 : 5125);
            assertThat(view.get("target").asInt()).isEqualTo(parts == 3 ? 34962 : 34963);
        }
    }

    private static byte[] chunk(ByteBuffer file, String kind) {
        int length = file.getInt();
        assertThat(length % 4).isZero();
        byte[] name = new byte[4];
        file.get(name);
        assertThat(new String(name, StandardCharsets.US_ASCII)).isEqualTo(kind);
        byte[] chunk = new byte[length];
        file.get(chunk);
        return chunk;
    }

    private JsonNode named(String name) {
        for (JsonNode node : root.get("nodes")) {
            if (node.get("name").asText().equals(name)) {
                return node;
            }
        }
        throw new AssertionError("no object " + name + " in " + root.get("nodes"));
    }

    private JsonNode primitive(JsonNode node) {
        JsonNode primitives = root.get("meshes").get(node.get("mesh").asInt()).get("primitives");
        assertThat(primitives).hasSize(1);
        return primitives.get(0);
    }

    private JsonNode accessor(JsonNode node, String attribute) {
        return root.get("accessors")
                .get(primitive(node).at("/attributes/" + attribute).asInt());
    }

    /** Vectors of an accessor; where it states bounds, they are the least and most of them. */
    private float[][] vectors(JsonNode accessor) {
        int at = root.get("bufferViews")
                .get(accessor.get("bufferView").asInt())
                .get("byteOffset")
                .asInt();
        float[][] vectors = new float[accessor.get("count").asInt()][3];
        for (int i = 0; i < vectors.length; i++) {
            for (int k = 0; k < 3; k++) {
                vectors[i][k] = binary.getFloat(at + 4 * (3 * i + k));
            }
        }
        for (int k = 0; k < 3 && accessor.has("min"); k++) {
            int axis = k;
            double least =
                    Arrays.stream(vectors).mapToDouble(v -> v[axis]).min().orElseThrow();
            double most = Arrays.stream(vectors).mapToDouble(v -> v[axis]).max().orElseThrow();
            assertThat(accessor.get("min").get(k).asDouble()).isEqualTo(least);
            assertThat(accessor.get("max").get(k).asDouble()).isEqualTo(most);
        }
        return vectors;
    }

    private int[] indices(JsonNode accessor) {
        int at = root.get("bufferViews")
                .get(accessor.get("bufferView").asInt())
                .get("byteOffset")
                .asInt();
        int[] indices = new int[accessor.get("count").asInt()];
        Arrays.setAll(indices, i -> binary.getInt(at + 4 * i));
        return indices;
    }

    private static double[] minus(float[] a, float[] b) {
        return new double[] {(double) a[0] - b[0], (double) a[1] - b[1], (double) a[2] - b[2]};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double dot(double[] a, float[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double dot(float[] a, float[] b) {
        return (double) a[0] * b[0] + (double) a[1] * b[1] + (double) a[2] * b[2];
    }

    /** What corners span in the room. */
    private static final class Bounds {
        private final double[] low = {1e9, 1e9, 1e9};
        private final double[] high = {-1e9, -1e9, -1e9};

        void add(float[][] corners, JsonNode own, JsonNode whole) {
            for (float[] corner : corners) {
                for (int i = 0; i < 3; i++) {
                    double place =
                            corner[i] + own.get(i).asDouble() + whole.get(i).asDouble();
                    low[i] = Math.min(low[i], place);
                    high[i] = Math.max(high[i], place);
                }
            }
        }
    }
}
