package hushmaze.app.model;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.KnownBoxes;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.project.Box;
import hushmaze.project.KeptBox;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.size.FirstLayout;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;

/**
 * Boxes put by for the path looked at, beside the one in it, all judged by the same methods within the same brief. They are judged only
 * while somebody looks.
 */
public final class KeptModel {
    private static final Field KEPT = Field.of("path.kept");
    /** Projects with one of the boxes whose results are remembered. */
    private static final int REMEMBERED = 40;

    /**
     * One box.
     *
     * @param number among those put by; {@link #PRESENT} for the box in the path
     * @param name to tell it by
     * @param result null while it is worked out, or where it cannot be
     * @param problem why it cannot be judged; empty otherwise
     */
    public record Column(int number, String name, Box box, PathResult result, String problem) {
        public boolean isPresent() {
            return number == PRESENT;
        }
    }

    /** Number of the box in the path. */
    public static final int PRESENT = -1;

    private final EditModel edit;
    private final TaskRunner runner;
    private final Methods methods;
    private final BooleanProperty watched = new SimpleBooleanProperty();
    private final ReadOnlyObjectWrapper<List<Column>> columns = new ReadOnlyObjectWrapper<>(List.of());
    private final KnownBoxes boxes;
    private final Map<Project, PathResult> results = new HashMap<>();
    private final Map<Project, String> problems = new HashMap<>();
    private final AtomicInteger wanted = new AtomicInteger();

    /**
     * @param boxes what is known of boxes
     * @param methods all boxes are judged by
     */
    KeptModel(EditModel edit, KnownBoxes boxes, TaskRunner runner, Methods methods) {
        this.edit = edit;
        this.boxes = boxes;
        this.runner = runner;
        this.methods = methods;
        edit.whenStarted(() -> {
            results.clear();
            problems.clear();
        });
        edit.projectProperty().addListener((p, before, after) -> follow());
        edit.pathProperty().addListener((p, before, after) -> follow());
        watched.addListener((p, before, after) -> follow());
        follow();
    }

    /** Whether somebody looks at the comparison. */
    public BooleanProperty watchedProperty() {
        return watched;
    }

    /** The box in the path first, then those put by. */
    public ReadOnlyObjectProperty<List<Column>> columnsProperty() {
        return columns.getReadOnlyProperty();
    }

    private VentPath path() {
        return edit.project().paths().get(edit.path());
    }

    /** Whether the box in the path can be put by. */
    public boolean mayKeep() {
        return path().box() != null && path().kept().size() < VentPath.MAX_KEPT;
    }

    /** Puts the box in the path by, under a name that is free. */
    public Optional<String> keep() {
        return mayKeep() ? keep(path().box()) : Optional.of(Texts.of("kept.noMore", String.valueOf(VentPath.MAX_KEPT)));
    }

    /** Puts any box by. */
    public Optional<String> keep(Box box) {
        List<KeptBox> more = new ArrayList<>(path().kept());
        more.add(new KeptBox(freeName(more), box));
        return set("edit.kept.add", path -> path.keeping(more));
    }

    private static String freeName(List<KeptBox> taken) {
        for (int number = 1; ; number++) {
            String name = Texts.of("kept.name", String.valueOf(number));
            if (taken.stream().noneMatch(k -> k.name().equals(name))) {
                return name;
            }
        }
    }

    /** Gives one put by another name. */
    public Optional<String> rename(int number, String name) {
        List<KeptBox> others = new ArrayList<>(path().kept());
        return set("edit.kept.rename", path -> {
            others.set(number, new KeptBox(name.strip(), others.get(number).box()));
            return path.keeping(others);
        });
    }

    /** Takes one put by away. */
    public Optional<String> remove(int number) {
        List<KeptBox> others = new ArrayList<>(path().kept());
        others.remove(number);
        return set("edit.kept.remove", path -> path.keeping(others));
    }

    /** Puts one more like it by. */
    public Optional<String> duplicate(int number) {
        return path().kept().size() < VentPath.MAX_KEPT
                ? keep(path().kept().get(number).box())
                : Optional.of(Texts.of("kept.noMore", String.valueOf(VentPath.MAX_KEPT)));
    }

    /** Puts one put by into the path. The box that was there is put by first, if it is not yet and there is room for one more. */
    public Optional<String> use(int number) {
        Box box = path().kept().get(number).box();
        Box old = path().box();
        List<KeptBox> others = new ArrayList<>(path().kept());
        boolean known = old == null || others.stream().anyMatch(k -> k.box().equals(old));
        if (!known && others.size() < VentPath.MAX_KEPT) {
            others.add(new KeptBox(freeName(others), old));
        }
        return set("edit.kept.use", path -> path.keeping(others).withBox(box));
    }

    private Optional<String> set(String what, UnaryOperator<VentPath> change) {
        int at = edit.path();
        return edit.change(
                KEPT,
                Texts.of("kept.heading"),
                Texts.of(what),
                p -> p.withPath(at, change.apply(p.paths().get(at))));
    }

    private void follow() {
        int ticket = wanted.incrementAndGet();
        show();
        if (!watched.get()) {
            return;
        }
        for (Column column : columns.get()) {
            if (column.result() == null && column.problem().isEmpty()) {
                judge(with(column.box()), edit.path(), ticket);
            }
        }
    }

    /** The project with one of the boxes, and none put by: what is compared knows nothing of the others. */
    private Project with(Box box) {
        Project project = edit.project();
        for (int i = 0; i < project.paths().size(); i++) {
            project = project.withPath(i, project.paths().get(i).keeping(List.of()));
        }
        VentPath now = project.paths().get(edit.path());
        return project.withPath(edit.path(), now.withBox(box));
    }

    private void judge(Project asked, int path, int ticket) {
        runner.run(
                progress -> {
                    Progress ours = progress.asLongAs(() -> ticket == wanted.get());
                    ours.check(0, asked.name());
                    Project whole = FirstLayout.complete(asked, ours);
                    Assessment all = Assessor.assess(whole, methods, boxes, ours);
                    return all.paths().get(path);
                },
                result -> remember(results, asked, result),
                e -> remember(problems, asked, ResultModel.explain(e, asked)));
    }

    private <T> void remember(Map<Project, T> known, Project asked, T what) {
        if (known.size() >= REMEMBERED) {
            known.clear();
        }
        known.put(asked, what);
        show();
    }

    private void show() {
        List<Column> all = new ArrayList<>();
        if (path().box() != null) {
            all.add(column(PRESENT, Texts.of("kept.present"), path().box()));
        }
        List<KeptBox> kept = path().kept();
        for (int i = 0; i < kept.size(); i++) {
            all.add(column(i, kept.get(i).name(), kept.get(i).box()));
        }
        columns.set(List.copyOf(all));
    }

    private Column column(int number, String name, Box box) {
        Project asked = with(box);
        return new Column(number, name, box, results.get(asked), problems.getOrDefault(asked, ""));
    }
}
