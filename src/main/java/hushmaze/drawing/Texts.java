package hushmaze.drawing;

import hushmaze.assess.PathResult;
import hushmaze.quantity.Notice;
import java.util.List;

/** Sentences about an assessment. */
public interface Texts {
    /** One notice as a sentence. */
    String notice(Notice notice);

    /** The verdicts as sentences: quiet, air, fits, buildable. */
    List<String> verdicts(PathResult path);
}
