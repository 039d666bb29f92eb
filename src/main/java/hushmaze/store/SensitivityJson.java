package hushmaze.store;

import static hushmaze.store.AssessmentJson.lower;
import static hushmaze.store.AssessmentJson.number;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hushmaze.size.Sensitivity;
import hushmaze.sound.PathCalculator.Quick;

/** What small errors and changes would do, as a part of the JSON of an assessment: differences, null where there is none. */
final class SensitivityJson {
    private SensitivityJson() {}

    /** Into the node of a path. */
    static void put(ObjectNode path, Sensitivity sensitivity) {
        ObjectNode node = path.putObject("sensitivity");
        node.put("method", sensitivity.method() == Quick.NONE ? "estimate" : "quick");
        ArrayNode rows = node.putArray("changes");
        for (Sensitivity.Row row : sensitivity.rows()) {
            ObjectNode change =
                    rows.addObject().put("change", lower(row.change().name()));
            number(change, "marginDifferenceDb", row.margin());
            number(change, "likelyMarginDifferenceDb", row.likely());
            number(change, "pressureDropHighDifferencePa", row.pressureDrop());
            change.put("fits", row.fits());
            change.put(
                    "unable", row.unable() == null ? null : lower(row.unable().name()));
            change.put("detail", row.detail());
        }
    }
}
