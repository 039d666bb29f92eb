package hushmaze.app.model;

import hushmaze.assess.AirJudge;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.project.Project;
import hushmaze.quantity.InvalidValue;
import hushmaze.size.Sweep;
import hushmaze.size.SweepRange;
import hushmaze.size.SweepRow;
import hushmaze.wording.SizeWording;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;

/**
 * What would become of the box in the path looked at if one number were another: margin to the target and pressure drop at many of
 * its values. What was worked out stays until the same number is worked out again or another project is opened.
 */
public final class WhatIfModel {
    /** How it stands for the path and the number looked at. */
    public enum State {
        NONE,
        COMPUTING,
        FINISHED,
        /** It was stopped; what there was is kept. */
        STOPPED,
        FAILED
    }

    /**
     * What one value gives.
     *
     * @param value in the number's unit
     * @param margin to the target at the pessimistic edge, dB; negative infinity where nothing is left for the path
     * @param drop of pressure at the high edge, Pa
     * @param allowed most it may be, Pa
     * @param failing verdicts of the path that are not good
     */
    public record Point(double value, double margin, double drop, double allowed, List<Verdict> failing) {
        public Point {
            failing = List.copyOf(failing);
        }

        /** Whether every verdict of the path is good. */
        public boolean good() {
            return failing.isEmpty();
        }
    }

    /** What is judged of a path. */
    public enum Verdict {
        QUIET,
        AIR,
        FITS,
        BUILDABLE,
        /** What others hear of the room. */
        OTHERS;

        private boolean ok(PathResult result) {
            return switch (this) {
                case QUIET -> result.quiet().ok();
                case AIR -> result.air().ok();
                case FITS -> result.fits().ok();
                case BUILDABLE -> result.buildable().ok();
                case OTHERS -> result.othersOk();
            };
        }
    }

    /**
     * What was worked out so far.
     *
     * @param number that was changed
     * @param path of the project
     * @param asked the project as it is
     * @param now present value
     * @param range values tried
     * @param points of values that make a box, in their order
     * @param refusals why there are no others, in their order
     */
    public record Course(
            Swept number,
            int path,
            Project asked,
            double now,
            SweepRange range,
            List<Point> points,
            List<String> refusals) {
        public Course {
            points = List.copyOf(points);
            refusals = List.copyOf(refusals);
        }

        /** Whether a point is that of the present value. */
        public boolean isNow(Point point) {
            double step = (range.to() - range.from()) / (range.steps() - 1);
            return Math.abs(point.value() - now) < SAME * step;
        }
    }

    /** Of a step. */
    private static final double SAME = 1e-6;

    private record Key(int path, Swept number) {}

    private record Run(Course course, State state, double fraction, String problem) {}

    private final EditModel edit;
    private final TaskRunner runner;
    private final Methods methods;
    private final AtomicInteger wanted = new AtomicInteger();
    private final Map<Key, Run> runs = new HashMap<>();
    private Key running;

    private final ObjectProperty<Swept> number = new SimpleObjectProperty<>(Swept.CLEAR_WIDTH);
    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(State.NONE);
    private final ReadOnlyObjectWrapper<Course> course = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyDoubleWrapper fraction = new ReadOnlyDoubleWrapper();
    private final ReadOnlyBooleanWrapper outdated = new ReadOnlyBooleanWrapper();

    /** @param methods of every value */
    WhatIfModel(EditModel edit, TaskRunner runner, Methods methods) {
        this.edit = edit;
        this.runner = runner;
        this.methods = methods;
        edit.whenStarted(this::forget);
        edit.projectProperty().addListener((p, before, after) -> show());
        edit.pathProperty().addListener((p, before, after) -> show());
        number.addListener((p, before, after) -> show());
    }

    /** The number that is changed. */
    public ObjectProperty<Swept> numberProperty() {
        return number;
    }

    public ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** What there is so far for the path and the number looked at; null for nothing. */
    public ReadOnlyObjectProperty<Course> courseProperty() {
        return course.getReadOnlyProperty();
    }

    /** Share done, 0 to 1. */
    public ReadOnlyDoubleProperty fractionProperty() {
        return fraction.getReadOnlyProperty();
    }

    /** Whether anything that may count has changed since. */
    public ReadOnlyBooleanProperty outdatedProperty() {
        return outdated.getReadOnlyProperty();
    }

    /** Numbers the path looked at has; none without a box. */
    public List<Swept> numbers() {
        return Arrays.stream(Swept.values())
                .filter(one -> one.isIn(edit.project(), edit.path()))
                .toList();
    }

    /** Whether there is something to begin. */
    public boolean mayStart() {
        return number.get().isIn(edit.project(), edit.path()) && state.get() != State.COMPUTING;
    }

    /** Begins for the path and number looked at; another that is still going on is stopped. */
    public void start() {
        if (!mayStart()) {
            return;
        }
        cancel();
        Project asked = edit.project();
        Key key = new Key(edit.path(), number.get());
        int ticket = wanted.incrementAndGet();
        running = key;
        double now = key.number().now(asked, key.path());
        Course empty = new Course(
                key.number(), key.path(), asked, now, key.number().range(now, asked.units()), List.of(), List.of());
        put(key, new Run(empty, State.COMPUTING, 0, ""));
        runner.run(
                progress -> computed(empty, key, progress, ticket),
                whole -> finish(key, new Run(whole, State.FINISHED, 1, ""), ticket),
                e -> finish(
                        key, new Run(runs.get(key).course(), State.FAILED, 0, ResultModel.explain(e, asked)), ticket));
    }

    /** On the working thread. */
    private Course computed(Course empty, Key key, Progress progress, int ticket) {
        List<Point> points = new ArrayList<>();
        List<String> refusals = new ArrayList<>();
        Progress wantedStill = progress.asLongAs(() -> ticket == wanted.get());
        int steps = empty.range().steps();
        new Sweep(empty.range(), value -> key.number().in(empty.asked(), key.path(), value), methods)
                .rows(IntStream.range(0, steps).boxed().toList(), wantedStill, row -> {
                    take(row, empty, points, refusals);
                    double share = (row.step() + 1.0) / steps;
                    Run news = new Run(with(empty, points, refusals), State.COMPUTING, share, "");
                    runner.tell(() -> finish(key, news, ticket));
                });
        return with(empty, points, refusals);
    }

    private static Course with(Course empty, List<Point> points, List<String> refusals) {
        return new Course(empty.number(), empty.path(), empty.asked(), empty.now(), empty.range(), points, refusals);
    }

    private static void take(SweepRow row, Course of, List<Point> points, List<String> refusals) {
        if (row.refusal() != null) {
            refusals.add(why(row.refusal(), of));
            return;
        }
        PathResult result = row.assessment().paths().get(of.path());
        points.add(new Point(
                row.value(),
                result.quiet().margin(),
                result.pathAir().pressureHigh(),
                AirJudge.allowed(result.path().brief()),
                Arrays.stream(Verdict.values())
                        .filter(verdict -> !verdict.ok(result))
                        .toList()));
    }

    private static String why(RuntimeException refusal, Course of) {
        return refusal instanceof InvalidValue value
                ? Refusal.sentence(value, of.number().field(), Texts.of("whatif." + of.number()))
                : ResultModel.explain(refusal, of.asked());
    }

    private void finish(Key key, Run run, int ticket) {
        Run there = runs.get(key);
        if (ticket == wanted.get() && there != null && there.state() == State.COMPUTING) {
            put(key, run);
        }
    }

    /** Stops what is going on, for whichever path and number; what there is stays. */
    public void cancel() {
        wanted.incrementAndGet();
        Run there = runs.get(running);
        if (there != null && there.state() == State.COMPUTING) {
            put(running, new Run(there.course(), State.STOPPED, there.fraction(), ""));
        }
    }

    private void forget() {
        cancel();
        runs.clear();
        show();
    }

    private void put(Key key, Run run) {
        runs.put(key, run);
        show();
    }

    private void show() {
        Project project = edit.project();
        List<Swept> there = numbers();
        if (!there.isEmpty() && !there.contains(number.get())) {
            number.set(there.get(0));
            return;
        }
        Run now = runs.get(new Key(edit.path(), number.get()));
        fraction.set(now == null ? 0 : now.fraction());
        outdated.set(now != null && !counting(now.course().asked()).equals(counting(project)));
        course.set(now == null ? null : now.course());
        state.set(now == null ? State.NONE : now.state());
    }

    /** What the results may depend on. */
    private static List<Object> counting(Project project) {
        return List.of(project.room(), project.paths(), project.stock());
    }

    /** The box it is about, in one line. */
    public String about() {
        var path = edit.project().paths().get(edit.path());
        return path.box() == null
                ? Texts.of("box.none")
                : Texts.of("whatif.about", new SizeWording(edit.project()).box(path.box()));
    }

    /** How it stands, and what came out, in sentences; empty before. */
    public String words() {
        return switch (state.get()) {
            case NONE -> "";
            case COMPUTING -> Texts.of("whatif.computing", String.valueOf(Math.round(100 * fraction.get())));
            case STOPPED -> WhatIfWords.join(Texts.of("whatif.stopped"), found());
            case FAILED -> runs.get(new Key(edit.path(), number.get())).problem();
            case FINISHED -> found();
        };
    }

    private String found() {
        return new WhatIfWords(course.get(), edit.project().units()).found();
    }
}
