package hushmaze.app.sheet;

import hushmaze.app.model.Designer;
import hushmaze.app.model.PagesModel;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Tip;
import hushmaze.drawing.Drawing;
import hushmaze.drawing.Page;
import hushmaze.drawing.Paper;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.util.StringConverter;

/** The pages of the document set as they will be printed, one at a time. */
public final class PagesView extends BorderPane {
    private static final double ENLARGED = 1050;

    private final PagesModel pages;
    private final PageCanvas canvas = new PageCanvas();
    private final StackPane desk = new StackPane(canvas);
    private final ScrollPane scroll = new ScrollPane(desk);
    private final Label place = new Label();
    private final Button back = new Button(Texts.of("pages.back"));
    private final Button on = new Button(Texts.of("pages.on"));
    private final CheckBox enlarged = new CheckBox(Texts.of("pages.enlarged"));

    public PagesView(Designer designer) {
        this.pages = designer.pages();
        getStyleClass().add("pages-view");
        canvas.getStyleClass().add("paper");
        desk.getStyleClass().add("desk");
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setPannable(true);
        setCenter(scroll);
        setBottom(controls());
        back.setOnAction(e -> pages.pageProperty().set(pages.pageProperty().get() - 1));
        on.setOnAction(e -> pages.pageProperty().set(pages.pageProperty().get() + 1));
        enlarged.setOnAction(e -> show());
        pages.drawingProperty().addListener((p, before, after) -> show());
        pages.pageProperty().addListener((p, before, after) -> {
            scroll.setVvalue(0);
            show();
        });
        show();
    }

    private FlowPane controls() {
        ComboBox<Paper> paper = new ComboBox<>();
        paper.getItems().setAll(Paper.values());
        paper.valueProperty().bindBidirectional(pages.paperProperty());
        paper.setConverter(new StringConverter<>() {
            @Override
            public String toString(Paper size) {
                return size == null ? "" : Texts.word(size);
            }

            @Override
            public Paper fromString(String text) {
                throw new UnsupportedOperationException("papers are chosen, not typed");
            }
        });
        Tip.on(paper, Texts.of("pages.paper.tip"));
        Label label = new Label(Texts.of("pages.paper"));
        label.setLabelFor(paper);
        label.setMnemonicParsing(true);
        HBox choice = new HBox(label, paper);
        choice.setAlignment(Pos.CENTER_LEFT);
        FlowPane bar = new FlowPane(back, on, place, enlarged, choice);
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.getStyleClass().add("view-controls");
        return bar;
    }

    private void show() {
        Drawing drawing = pages.drawingProperty().get();
        int number = pages.pageProperty().get();
        boolean there = drawing != null && number < drawing.pages().size();
        back.setDisable(!there || number == 0);
        on.setDisable(!there || number + 1 >= drawing.pages().size());
        if (!there) {
            place.setText(Texts.of("pages.none"));
            canvas.setSource(null);
            return;
        }
        Page page = drawing.pages().get(number);
        place.setText(Texts.of(
                "pages.place",
                String.valueOf(number + 1),
                String.valueOf(drawing.pages().size()),
                page.title()));
        canvas.setAccessibleText(place.getText());
        boolean large = enlarged.isSelected();
        double wide = large ? ENLARGED * Math.max(1, page.width() / page.height()) : Region.USE_COMPUTED_SIZE;
        canvas.setPrefSize(wide, large ? wide * page.height() / page.width() : Region.USE_COMPUTED_SIZE);
        canvas.setMinSize(large ? wide : 0, large ? wide * page.height() / page.width() : 0);
        canvas.setSource((width, height) -> page);
    }
}
