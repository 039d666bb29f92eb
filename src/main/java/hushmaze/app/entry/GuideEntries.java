package hushmaze.app.entry;

import hushmaze.app.entry.TypedEntry.Size;
import hushmaze.app.model.GuideModel;
import hushmaze.app.model.Question;
import java.util.List;
import javafx.scene.control.ComboBox;

/** Makes the entries of the questions that lead to a first box. */
public final class GuideEntries {
    private final GuideModel guide;

    public GuideEntries(GuideModel guide) {
        this.guide = guide;
    }

    /** What a question is answered with; the drawing follows what has the focus. */
    public Entry of(Question question) {
        String key = "first." + question.name();
        if (question.isNumber()) {
            return new TypedEntry(
                    guide,
                    key,
                    key,
                    Size.BESIDE,
                    () -> guide.shown(question),
                    () -> true,
                    text -> guide.enter(question, text));
        }
        ComboBox<Object> box = new ComboBox<>();
        return new ChoiceEntry<>(
                new EntryRow(key, key, box, isWide(question)),
                box,
                List.copyOf(guide.box().options(question)),
                guide::word,
                () -> guide.box().get(question),
                () -> true,
                value -> guide.choose(question, value));
    }

    private static boolean isWide(Question question) {
        return switch (question) {
            case NOISE, TARGET, BOARD, LINER, SHEET, WAY_OUT, DOING, FURNISHED, OPENING_KIND, OPENING_BEYOND -> true;
            default -> false;
        };
    }
}
