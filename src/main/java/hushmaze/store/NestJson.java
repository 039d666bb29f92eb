package hushmaze.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import hushmaze.build.CutNode;
import hushmaze.build.NestPart;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetPlan;
import java.io.UncheckedIOException;
import java.util.Locale;

/**
 * Writes a sheet layout as JSON.
 *
 * <p>A cut is an object with {@code along}, {@code atMm}, {@code first} and {@code second}; what is finished is the mark of
 * its panel, or "offcut". Cuts are measured from the low corner of the piece they cut, panels from the sheet's untrimmed
 * corner. {@code provedBest} says whether no layout can cost less, {@code cost} is left out when a sheet has no price, and
 * {@code offcuts} lists what is worth keeping, the largest first, with the number of its sheet from 1. Only when some pieces could not be placed, {@code unplaced} lists their marks.
 */
public final class NestJson {
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private NestJson() {}

    /** The layout as text. */
    public static String write(SheetLayout layout) {
        ObjectNode root = NODES.objectNode();
        ArrayNode sheets = root.putArray("sheets");
        layout.sheets().forEach(plan -> sheets.add(sheet(plan)));
        root.put("lowerBound", layout.lowerBound());
        root.put("provedBest", layout.provedBest());
        layout.cost().ifPresent(cost -> root.put("cost", cost));
        root.set("offcuts", offcuts(layout));
        if (!layout.unplaced().isEmpty()) {
            ArrayNode unplaced = root.putArray("unplaced");
            layout.unplaced().forEach(unplaced::add);
        }
        try {
            return MAPPER.writeValueAsString(root);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ArrayNode offcuts(SheetLayout layout) {
        ArrayNode offcuts = NODES.arrayNode();
        for (SheetLayout.Offcut offcut : layout.offcuts()) {
            offcuts.addObject()
                    .put("sheet", offcut.sheet())
                    .put("lengthMm", millimetres(offcut.length()))
                    .put("widthMm", millimetres(offcut.width()));
        }
        return offcuts;
    }

    private static ObjectNode sheet(SheetPlan plan) {
        ObjectNode node = NODES.objectNode();
        node.put("lengthMm", millimetres(plan.sheet().length()));
        node.put("widthMm", millimetres(plan.sheet().width()));
        node.set("cuts", cuts(plan.cuts()));
        ArrayNode panels = node.putArray("panels");
        for (SheetPlan.Placed panel : plan.panels()) {
            panels.addObject()
                    .put("mark", panel.mark())
                    .put("xMm", millimetres(panel.x()))
                    .put("yMm", millimetres(panel.y()))
                    .put("lengthMm", millimetres(panel.length()))
                    .put("widthMm", millimetres(panel.width()))
                    .put("rotated", panel.rotated());
        }
        return node;
    }

    private static JsonNode cuts(CutNode node) {
        if (node instanceof CutNode.Cut cut) {
            ObjectNode object = NODES.objectNode();
            object.put("along", cut.along().name().toLowerCase(Locale.ROOT));
            object.put("atMm", millimetres(cut.at()));
            object.set("first", cuts(cut.first()));
            object.set("second", cuts(cut.second()));
            return object;
        }
        CutNode.Leaf leaf = (CutNode.Leaf) node;
        return TextNode.valueOf(leaf.offcut() ? NestPart.OFFCUT : leaf.mark());
    }

    /** Millimetres to a nanometre, so that sums of decimal numbers print as such. */
    private static double millimetres(double metres) {
        return Math.round(metres * 1e9) / 1e6;
    }
}
