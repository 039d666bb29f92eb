package hushmaze.store;

import com.fasterxml.jackson.databind.JsonNode;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.sound.porous.MikiLiner;
import hushmaze.sound.section.SectionTask;
import hushmaze.sound.wave.AirMedium;
import hushmaze.sound.wave.LinerMedium;
import hushmaze.sound.wave.Medium;
import hushmaze.sound.wave.WaveBlock;
import hushmaze.sound.wave.WavePort;
import hushmaze.sound.wave.WaveSpace;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Reads a raw section: a JSON file with rectangles of air and liner in millimetres, two ports and frequencies.
 *
 * <p>{@code {"air": {"soundSpeed", "density"}, "regions": [{"kind": "air", "xMm", "yMm", "widthMm", "heightMm"}, {"kind":
 * "liner", "flowResistivity", ...}], "inlet": {"side", "xMm", "yMm", "spanMm"}, "outlet": {...}, "frequenciesHz": [...]}}. What no
 * region covers is rigid; where regions overlap, the later one counts. {@code side} is the direction a port faces: left,
 * right, up or down, y up; x and y are the low end of its line. The density is checked, but a transmission loss depends on
 * ratios only.
 */
public final class SectionJson {
    private static final List<String> FIELDS = List.of("air", "regions", "inlet", "outlet", "frequenciesHz");
    private static final List<String> AIR_FIELDS = List.of("soundSpeed", "density");
    private static final List<String> PORT_FIELDS = List.of("side", "xMm", "yMm", "spanMm");
    private static final List<String> REGION_FIELDS = List.of("kind", "xMm", "yMm", "widthMm", "heightMm");
    private static final List<String> LINER_FIELDS =
            List.of("kind", "xMm", "yMm", "widthMm", "heightMm", "flowResistivity");
    private static final String WANTED_KIND = "one of \"air\", \"liner\"";
    private static final String WANTED_SIDE = "one of \"left\", \"right\", \"up\", \"down\"";
    /** Most regions, and most frequencies, of a file. */
    private static final int MAX_REGIONS = 1000;

    private static final int MAX_FREQUENCIES = 10_000;
    /** Farthest from the origin, and largest size, m. */
    private static final double FARTHEST = 100;
    /** Smallest size, m. */
    private static final double SMALLEST = 1e-4;
    /** Points this close to a line are beside it, m; far below the smallest size. */
    private static final double BESIDE = 1e-6;

    private final Problems problems;
    private final ScalarReader scalars;

    private SectionJson(String file) {
        problems = new Problems(file);
        scalars = new ScalarReader(problems);
    }

    /**
     * The section in a file.
     *
     * @throws UnreadableFile with everything that is wrong with the file
     */
    public static SectionTask read(Path file) {
        return parse(file.toString(), FileBytes.text(file));
    }

    /** The section in a text; the name of the file is for messages. */
    static SectionTask parse(String name, String text) {
        JsonNode tree = JsonText.parse(name, text);
        SectionJson reader = new SectionJson(name);
        SectionTask task = reader.task(tree);
        reader.problems.throwIfAny();
        return task;
    }

    private SectionTask task(JsonNode tree) {
        if (!isObject(tree, FIELDS, "")) {
            return null;
        }
        double soundSpeed = air(tree.path("air"));
        List<WaveBlock> blocks = regions(tree.path("regions"));
        WavePort inlet = port(tree.path("inlet"), "inlet");
        WavePort outlet = port(tree.path("outlet"), "outlet");
        List<Double> frequencies = frequencies(tree.path("frequenciesHz"));
        if (problems.count() > 0) {
            return null;
        }
        requireMouth("inlet", inlet, blocks);
        requireMouth("outlet", outlet, blocks);
        requireApart(inlet, outlet);
        return new SectionTask(new WaveSpace(soundSpeed, true, blocks, inlet, outlet), frequencies);
    }

    private double air(JsonNode node) {
        if (!isObject(node, AIR_FIELDS, "air")) {
            return Double.NaN;
        }
        number(node, "air", "density", 0.01, 1000, Unit.KILOGRAM_PER_CUBIC_METRE);
        return number(node, "air", "soundSpeed", 50, 2000, Unit.METRE_PER_SECOND);
    }

    private List<WaveBlock> regions(JsonNode node) {
        List<WaveBlock> blocks = new ArrayList<>();
        if (isList(node, "regions", MAX_REGIONS, "regions")) {
            for (JsonNode region : node) {
                WaveBlock block = region(region, "regions[" + blocks.size() + "]");
                blocks.add(block);
            }
        }
        return blocks;
    }

    private WaveBlock region(JsonNode node, String path) {
        String kind = node.path("kind").asText();
        boolean liner = kind.equals("liner");
        if (!isObject(node, kind.equals("air") ? REGION_FIELDS : LINER_FIELDS, path)) {
            return null;
        }
        int before = problems.count();
        Medium medium = new AirMedium();
        if (!liner && !kind.equals("air")) {
            refuse(node, path, "kind", WANTED_KIND);
        }
        double x = place(node, path, "xMm");
        double y = place(node, path, "yMm");
        double width = size(node, path, "widthMm");
        double height = size(node, path, "heightMm");
        if (liner) {
            double resistivity = number(node, path, "flowResistivity", 1, 1e7, Unit.PASCAL_SECOND_PER_SQUARE_METRE);
            medium = Double.isNaN(resistivity) ? null : new LinerMedium(new MikiLiner(resistivity));
        }
        return problems.count() > before ? null : new WaveBlock(medium, new Cuboid(x, y, 0, x + width, y + height, 1));
    }

    private WavePort port(JsonNode node, String path) {
        if (!isObject(node, PORT_FIELDS, path)) {
            return null;
        }
        int before = problems.count();
        String side = node.path("side").asText();
        boolean along = side.equals("left") || side.equals("right");
        if (!along && !side.equals("up") && !side.equals("down")) {
            refuse(node, path, "side", WANTED_SIDE);
        }
        double x = place(node, path, "xMm");
        double y = place(node, path, "yMm");
        double span = size(node, path, "spanMm");
        if (problems.count() > before) {
            return null;
        }
        double length = span / 2;
        Cuboid start = switch (side) {
            case "left" -> new Cuboid(x - length, y, 0, x, y + span, 1);
            case "right" -> new Cuboid(x, y, 0, x + length, y + span, 1);
            case "down" -> new Cuboid(x, y - length, 0, x + span, y, 1);
            default -> new Cuboid(x, y, 0, x + span, y + length, 1);
        };
        return new WavePort(along ? Axis.X : Axis.Y, side.equals("right") || side.equals("up"), start);
    }

    private List<Double> frequencies(JsonNode node) {
        List<Double> frequencies = new ArrayList<>();
        if (isList(node, "frequenciesHz", MAX_FREQUENCIES, "frequencies")) {
            for (JsonNode element : node) {
                String path = "frequenciesHz[" + frequencies.size() + "]";
                frequencies.add(within(element, path, 1, 20_000, Unit.NUMBER, "Hz"));
            }
        }
        return frequencies;
    }

    /** Along its whole line a port has a region on the inner side and none on the outer. */
    private void requireMouth(String path, WavePort port, List<WaveBlock> blocks) {
        Axis along = port.normal() == Axis.X ? Axis.Y : Axis.X;
        double low = port.start().low(along);
        double high = port.start().high(along);
        double inside = port.at() + (port.high() ? -BESIDE : BESIDE);
        double outside = port.at() + (port.high() ? BESIDE : -BESIDE);
        List<Double> ends = new ArrayList<>(List.of(low, high));
        for (WaveBlock block : blocks) {
            ends.add(block.place().low(along));
            ends.add(block.place().high(along));
        }
        List<Double> cuts =
                ends.stream().filter(end -> end >= low && end <= high).sorted().toList();
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double middle = (cuts.get(i) + cuts.get(i + 1)) / 2;
            if (cuts.get(i + 1) - cuts.get(i) < BESIDE) {
                continue;
            }
            boolean open =
                    covered(blocks, port.normal(), inside, middle) && !covered(blocks, port.normal(), outside, middle);
            if (!open) {
                problems.refuse(
                        path,
                        line(port, along),
                        "on the outline of the regions, facing away from them, over its whole span",
                        "");
                return;
            }
        }
    }

    private static boolean covered(List<WaveBlock> blocks, Axis normal, double across, double along) {
        double x = normal == Axis.X ? across : along;
        double y = normal == Axis.X ? along : across;
        return blocks.stream()
                .map(WaveBlock::place)
                .anyMatch(place -> x > place.x0() && x < place.x1() && y > place.y0() && y < place.y1());
    }

    private void requireApart(WavePort inlet, WavePort outlet) {
        Axis along = inlet.normal() == Axis.X ? Axis.Y : Axis.X;
        boolean sameLine = inlet.normal() == outlet.normal()
                && inlet.high() == outlet.high()
                && Math.abs(inlet.at() - outlet.at()) < BESIDE;
        if (sameLine
                && inlet.start().low(along) < outlet.start().high(along) - BESIDE
                && outlet.start().low(along) < inlet.start().high(along) - BESIDE) {
            problems.refuse("outlet", line(outlet, along), "clear of the inlet, " + line(inlet, along), "");
        }
    }

    private static String line(WavePort port, Axis along) {
        String across = port.normal().name().toLowerCase(Locale.ROOT);
        return "a line at " + across + " = " + millimetres(port.at()) + " mm from "
                + millimetres(port.start().low(along)) + " to "
                + millimetres(port.start().high(along)) + " mm";
    }

    private static String millimetres(double metres) {
        return LengthFormat.bare(metres, UnitSystem.METRIC);
    }

    private boolean isObject(JsonNode node, List<String> fields, String path) {
        if (node.isMissingNode()) {
            problems.add(path, "missing; it must be an object with the fields " + String.join(", ", fields));
            return false;
        }
        if (!node.isObject()) {
            problems.refuse(path, node, "an object with the fields " + String.join(", ", fields));
            return false;
        }
        RecordReader.refuseUnknown(problems, node, fields, path);
        return true;
    }

    private boolean isList(JsonNode node, String path, int most, String what) {
        String wanted = "a list of 1 to " + most + " " + what;
        if (node.isMissingNode()) {
            problems.add(path, "missing; it must be " + wanted);
            return false;
        }
        if (!node.isArray()) {
            problems.refuse(path, node, wanted);
            return false;
        }
        if (node.isEmpty() || node.size() > most) {
            problems.refuse(path, node.size() + " " + what, wanted, "");
            return false;
        }
        return true;
    }

    private void refuse(JsonNode node, String path, String field, String wanted) {
        JsonNode value = node.path(field);
        if (value.isMissingNode()) {
            problems.add(path + "." + field, "missing; it must be " + wanted);
        } else {
            problems.refuse(path + "." + field, value, wanted);
        }
    }

    private double place(JsonNode node, String path, String field) {
        return number(node, path, field, -FARTHEST, FARTHEST, Unit.MILLIMETRE);
    }

    private double size(JsonNode node, String path, String field) {
        return number(node, path, field, SMALLEST, FARTHEST, Unit.MILLIMETRE);
    }

    private double number(JsonNode node, String path, String field, double min, double max, Unit unit) {
        JsonNode value = node.path(field);
        if (value.isMissingNode()) {
            problems.add(path + "." + field, "missing; it must be " + ScalarReader.wanted(double.class, unit));
            return Double.NaN;
        }
        return within(value, path + "." + field, min, max, unit, unit.symbol());
    }

    /** A number within limits, in SI; not a number, with the problem noted, for anything else. */
    private double within(JsonNode value, String path, double min, double max, Unit unit, String symbol) {
        Double si = scalars.number(value, unit, path);
        if (si == null) {
            return Double.NaN;
        }
        try {
            return InvalidValue.within(path, si, min, max, unit);
        } catch (InvalidValue e) {
            problems.refuse(path, e.given(), e.limit(), symbol);
            return Double.NaN;
        }
    }
}
