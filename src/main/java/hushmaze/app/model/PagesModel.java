package hushmaze.app.model;

import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.drawing.Drawing;
import hushmaze.drawing.Paper;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.page.PathDrawing;
import hushmaze.quantity.UnitSystem;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;

/** The pages of the document set of the path looked at, made only while somebody looks at them. */
public final class PagesModel {
    private final ResultModel results;
    private final TaskRunner runner;
    private final TextMeasure measure;
    private final ObjectProperty<Message> message;
    private final AtomicInteger wanted = new AtomicInteger();
    private final ReadOnlyObjectWrapper<Drawing> drawing = new ReadOnlyObjectWrapper<>();
    private final ObjectProperty<Paper> paper = new SimpleObjectProperty<>();
    private final BooleanProperty watched = new SimpleBooleanProperty();
    private final IntegerProperty page = new SimpleIntegerProperty();
    private final ReadOnlyStringWrapper sought = new ReadOnlyStringWrapper("");

    PagesModel(
            EditModel edit,
            ResultModel results,
            TaskRunner runner,
            TextMeasure measure,
            ObjectProperty<Message> message) {
        this.results = results;
        this.runner = runner;
        this.measure = measure;
        this.message = message;
        paper.set(Paper.usual(edit.project().units()));
        edit.projectProperty().addListener((p, before, after) -> follow(before.units(), after.units()));
        results.assessmentProperty().addListener((p, before, after) -> draw());
        edit.pathProperty().addListener((p, before, after) -> {
            page.set(0);
            draw();
        });
        paper.addListener((p, before, after) -> draw());
        watched.addListener((p, before, after) -> draw());
    }

    /** The pages; null while there are none. */
    public ReadOnlyObjectProperty<Drawing> drawingProperty() {
        return drawing.getReadOnlyProperty();
    }

    /** Who has the paper that is usual with the units keeps the usual one when they change. */
    private void follow(UnitSystem before, UnitSystem after) {
        if (before != after && paper.get() == Paper.usual(before)) {
            paper.set(Paper.usual(after));
        }
    }

    /** Paper of the preview and of the export. */
    public ObjectProperty<Paper> paperProperty() {
        return paper;
    }

    /** Whether the pages are on view. */
    public BooleanProperty watchedProperty() {
        return watched;
    }

    /** Number of the page on view, from 0. */
    public IntegerProperty pageProperty() {
        return page;
    }

    /** The mark of a part whose drawing somebody wants to see; empty for none, and once it was turned to. */
    public ReadOnlyStringProperty soughtProperty() {
        return sought.getReadOnlyProperty();
    }

    /** Turns to the page that a part is drawn on, as soon as there are pages. @param mark in the cut list */
    public void seek(String mark) {
        sought.set(mark);
    }

    private void turn(Drawing drawn) {
        for (int i = 0; i < drawn.pages().size(); i++) {
            if (PathDrawing.shows(drawn.pages().get(i), sought.get())) {
                page.set(i);
            }
        }
        sought.set("");
    }

    /** Makes the pages for somebody who does not look at them; a message says why if there are none. */
    public void make(Consumer<Drawing> taker) {
        Optional<PathResult> result = results.pathResult();
        if (result.isEmpty()) {
            message.set(new Message(true, Texts.of("pages.none")));
            return;
        }
        Assessment assessment = results.assessmentProperty().get();
        UnitSystem units = assessment.project().units();
        Paper on = paper.get();
        runner.run(
                progress -> new PathDrawing(assessment, result.get(), on, units, measure).draw(),
                taker,
                e -> message.set(new Message(true, Texts.of("problem.unexpected", e.toString()))));
    }

    /** Does something with the pages away from the window's thread, and tells how it ended. */
    public void run(Function<Progress, Message> work) {
        runner.run(
                work, message::set, e -> message.set(new Message(true, Texts.of("problem.unexpected", e.toString()))));
    }

    private void draw() {
        int ticket = wanted.incrementAndGet();
        Optional<PathResult> result = results.pathResult();
        if (!watched.get() || result.isEmpty()) {
            return;
        }
        Assessment assessment = results.assessmentProperty().get();
        UnitSystem units = assessment.project().units();
        Paper on = paper.get();
        runner.run(
                progress -> new PathDrawing(assessment, result.get(), on, units, measure).draw(),
                drawn -> {
                    if (ticket == wanted.get()) {
                        page.set(Math.min(page.get(), drawn.pages().size() - 1));
                        drawing.set(drawn);
                        if (!sought.get().isEmpty()) {
                            turn(drawn);
                        }
                    }
                },
                e -> message.set(new Message(true, Texts.of("problem.unexpected", e.toString()))));
    }
}
