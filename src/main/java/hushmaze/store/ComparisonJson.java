package hushmaze.store;

import static hushmaze.store.AssessmentJson.number;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hushmaze.assess.AirComparison;
import hushmaze.assess.BoxFitting;
import hushmaze.assess.ComparedBand;
import hushmaze.assess.Comparison;
import hushmaze.assess.Finding;
import hushmaze.quantity.Unit;
import hushmaze.wording.CompareWording;
import java.util.Optional;

/** Measured against predicted as JSON, format version 1, for programs. A figure that there is not is null. */
public final class ComparisonJson {
    private static final int FORMAT_VERSION = 1;

    private ComparisonJson() {}

    /** Measured air alone as one JSON text. */
    public static String of(AirComparison air, CompareWording words) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("formatVersion", FORMAT_VERSION);
        put(node, air, words);
        return JsonText.print(node);
    }

    /** All of it as one JSON text; the fit is null where too few bands were measured. */
    public static String of(
            Comparison comparison, AirComparison air, Optional<BoxFitting> fitting, CompareWording words) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("formatVersion", FORMAT_VERSION);
        node.put("path", comparison.path());
        node.put("fraction", comparison.bands().fraction());
        node.put("levels", comparison.scale().name());
        node.put("claims", words.claims(comparison));
        ArrayNode bands = node.putArray("bands");
        comparison.rows().forEach(row -> put(bands.addObject(), row));
        ArrayNode diagnosis = node.putArray("diagnosis");
        comparison.findings().forEach(finding -> put(diagnosis.addObject(), finding, words));
        put(node, air, words);
        fitting.ifPresentOrElse(f -> put(node.putObject("fitting"), f, words), () -> node.putNull("fitting"));
        return JsonText.print(node);
    }

    private static void put(ObjectNode node, AirComparison air, CompareWording words) {
        ArrayNode lines = node.putArray("air");
        for (AirComparison.Line line : air.lines()) {
            ObjectNode one = lines.addObject();
            Unit unit = unit(line.kind());
            one.put("kind", line.kind().name());
            one.put("unit", unit.symbol());
            number(one, "measured", unit.fromSi(line.measured()));
            number(one, "uncertainty", unit.fromSi(line.uncertainty()));
            number(one, "least", fromSi(line.least(), unit));
            number(one, "most", fromSi(line.most(), unit));
            one.put("verdict", line.verdict().name());
            one.put("beyondLimit", line.beyondLimit());
            one.put("text", words.airSentence(line));
            one.put("next", words.airNext(line));
        }
    }

    private static Unit unit(AirComparison.Kind kind) {
        return switch (kind) {
            case FLOW, AIR_BY_CO2 -> Unit.LITRE_PER_SECOND;
            case DOOR_PRESSURE -> Unit.PASCAL;
            case CO2 -> Unit.PARTS_PER_MILLION;
        };
    }

    private static void put(ObjectNode node, BoxFitting fitting, CompareWording words) {
        node.put("explains", fitting.explains());
        put(node.putObject("coverGapMm"), fitting.gap(), Unit.MILLIMETRE);
        if (fitting.resistivity() == null) {
            node.putNull("flowResistivityPaSPerM2");
        } else {
            put(node.putObject("flowResistivityPaSPerM2"), fitting.resistivity(), Unit.PASCAL_SECOND_PER_SQUARE_METRE);
        }
        number(node, "offBeforeDb", fitting.before());
        number(node, "offAfterDb", fitting.after());
        node.put("bands", fitting.bands());
        node.put("text", String.join(" ", words.fitting(fitting)));
    }

    private static void put(ObjectNode node, BoxFitting.Value value, Unit unit) {
        number(node, "least", fromSi(value.least(), unit));
        number(node, "likely", unit.fromSi(value.likely()));
        number(node, "most", fromSi(value.most(), unit));
    }

    private static Double fromSi(Double si, Unit unit) {
        return si == null ? null : Double.valueOf(unit.fromSi(si));
    }

    private static void put(ObjectNode node, ComparedBand row) {
        number(node, "centreHz", row.band().centreHz());
        number(node, "beforeDb", row.before());
        number(node, "afterDb", row.after());
        number(node, "reductionDb", row.reduction());
        number(node, "uncertaintyDb", row.uncertainty());
        number(node, "overBackgroundDb", row.overBackground());
        node.put("atLeast", row.atLeast());
        number(node, "lowDb", row.low());
        number(node, "likelyDb", row.likely());
        number(node, "highDb", row.high());
        node.put("verdict", row.verdict().name());
    }

    private static void put(ObjectNode node, Finding finding, CompareWording words) {
        node.put("kind", finding.kind().name());
        number(node, "fromHz", finding.from().centreHz());
        number(node, "toHz", finding.to().centreHz());
        number(node, "amountDb", finding.amount());
        node.put("text", words.finding(finding));
        node.put("next", words.next(finding));
    }
}
