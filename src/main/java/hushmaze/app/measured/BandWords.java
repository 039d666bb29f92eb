package hushmaze.app.measured;

import hushmaze.app.model.ComparedModel;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.KeyedButton;
import hushmaze.app.verdict.WrappedWords;
import hushmaze.assess.BoxFitting;
import hushmaze.assess.Comparison;
import hushmaze.assess.Finding;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What the bands point to, each with what to try, and what they say of gap and liner, which can be kept. */
final class BandWords extends VBox {
    private final ComparedModel model;
    private final Consumer<Supplier<Optional<String>>> tell;

    /** @param tell makes a change and tells why it was not made */
    BandWords(ComparedModel model, Consumer<Supplier<Optional<String>>> tell) {
        this.model = model;
        this.tell = tell;
        getStyleClass().add("measured-words");
        setId("measured-words");
    }

    void show(Comparison comparison, BoxFitting fitting) {
        getChildren().clear();
        if (comparison == null) {
            return;
        }
        for (Finding finding : comparison.findings()) {
            Label sentence = WrappedWords.of(model.words().finding(finding), "measured-finding");
            if (isOff(finding.kind())) {
                sentence.getStyleClass().add("measured-off");
            }
            getChildren().addAll(sentence, WrappedWords.of(model.words().next(finding), "quiet-words"));
        }
        getChildren().add(WrappedWords.of(model.words().claims(comparison), "quiet-words"));
        if (fitting != null) {
            kept(fitting);
        } else if (model.fitsProperty().get()) {
            getChildren().add(WrappedWords.of(Texts.of("measured.fit.working"), "quiet-words"));
        }
        if (model.hasGap()) {
            getChildren().add(buttons(button("measured.forgetGap", model::forgetGap)));
        }
    }

    private static boolean isOff(Finding.Kind kind) {
        return switch (kind) {
            case AS_PREDICTED, MORE_THAN_PREDICTED, NOTHING_TO_JUDGE, BACKGROUND_HIDES -> false;
            default -> true;
        };
    }

    private void kept(BoxFitting fitting) {
        Label head = new Label(Texts.of("measured.fit"));
        head.getStyleClass().add("small-heading");
        getChildren().add(head);
        model.words()
                .fitting(fitting)
                .forEach(sentence -> getChildren().add(WrappedWords.of(sentence, "measured-finding")));
        FlowPane buttons = buttons();
        if (fitting.tellsGap()) {
            buttons.getChildren().add(button("measured.keepGap", model::keepGap));
        }
        if (fitting.tellsResistivity()) {
            buttons.getChildren().add(button("measured.keepLiner", model::keepLiner));
        }
        if (!buttons.getChildren().isEmpty()) {
            getChildren().addAll(WrappedWords.of(Texts.of("measured.fit.how"), "quiet-words"), buttons);
        }
    }

    private static FlowPane buttons(Button... all) {
        FlowPane buttons = new FlowPane(all);
        buttons.getStyleClass().add("mends");
        return buttons;
    }

    private Button button(String key, Supplier<Optional<String>> change) {
        Button button = KeyedButton.of(key, () -> tell.accept(change));
        button.getStyleClass().add("mend");
        return button;
    }
}
