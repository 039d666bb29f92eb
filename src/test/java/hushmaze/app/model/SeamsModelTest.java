package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.project.Box;
import hushmaze.project.Joinery;
import hushmaze.project.Project;
import hushmaze.project.Seam;
import hushmaze.quantity.UnitSystem;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property tests of joints in the window: switches carry over to the box, seams are added, refused, proposed, undone. */
class SeamsModelTest {
    @TempDir
    Path folder;

    private Designer designer;
    private SeamsModel seams;

    @BeforeEach
    void open() {
        designer = TestDesigner.of(TaskRunner.ON_THIS_THREAD, folder.resolve("unnamed.json"));
        designer.files().newFrom("trio-cellar");
        seams = designer.seams();
        while (!seams.seams().isEmpty()) {
            seams.remove(0);
        }
    }

    private Box box() {
        return designer.edit().project().paths().get(designer.edit().path()).box();
    }

    @Test
    void joinerySwitchedOnIsTheBoxesTooAndOffAgainIsNot() {
        designer.extras().turn(Extra.JOINERY, false);
        assertThat(box().joinery()).isEqualTo(Joinery.PLAIN);
        assertThat(designer.extras().summary(Extra.JOINERY)).isEqualTo("none");
        assertThat(designer.extras().turn(Extra.JOINERY, true)).isEmpty();
        assertThat(box().joinery()).isEqualTo(Joinery.usual());
        assertThat(designer.extras().summary(Extra.JOINERY)).contains("0.5 mm", "3 mm");
        Field groove = Field.of("path.brief.construction.joinery.groove");
        // The wall boards are 18 or 16 mm thick: half of that at most.
        assertThat(designer.edit().enter(groove, "Grooves for baffles", "14").orElseThrow())
                .contains("Grooves for baffles", "14", "at most");
        assertThat(designer.edit().enter(groove, "Grooves for baffles", "6")).isEmpty();
        assertThat(box().joinery().groove()).isEqualTo(0.006);
        designer.edit().undo();
        assertThat(box().joinery()).isEqualTo(Joinery.usual());
    }

    @Test
    void aSeamIsAddedInTheMiddleMovedRefusedAndTakenOut() {
        Project before = designer.edit().project();
        assertThat(seams.add(Seam.Kind.PARTING)).isEmpty();
        double length = hushmaze.solid.SolidBuilder.build(box()).outer().size(hushmaze.solid.Axis.X);
        assertThat(seams.seams()).hasSize(1);
        assertThat(seams.seams().get(0).position()).isBetween(0.3 * length, 0.7 * length);
        Field position = Field.of("path.box.seams.0.position");
        assertThat(designer.edit().enter(position, "From the near end", "52 mm").orElseThrow())
                .contains("From the near end", "52 mm", "by at least 30 mm");
        assertThat(designer.edit().enter(position, "From the near end", "lots").orElseThrow())
                .contains("lots");
        assertThat(seams.remove(0)).isEmpty();
        assertThat(designer.edit().undoableProperty().get()).isEqualTo("a joint removed");
        designer.edit().undo();
        designer.edit().undo();
        assertThat(designer.edit().project()).isEqualTo(before);
    }

    @Test
    void noMoreSeamsThanThereIsPlaceFor() {
        int added = 0;
        while (added < 9 && seams.add(Seam.Kind.GLUED).isEmpty()) {
            added++;
        }
        assertThat(added).isBetween(1, Box.MAX_SEAMS);
        assertThat(seams.add(Seam.Kind.GLUED).orElseThrow()).contains("no place", "250 mm");
        assertThat(seams.seams()).hasSize(added);
    }

    @Test
    void proposedSeamsAreTakenInOneStep() {
        assertThat(seams.mayPropose()).isFalse();
        assertThat(seams.advice()).contains("Nothing asks for a joint");
        Field most = Field.of("path.brief.construction.maxMass");
        double mass = hushmaze.solid.SolidBuilder.build(box()).mass();
        designer.edit().enter(most, "Mass, at most", String.valueOf(0.7 * mass));
        assertThat(seams.mayPropose()).isTrue();
        assertThat(seams.advice()).contains("comes apart", "from the near end");
        assertThat(seams.propose()).isEmpty();
        assertThat(seams.mayPropose()).isFalse();
        assertThat(seams.seams()).isNotEmpty().allMatch(s -> s.kind() == Seam.Kind.PARTING);
        assertThat(designer.edit().undoableProperty().get()).isEqualTo("proposed joints taken");
        designer.edit().undo();
        assertThat(seams.seams()).isEmpty();
        designer.edit().setUnits(UnitSystem.INCH);
        assertThat(seams.advice()).contains(" in from the near end");
    }
}
