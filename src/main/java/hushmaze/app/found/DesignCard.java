package hushmaze.app.found;

import hushmaze.app.model.SizingModel;
import hushmaze.app.model.Texts;
import hushmaze.app.sheet.PageCanvas;
import hushmaze.app.verdict.Mark;
import hushmaze.app.verdict.Tip;
import hushmaze.app.verdict.WrappedWords;
import hushmaze.project.Box;
import hushmaze.size.Design;
import hushmaze.size.Kind;
import hushmaze.wording.SizeWording;
import hushmaze.wording.Unbroken;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One design: what it is the best at, its picture, its figures, and the button that takes it. */
final class DesignCard extends HBox {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private final SizingModel model;
    private final Design design;
    private final SizeWording wording;
    private final Button use = new Button();

    /** @param number among the cards, from 0 */
    DesignCard(SizingModel model, Design design, int number) {
        this.model = model;
        this.design = design;
        this.wording = model.wording();
        getStyleClass().add("design-card");
        setId("design-" + number);
        PageCanvas picture = new PageCanvas();
        picture.getStyleClass().add("design-picture");
        picture.setSource(new OpenBox(design.result().solid()));
        picture.setAccessibleText(Texts.of("found.picture.words", wording.box(design.box())));
        VBox words = new VBox(head(number), figures());
        words.getStyleClass().add("design-words");
        words.setMinWidth(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        if (design.kinds().contains(Kind.RECOMMENDED)) {
            words.getChildren().add(WrappedWords.of(wording.why(design), "sentence"));
        }
        words.getChildren().add(WrappedWords.of(wording.box(design.box()), "sentence"));
        getChildren().addAll(picture, words);
        setOnMousePressed(e -> model.selectedProperty().set(design));
        focusWithinProperty().addListener((p, before, now) -> {
            if (now) {
                model.selectedProperty().set(design);
            }
        });
        refresh();
    }

    private HBox head(int number) {
        Label kinds = new Label(Unbroken.of(wording.kinds(design)));
        kinds.setWrapText(true);
        kinds.setMinHeight(Region.USE_PREF_SIZE);
        kinds.getStyleClass().add("block-name");
        kinds.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(kinds, Priority.ALWAYS);
        use.setId("use-" + number);
        use.setMinWidth(Region.USE_PREF_SIZE);
        Tip.on(use, Texts.of("found.use.tip"));
        use.setAccessibleText(Texts.of("found.use.of", wording.kinds(design)));
        use.setOnAction(e -> model.use(design));
        HBox head = new HBox(kinds, use);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("verdict-line");
        return head;
    }

    private FlowPane figures() {
        FlowPane figures = new FlowPane();
        figures.getStyleClass().add("design-figures");
        HBox margin = figure(
                design.good() ? "found.spare" : design.othersGovern() ? "found.heard" : "found.short",
                model.amounts().decibels(Math.abs(design.margin())));
        margin.getChildren().add(0, new Mark(design.good()));
        figures.getChildren()
                .addAll(
                        margin,
                        figure("found.outside", wording.outside(design)),
                        figure("found.depth", model.amounts().length(design.depth())),
                        figure("found.mass", model.amounts().mass(design.mass())),
                        figure("found.drop", model.amounts().pressure(design.drop())),
                        figure(
                                "found.sheets",
                                String.valueOf(design.sheets()),
                                String.valueOf(design.linerSheets()),
                                kept(design.keptOffcuts())),
                        figure("found.cost", model.cost(design)),
                        figure("found.passes", passes(design.box())));
        return figures;
    }

    private static String kept(int offcuts) {
        return offcuts == 0 ? "" : Texts.of("found.sheets.kept." + (offcuts == 1 ? "one" : "many"), offcuts);
    }

    private static String passes(Box box) {
        return box.form() == Box.Form.OFFSET_CHAMBER ? Texts.of("found.chamber") : String.valueOf(box.passes());
    }

    private static HBox figure(String key, String... gaps) {
        Label name = new Label(Texts.of(key));
        name.getStyleClass().addAll("figure-name", "quiet-words");
        Label value =
                new Label(Texts.find(key + ".value").isPresent() ? Texts.of(key + ".value", (Object[]) gaps) : gaps[0]);
        value.getStyleClass().add("figure");
        HBox pair = new HBox(name, value);
        name.setMinWidth(Region.USE_PREF_SIZE);
        value.setMinWidth(Region.USE_PREF_SIZE);
        pair.setAlignment(Pos.BASELINE_LEFT);
        pair.getStyleClass().add("figure-pair");
        return pair;
    }

    /** Shows whether it is looked at, and whether it is in the path. */
    void refresh() {
        boolean used = model.isUsed(design);
        use.setText(Texts.of(used ? "found.inUse" : "found.use"));
        use.setDisable(used);
        pseudoClassStateChanged(CHOSEN, design.equals(model.selectedProperty().get()));
    }
}
