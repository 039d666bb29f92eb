package hushmaze.store;

import static hushmaze.store.AssessmentJson.number;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hushmaze.assess.ComparedBand;
import hushmaze.assess.Comparison;
import hushmaze.assess.Finding;
import hushmaze.wording.CompareWording;

/** Measured against predicted as JSON, format version 1, for programs. A figure that there is not is null. */
public final class ComparisonJson {
    private static final int FORMAT_VERSION = 1;

    private ComparisonJson() {}

    /** All of it as one JSON text. */
    public static String of(Comparison comparison, CompareWording words) {
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
        return JsonText.print(node);
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
