package hushmaze.store;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hushmaze.project.VentPath;
import hushmaze.quantity.Unit;
import hushmaze.size.Design;
import hushmaze.size.HeldAgainst;
import hushmaze.size.PathDesigns;
import hushmaze.size.Relaxation;
import hushmaze.size.Sized;
import hushmaze.size.Tally;
import hushmaze.wording.SizeWording;
import hushmaze.wording.Wording;

/** What a search for boxes found, as JSON, format version 1, for programs. Units are in the names. */
public final class SizeJson {
    private static final int FORMAT_VERSION = 1;

    private final JsonNodeFactory nodes = JsonNodeFactory.instance;
    private final Sized sized;
    private final SizeWording words;
    private final Wording wording;

    private SizeJson(Sized sized) {
        this.sized = sized;
        this.words = new SizeWording(sized.project());
        this.wording = new Wording(sized.project().units());
    }

    /** All of it as one JSON text. */
    public static String of(Sized sized) {
        return JsonText.print(new SizeJson(sized).whole());
    }

    private ObjectNode whole() {
        ObjectNode node = nodes.objectNode();
        node.put("formatVersion", FORMAT_VERSION);
        node.put("project", sized.project().name());
        node.put("enoughAir", sized.enoughAir());
        ArrayNode paths = node.putArray("paths");
        sized.paths().forEach(path -> paths.add(path(path)));
        return node;
    }

    private ObjectNode path(PathDesigns path) {
        VentPath vent = sized.project().paths().get(path.path());
        ObjectNode node = nodes.objectNode();
        node.put("name", vent.name());
        node.put("noiseShare", vent.brief().noiseShare());
        node.put("quiet", !path.designs().isEmpty() && !path.shortfall().isAny());
        node.put("shortfallDb", path.shortfall().target());
        node.put("othersShortfallDb", path.shortfall().others());
        node.put("costUnit", path.inMoney() ? "price" : "m2");
        node.set("boxes", boxes(path.tally()));
        if (path.held() != null) {
            node.set("heldAgainst", held(path.held()));
        }
        ArrayNode designs = node.putArray("designs");
        path.designs().forEach(design -> designs.add(design(design)));
        ArrayNode ways = node.putArray("relaxations");
        path.relaxations().forEach(relaxation -> ways.add(relaxation(relaxation)));
        return node;
    }

    private ObjectNode held(HeldAgainst held) {
        ObjectNode node = nodes.objectNode();
        node.put("among", held.among().name());
        node.put("boxes", held.boxes());
        node.put("stepMm", Unit.MILLIMETRE.fromSi(held.step()));
        node.put("judged", held.judged());
        node.put("open", held.open());
        return node;
    }

    private ObjectNode boxes(Tally tally) {
        ObjectNode node = nodes.objectNode();
        node.put("all", tally.all());
        node.put("noRoom", tally.noRoom());
        node.put("noAir", tally.noAir());
        node.put("notCarried", tally.notCarried());
        node.put("noSheets", tally.noSheets());
        node.put("hopeless", tally.hopeless());
        node.put("estimated", tally.estimated());
        node.put("quick", tally.quick());
        node.put("assessed", tally.assessed());
        return node;
    }

    private ObjectNode design(Design design) {
        ObjectNode node = nodes.objectNode();
        ArrayNode kinds = node.putArray("kinds");
        design.kinds().forEach(kind -> kinds.add(kind.name()));
        node.put("text", words.kinds(design) + ": " + words.box(design.box()));
        node.put("good", design.good());
        node.put("marginDb", design.result().quiet().margin());
        double others = design.result().soundMargins().others();
        if (Double.isFinite(others)) {
            node.put("othersMarginDb", others);
        }
        node.put("widthMm", Unit.MILLIMETRE.fromSi(design.result().fits().width()));
        node.put("heightMm", Unit.MILLIMETRE.fromSi(design.result().fits().height()));
        node.put("depthMm", Unit.MILLIMETRE.fromSi(design.depth()));
        node.put("massKg", design.mass());
        node.put("pressureDropPa", design.drop());
        node.put("sheets", design.sheets());
        node.put("linerSheets", design.linerSheets());
        node.put("offcutsOfOtherBoxes", design.keptOffcuts());
        node.put("cost", design.cost());
        node.set("box", RecordWriter.write(design.box()));
        return node;
    }

    private ObjectNode relaxation(Relaxation relaxation) {
        ObjectNode node = nodes.objectNode();
        node.put("limit", relaxation.limit().name());
        node.put("from", relaxation.unit().fromSi(relaxation.from()));
        node.put("to", relaxation.unit().fromSi(relaxation.to()));
        node.put("unit", relaxation.unit().symbol());
        node.put("text", wording.relaxation(relaxation));
        return node;
    }
}
