package hushmaze.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Puts what older versions of the program wrote into today's form; everything else stays as it is. */
final class OlderFiles {
    private OlderFiles() {}

    /** Changes a project's tree. */
    static void update(JsonNode project) {
        for (JsonNode path : project.path("paths")) {
            countLayers(path.path("box").path("linedFaces"));
        }
    }

    /** Whether a face is lined was yes or no; now it is how many layers. */
    private static void countLayers(JsonNode faces) {
        if (!(faces instanceof ObjectNode object)) {
            return;
        }
        for (String face : List.of("walls", "baffles", "ends", "broad")) {
            JsonNode lined = object.path(face);
            if (lined.isBoolean()) {
                object.put(face, lined.booleanValue() ? 1 : 0);
            }
        }
    }
}
