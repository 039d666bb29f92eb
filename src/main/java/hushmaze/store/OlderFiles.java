package hushmaze.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Iterator;
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
        List<String> names = new ArrayList<>();
        for (Iterator<String> all = object.fieldNames(); all.hasNext(); ) {
            names.add(all.next());
        }
        for (String name : names) {
            JsonNode value = object.get(name);
            if (value.isBoolean()) {
                object.put(name, value.booleanValue() ? 1 : 0);
            }
        }
    }
}
