package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.SizingModel.State;
import hushmaze.assess.TestRooms;
import hushmaze.project.Choices;
import hushmaze.project.Opening;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Space;
import hushmaze.project.VentPath;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.Design;
import hushmaze.size.Kind;
import hushmaze.size.Sizing;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Property tests of the search without a window: designs come in while it goes on, stopping keeps them, only a change of what was searched
 * within outdates them, taking one is one step, where none is good it says what would help.
 */
class SizingModelTest {
    @TempDir
    Path folder;

    private final InterruptedRunner searches = new InterruptedRunner();
    private Designer designer;
    private SizingModel model;

    @BeforeEach
    void begin() {
        begin(20);
    }

    private void begin(double level) {
        designer =
                TestDesigner.of(new HeldRunner(), searches, new PreparedFinds(level), folder.resolve("unnamed.json"));
        model = designer.sizing();
        put(PreparedFinds.project(level, 0.6));
    }

    private void put(Project project) {
        designer.edit().edit("another", p -> project);
    }

    @Test
    void aSearchShowsWhatItFindsAndOneIsTaken() {
        List<Double> fractions = new ArrayList<>();
        List<Integer> counts = new ArrayList<>();
        model.fractionProperty().addListener((p, before, now) -> fractions.add(now.doubleValue()));
        searches.meanwhile = () -> counts.add(model.designsProperty().get().size());
        assertThat(model.stateProperty().get()).isEqualTo(State.NONE);
        model.start();
        assertThat(model.stateProperty().get()).isEqualTo(State.FINISHED);
        assertThat(fractions).hasSizeGreaterThan(8).isSorted().endsWith(1.0);
        assertThat(counts).contains(0, 1, 2);
        Design best = model.selectedProperty().get();
        assertThat(best.kinds()).contains(Kind.RECOMMENDED);
        assertThat(model.ways()).isEmpty();
        assertThat(model.head()).isEqualTo("in: the target is met.");
        assertThat(model.cost(best)).endsWith("m² of sheets");

        assertThat(model.isUsed(best)).isFalse();
        model.use(best);
        assertThat(designer.edit().project().paths().get(0).box()).isEqualTo(best.box());
        assertThat(model.isUsed(best)).isTrue();
        assertThat(model.outdatedProperty().get()).isFalse();
        assertThat(designer.messageProperty().get().problem()).isFalse();
        assertThat(designer.messageProperty().get().text()).startsWith("The box in \"in\" is now");
        designer.edit().undo();
        assertThat(designer.edit().project().paths().get(0).box()).isNull();
        assertThat(model.designsProperty().get()).contains(best);

        designer.edit().setUnits(UnitSystem.INCH);
        assertThat(model.outdatedProperty().get()).isFalse();
        assertThat(model.limits()).contains(" in; ", "cfm");
        Field depth = Field.of("path.brief.space.depth");
        assertThat(designer.edit().enter(depth, "Depth", "240 mm")).isEmpty();
        assertThat(model.outdatedProperty().get()).isTrue();
        model.use(best);
        assertThat(designer.messageProperty().get().problem()).isTrue();
        assertThat(designer.edit().undoableProperty().get()).isEqualTo("a found box taken");
        designer.edit().undo();
        designer.edit().undo();
        assertThat(model.outdatedProperty().get()).isFalse();
        designer.edit().enter(Field.of("room.people"), "People", "3");
        assertThat(model.outdatedProperty().get()).isTrue();
    }

    @Test
    void stoppingKeepsWhatWasFound() {
        searches.meanwhile = () -> {
            if (!model.designsProperty().get().isEmpty()) {
                model.cancel();
            }
        };
        model.start();
        assertThat(model.stateProperty().get()).isEqualTo(State.STOPPED);
        assertThat(model.designsProperty().get()).isNotEmpty();
        assertThat(model.outcomeProperty().get()).isNull();
        assertThat(model.fractionProperty().get()).isBetween(0.2, 0.99);
    }

    @Test
    void anotherProjectStopsIt() {
        searches.meanwhile = () -> {
            if (model.fractionProperty().get() > 0) {
                searches.meanwhile = () -> {};
                designer.files().newFrom("lesson-cabin");
            }
        };
        model.start();
        assertThat(model.stateProperty().get()).isEqualTo(State.NONE);
        assertThat(model.designsProperty().get()).isEmpty();
    }

    @Test
    void aPathKeepsWhatWasFoundForIt() {
        searches.meanwhile = () -> {
            if (model.fractionProperty().get() > 0) {
                model.cancel();
            }
        };
        designer.paths().add();
        designer.edit().pathProperty().set(0);
        model.start();
        assertThat(model.stateProperty().get()).isEqualTo(State.STOPPED);
        designer.edit().pathProperty().set(1);
        assertThat(model.stateProperty().get()).isEqualTo(State.NONE);
        designer.edit().pathProperty().set(0);
        assertThat(model.stateProperty().get()).isEqualTo(State.STOPPED);
    }

    @Test
    void whereNoneIsQuietTheNearestIsShownAndWhatWouldHelp() {
        begin(62);
        model.start();
        assertThat(model.designsProperty().get()).hasSize(2).noneMatch(Design::good);
        assertThat(model.head()).startsWith("in: NO box is quiet enough");
        assertThat(model.ways())
                .hasSize(3)
                .anyMatch(way -> way.startsWith("- Noise "))
                .anyMatch(way -> way.contains("400 mm deep"));
    }

    /** The search itself, to its end: nothing fits, so that no wave solution is needed. */
    @Test
    void whereNoneFitsItSaysWhatWouldHelp() {
        designer = TestDesigner.of(new HeldRunner(), searches, Sizing::ofPath, folder.resolve("shallow.json"));
        model = designer.sizing();
        put(TestRooms.project(
                TestRooms.nc(20),
                null,
                new VentPath(
                        "in",
                        Purpose.SUPPLY,
                        TestRooms.brief(40, null, new Space(0.6, 0.34, 0.07), Opening.Beyond.INDOORS)
                                .choosing(new Choices(
                                        null, null, 1, null, List.of(PortFace.BACK), List.of(PortFace.FRONT))),
                        null)));
        model.start();
        assertThat(model.stateProperty().get()).isEqualTo(State.FINISHED);
        assertThat(model.designsProperty().get()).isEmpty();
        assertThat(model.selectedProperty().get()).isNull();
        assertThat(model.head()).isEqualTo("in: no box keeps every limit.");
        assertThat(model.ways()).hasSizeGreaterThan(1);
        assertThat(model.ways().get(0)).isEqualTo("What would help, each alone:");
    }

    @Test
    void whatCannotBeSearchedIsToldWithItsReason() {
        TaskRunner failing = new TaskRunner() {
            @Override
            public <T> void run(Function<Progress, T> work, Consumer<T> done, Consumer<Exception> failed) {
                failed.accept(new IllegalStateException("out of paper"));
            }
        };
        designer = TestDesigner.of(new HeldRunner(), failing, Sizing::ofPath, folder.resolve("other.json"));
        designer.sizing().start();
        assertThat(designer.sizing().stateProperty().get()).isEqualTo(State.FAILED);
        assertThat(designer.sizing().problemProperty().get()).contains("out of paper");
    }
}
