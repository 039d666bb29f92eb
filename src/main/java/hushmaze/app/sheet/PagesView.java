package hushmaze.app.sheet;

import hushmaze.app.model.Designer;
import hushmaze.app.model.PagesModel;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Named;
import hushmaze.app.verdict.Presence;
import hushmaze.app.verdict.Tip;
import hushmaze.drawing.Drawing;
import hushmaze.drawing.Page;
import hushmaze.drawing.Paper;
import java.util.List;
import java.util.stream.IntStream;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** The pages of the document set as they will be printed, one at a time. */
public final class PagesView extends BorderPane {
    private static final double ENLARGED = 1050;
    /** Pages in sight when one is chosen. */
    private static final int ROWS = 16;

    private static final double PLACE = 176;

    private final PagesModel pages;
    private final PageCanvas canvas = new PageCanvas();
    private final StackPane desk = new StackPane(canvas);
    private final ScrollPane scroll = new ScrollPane(desk);
    private final ComboBox<Integer> place = new ComboBox<>();
    private final Label none = new Label(Texts.of("pages.none"));
    private List<String> titles = List.of();
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
        place.setId("pages-place");
        place.setVisibleRowCount(ROWS);
        place.setAccessibleText(Texts.of("pages.choose"));
        Tip.on(place, Texts.of("pages.choose"));
        place.setConverter(Named.by(this::title));
        place.valueProperty().addListener((p, before, now) -> {
            if (now != null) {
                pages.pageProperty().set(now);
            }
        });
        place.setMaxWidth(PLACE);
        turning(back, "pages.back.tip", -1);
        turning(on, "pages.on.tip", 1);
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            boolean forth = e.getCode() == KeyCode.PAGE_DOWN;
            if ((forth || e.getCode() == KeyCode.PAGE_UP) && !place.isShowing()) {
                turn(forth ? 1 : -1);
                e.consume();
            }
        });
        enlarged.setOnAction(e -> show());
        pages.drawingProperty().addListener((p, before, after) -> show());
        pages.pageProperty().addListener((p, before, after) -> {
            scroll.setVvalue(0);
            show();
        });
        show();
    }

    private String title(int number) {
        Drawing drawing = pages.drawingProperty().get();
        boolean there = drawing != null && number < drawing.pages().size();
        return there ? (number + 1) + "  " + drawing.pages().get(number).title() : "";
    }

    private void turning(Button button, String tip, int by) {
        button.setAccessibleText(Texts.of(tip));
        Tip.on(button, Texts.of(tip));
        button.setOnAction(e -> turn(by));
    }

    private void turn(int by) {
        Drawing drawing = pages.drawingProperty().get();
        int to = pages.pageProperty().get() + by;
        if (drawing != null && to >= 0 && to < drawing.pages().size()) {
            pages.pageProperty().set(to);
        }
    }

    private FlowPane controls() {
        ComboBox<Paper> paper = new ComboBox<>();
        paper.getItems().setAll(Paper.values());
        paper.valueProperty().bindBidirectional(pages.paperProperty());
        paper.setConverter(Named.by(Texts::word));
        Tip.on(paper, Texts.of("pages.paper.tip"));
        Label label = new Label(Texts.of("pages.paper"));
        label.setLabelFor(paper);
        label.setMnemonicParsing(true);
        HBox choice = new HBox(label, paper);
        choice.setAlignment(Pos.CENTER_LEFT);
        FlowPane bar = new FlowPane(back, place, on, none, enlarged, choice);
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
        Presence.set(none, !there);
        Presence.set(place, there);
        if (!there) {
            canvas.setSource(null);
            return;
        }
        Page page = drawing.pages().get(number);
        choose(drawing, number);
        canvas.setAccessibleText(Texts.of(
                "pages.place",
                String.valueOf(number + 1),
                String.valueOf(drawing.pages().size()),
                page.title()));
        boolean large = enlarged.isSelected();
        double wide = large ? ENLARGED * Math.max(1, page.width() / page.height()) : Region.USE_COMPUTED_SIZE;
        canvas.setPrefSize(wide, large ? wide * page.height() / page.width() : Region.USE_COMPUTED_SIZE);
        canvas.setMinSize(large ? wide : 0, large ? wide * page.height() / page.width() : 0);
        canvas.setSource((width, height) -> page);
    }

    /** Pages of other titles are other ones to choose from, even where there are as many. */
    private void choose(Drawing drawing, int number) {
        List<String> now = drawing.pages().stream().map(Page::title).toList();
        if (!now.equals(titles)) {
            titles = now;
            place.setValue(null);
            place.getItems().setAll(IntStream.range(0, now.size()).boxed().toList());
        }
        place.setValue(number);
    }
}
