package hushmaze.document;

import hushmaze.assess.PathResult;
import hushmaze.build.CutItem;
import hushmaze.drawing.page.PartNames;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Part;
import hushmaze.solid.PartSurface;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The built box in three dimensions, as a binary file of glTF 2.0 (Khronos Group, ISO/IEC 12113): metres, y up, the
 * box as it hangs or stands, its lowest face at height zero. Every part is an object of its own, named with its mark and its
 * place, under "Boards" or "Liner". Cut-outs and grooves are taken out; screws, glue, gaskets and holes for screws are left out.
 */
final class ModelWriter {
    private static final int MAGIC = 0x46546C67;
    private static final int VERSION = 2;
    private static final int JSON_CHUNK = 0x4E4F534A;
    private static final int BINARY_CHUNK = 0x004E4942;
    private static final int HEADER = 12;
    private static final int CHUNK_HEADER = 8;
    /** Chunks are whole numbers of so many bytes. */
    private static final int ALIGNED = 4;

    private static final double ROUGHNESS = 0.9;

    /** Colours of boards and of liners in turn, linear red, green and blue; our own choice. */
    private static final double[][] BOARD_COLOURS = {{0.60, 0.42, 0.24}, {0.72, 0.56, 0.36}, {0.46, 0.31, 0.18}};

    private static final double[][] LINER_COLOURS = {{0.10, 0.12, 0.15}, {0.20, 0.22, 0.24}};

    private final PathResult result;
    private final ModelPose pose;
    private final ModelBuffer buffer = new ModelBuffer();
    private final List<String> nodes = new ArrayList<>();
    private final Map<String, Integer> named = new HashMap<>();
    private final List<String> meshes = new ArrayList<>();
    private final List<String> materials = new ArrayList<>();
    private final List<String> boards = new ArrayList<>();
    private final List<String> liners = new ArrayList<>();
    private final Map<String, Integer> numbers = new HashMap<>();

    private ModelWriter(PathResult result) {
        this.result = result;
        this.pose = ModelPose.of(result);
    }

    /**
     * The whole file.
     *
     * @param title of the model
     */
    static byte[] write(String title, PathResult result) {
        ModelWriter writer = new ModelWriter(result);
        String json = writer.json(title);
        return container(json.getBytes(StandardCharsets.UTF_8), writer.buffer.bytes());
    }

    private String json(String title) {
        List<String> groups = new ArrayList<>();
        group(groups, "Boards", result.cutList().boards());
        group(groups, "Liner", result.cutList().liners());
        nodes.add(Json.object(
                "name",
                Json.text(title),
                "translation",
                Json.numbers(pose.onGround(result.solid().outer())),
                "children",
                Json.array(groups)));
        return file(Json.object("name", Json.text(title), "nodes", Json.array(List.of(Json.number(nodes.size() - 1)))));
    }

    /** The whole description around a scene. */
    private String file(String scene) {
        return Json.object(
                "asset",
                Json.object("version", Json.text("2.0"), "generator", Json.text("Hushmaze")),
                "scene",
                Json.number(0),
                "scenes",
                Json.array(List.of(scene)),
                "nodes",
                Json.array(nodes),
                "meshes",
                Json.array(meshes),
                "materials",
                Json.array(materials),
                "accessors",
                Json.array(buffer.accessors()),
                "bufferViews",
                Json.array(buffer.views()),
                "buffers",
                Json.array(List.of(Json.object("byteLength", Json.number(buffer.size())))));
    }

    /** All parts of some items as children of one object, if there are any. */
    private void group(List<String> groups, String name, List<CutItem> items) {
        List<String> children = new ArrayList<>();
        for (CutItem item : items) {
            for (Part part : item.parts()) {
                children.add(Json.number(nodes.size()));
                nodes.add(node(item, part));
            }
        }
        if (!children.isEmpty()) {
            groups.add(Json.number(nodes.size()));
            nodes.add(Json.object("name", Json.text(name), "children", Json.array(children)));
        }
    }

    private String node(CutItem item, Part part) {
        String called = item.mark() + " " + PartNames.of(part, result.path().box());
        int number = named.merge(called, 1, Integer::sum);
        String name = Json.text(number == 1 ? called : called + " (" + number + ")");
        double[] low = pose.low(part.bounds());
        ModelBuffer.Shape shape = buffer.add(PartSurface.of(part), pose, low);
        String primitive = Json.object(
                "attributes",
                Json.object("POSITION", Json.number(shape.positions()), "NORMAL", Json.number(shape.normals())),
                "indices",
                Json.number(shape.indices()),
                "material",
                Json.number(material(part)));
        meshes.add(Json.object("name", name, "primitives", Json.array(List.of(primitive))));
        String extras = Json.object(
                "mark",
                Json.text(item.mark()),
                "material",
                Json.text(item.material()),
                "thicknessMetres",
                Json.number(item.thickness()));
        return Json.object(
                "name",
                name,
                "mesh",
                Json.number(meshes.size() - 1),
                "translation",
                Json.numbers(low),
                "extras",
                extras);
    }

    /** The number of a part's material, which is made when first met. */
    private int material(Part part) {
        boolean liner = part instanceof LinerPiece;
        List<String> own = liner ? liners : boards;
        if (!own.contains(part.material())) {
            double[][] colours = liner ? LINER_COLOURS : BOARD_COLOURS;
            double[] rgb = colours[own.size() % colours.length];
            own.add(part.material());
            numbers.put(part.material() + liner, materials.size());
            String look = Json.object(
                    "baseColorFactor",
                    Json.numbers(rgb[0], rgb[1], rgb[2], 1),
                    "metallicFactor",
                    Json.number(0),
                    "roughnessFactor",
                    Json.number(ROUGHNESS));
            materials.add(Json.object("name", Json.text(part.material()), "pbrMetallicRoughness", look));
        }
        return numbers.get(part.material() + liner);
    }

    private static byte[] padded(byte[] bytes, byte with) {
        byte[] padded = Arrays.copyOf(bytes, (bytes.length + ALIGNED - 1) / ALIGNED * ALIGNED);
        Arrays.fill(padded, bytes.length, padded.length, with);
        return padded;
    }

    private static byte[] container(byte[] json, byte[] binary) {
        byte[] first = padded(json, (byte) ' ');
        byte[] second = padded(binary, (byte) 0);
        int length = HEADER + 2 * CHUNK_HEADER + first.length + second.length;
        ByteBuffer file = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
        file.putInt(MAGIC).putInt(VERSION).putInt(length);
        file.putInt(first.length).putInt(JSON_CHUNK).put(first);
        file.putInt(second.length).putInt(BINARY_CHUNK).put(second);
        return file.array();
    }
}
