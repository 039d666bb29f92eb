package hushmaze.app.measured;

import hushmaze.app.verdict.WrappedWords;
import hushmaze.assess.AirComparison;
import hushmaze.wording.CompareWording;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What was measured of the air, beside what was predicted, and what to try. */
final class AirWords extends VBox {
    AirWords() {
        getStyleClass().add("measured-words");
        setId("measured-air-words");
    }

    void show(AirComparison air, CompareWording words) {
        getChildren().clear();
        for (AirComparison.Line line : air.lines()) {
            Label sentence = WrappedWords.of(words.airSentence(line), "measured-finding");
            boolean off = line.beyondLimit()
                    || line.verdict() == AirComparison.Verdict.LESS
                    || line.verdict() == AirComparison.Verdict.MORE;
            if (off) {
                sentence.getStyleClass().add("measured-off");
            }
            getChildren().add(sentence);
            String next = words.airNext(line);
            if (!next.isEmpty()) {
                getChildren().add(WrappedWords.of(next, "quiet-words"));
            }
        }
    }
}
