package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.DuctRun;
import hushmaze.project.EnvelopeElement;
import hushmaze.project.Outgoing;
import hushmaze.project.Project;
import hushmaze.project.Target;
import hushmaze.quantity.UnitSystem;
import hushmaze.store.Presets;
import hushmaze.store.ProjectFile;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Property tests of switches, kinds, envelope parts, octave values and vent paths, without a window: one edit is one step
 * to undo, and what is refused changes nothing.
 */
class ExtrasModelTest {
    @TempDir
    Path folder;

    private Designer designer;
    private ExtrasModel extras;

    @BeforeEach
    void open() {
        designer = TestDesigner.of(TaskRunner.ON_THIS_THREAD, folder.resolve("unnamed.json"));
        designer.files().newFrom("lesson-cabin");
        extras = designer.extras();
    }

    private Project project() {
        return designer.edit().project();
    }

    private Object value(String field) {
        return Field.of(field).get(project(), designer.edit().path());
    }

    private String undoable() {
        return designer.edit().undoableProperty().get();
    }

    private void turnOnWithWhatItNeeds(Extra extra) {
        if (extra == Extra.TALK_BACK) {
            extras.turn(Extra.SHARED_DUCT, true);
        }
        if (extra == Extra.OUTSIDE_LEVEL) {
            extras.turn(Extra.ENVELOPE, true);
        }
        if (extra == Extra.WALLS) {
            extras.turn(Extra.USE, true);
        }
        if (extra == Extra.UNDERCUT) {
            extras.turn(Extra.DOOR, true);
        }
        extras.turn(extra, false);
        assertThat(extras.turn(extra, true)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Extra.class)
    void aSwitchFillsInValuesThatCanBeJudgedAndSavedAndIsOneStep(Extra extra, @TempDir Path folder) {
        turnOnWithWhatItNeeds(extra);
        Project on = project();
        assertThat(extras.isOn(extra)).isTrue();
        assertThat(designer.results().assessmentProperty().get().project()).isEqualTo(on);
        assertThat(designer.results().stateProperty().get()).isEqualTo(ResultModel.State.CURRENT);
        Path file = folder.resolve("on.json");
        ProjectFile.write(on, file);
        assertThat(ProjectFile.read(file)).isEqualTo(on);

        assertThat(extras.turn(extra, false)).isEmpty();
        assertThat(extras.isOn(extra)).isFalse();
        assertThat(undoable()).isEqualTo(Texts.of("entry." + extra.fieldName()));
        designer.edit().undo();
        assertThat(project()).isEqualTo(on);
        designer.edit().undo();
        assertThat(extras.isOn(extra)).isFalse();
    }

    @Test
    void whatTheProgramFilledInIsMarkedUntilLevelsAreTyped() {
        extras.turn(Extra.FAN, false);
        assertThat(extras.summary(Extra.FAN)).isEqualTo("none");
        extras.turn(Extra.FAN, true);
        assertThat(extras.isAssumed(Extra.FAN)).isTrue();
        assertThat(extras.summary(Extra.FAN)).contains("dB").contains("guessed");
        Octaves power = new Octaves(
                designer.edit(), Field.of("path.brief.fan.power"), Field.of("path.brief.fan.source"), false);
        assertThat(power.enter(2, "Its sound power", "61.5 dB")).isEmpty();
        assertThat(power.shown(2)).isEqualTo("61.5");
        assertThat(extras.isAssumed(Extra.FAN)).isFalse();
        assertThat(extras.summary(Extra.FAN)).doesNotContain("guessed");
        // levels and where they are from change in one step
        designer.edit().undo();
        assertThat(extras.isAssumed(Extra.FAN)).isTrue();
        assertThat(power.shown(2)).isNotEqualTo("61.5");
    }

    @Test
    void aWrongOctaveValueNamesItsBandAndLimit() {
        extras.turn(Extra.FAN, true);
        Project before = project();
        Octaves power = new Octaves(designer.edit(), Field.of("path.brief.fan.power"), null, false);
        assertThat(power.enter(1, "Its sound power", "200"))
                .hasValue("Its sound power, 125 Hz: 200 dB is not accepted; it must be from -30 to 160 dB.");
        assertThat(power.enter(1, "Its sound power", "loud").orElseThrow()).contains("125 Hz", "loud");
        assertThat(power.enter(1, "Its sound power", "").orElseThrow()).contains("125 Hz");
        assertThat(project()).isSameAs(before);
    }

    @Test
    void aWholeRowMayBePastedAndAreasTakeAnyUnit() {
        Octaves levels = new Octaves(designer.edit(), Field.of("path.brief.noise.levels"), null, false);
        assertThat(levels.enter(0, "Its levels", "50 49 48 47 46 45 44 43")).isEmpty();
        assertThat(levels.shown(7)).isEqualTo("43");
        Octaves area = new Octaves(designer.edit(), Field.of("room.absorptionArea"), null, false);
        assertThat(area.enter(3, "Area", "100 ft2")).isEmpty();
        // a square foot is 0.09290304 square metres
        assertThat(project().room().absorptionArea().get(3)).isCloseTo(9.290304, within(1e-9));
        designer.edit().setUnits(UnitSystem.INCH);
        assertThat(area.shown(3)).isEqualTo("100");
        assertThat(area.unit()).isEqualTo("ft²");
    }

    @Test
    void thirdOctavesAreShownAsTheirEnergyInOctaves() {
        String row = "40 40 40 " + "30 ".repeat(21);
        Octaves levels = new Octaves(designer.edit(), Field.of("path.brief.noise.levels"), null, false);
        assertThat(levels.enter(0, "Its levels", row)).isEmpty();
        assertThat(levels.areFiner()).isTrue();
        // three equal levels together are 10 lg 3 = 4.77 dB more than one
        assertThat(Double.parseDouble(levels.shown(0))).isCloseTo(44.77, within(0.005));
        assertThat(levels.enter(1, "Its levels", "33")).isEmpty();
        assertThat(levels.areFiner()).isFalse();
    }

    @Test
    void aTargetOfAnotherKindKeepsItsNumberOrBecomesItsLimits() {
        Field target = Field.of("room.target");
        extras.setTargetKind(target, "Counted as", Target.Kind.DBA);
        designer.edit().enter(Field.of("room.target.number"), "Number", "12");
        assertThat(extras.setTargetKind(target, "Counted as", Target.Kind.NC)).isEmpty();
        assertThat(project().room().target().kind()).isEqualTo(Target.Kind.NC);
        // NC curves begin at 15
        assertThat(project().room().target().number()).isEqualTo(15.0);
        assertThat(extras.setTargetKind(target, "Counted as", Target.Kind.SPECTRUM))
                .isEmpty();
        // NC 15: 47 dB at 63 Hz and 11 dB at 8 kHz, from the published table of the curves
        assertThat(project().room().target().spectrum().value(0)).isEqualTo(47);
        assertThat(project().room().target().spectrum().value(7)).isEqualTo(11);
        designer.edit().undo();
        assertThat(project().room().target().kind()).isEqualTo(Target.Kind.NC);
    }

    @Test
    void aRoundDuctHasNeitherHeightNorLiningAndASquareOneGetsAHeight() {
        extras.turn(Extra.SHARED_DUCT, true);
        String run = "path.brief.sharedDuct.run.";
        designer.edit().enter(Field.of(run + "linerThickness"), "Lining", "25 mm");
        assertThat(extras.setDuctKind("Kind", DuctRun.Kind.ROUND_SHEET)).isEmpty();
        assertThat(value(run + "linerThickness")).isNull();
        designer.edit().set(Field.of(run + "height"), "Height", null);
        assertThat(extras.setDuctKind("Kind", DuctRun.Kind.STIFF_WALLS)).isEmpty();
        assertThat(value(run + "height")).isEqualTo(value(run + "width"));
        NumbersText shares = new NumbersText(designer.edit(), Field.of(run + "branchShares"));
        assertThat(shares.enter("Shares", "0.5 0,25")).isEmpty();
        assertThat(value(run + "branchShares")).isEqualTo(List.of(0.5, 0.25));
        assertThat(shares.shown()).isEqualTo("0.5  0.25");
        assertThat(shares.enter("Shares", "2").orElseThrow()).contains("Shares", "from 0.001 to 1");
        assertThat(shares.enter("Shares", " ")).isEmpty();
        assertThat(value(run + "branchShares")).isEqualTo(List.of());
    }

    @Test
    void aListenerMovedIndoorsGetsARoom() {
        extras.turn(Extra.OUTGOING, true);
        extras.setReceiver("Heard", Outgoing.Receiver.OUTDOORS);
        designer.edit().set(Field.of("path.brief.outgoing.absorptionArea"), "Area", null);
        assertThat(extras.setReceiver("Heard", Outgoing.Receiver.ROOM)).isEmpty();
        assertThat((List<?>) value("path.brief.outgoing.absorptionArea")).hasSize(8);
    }

    @Test
    void partsOfTheEnvelopeAreAddedChangedAndTakenOut() {
        extras.turn(Extra.ENVELOPE, true);
        EnvelopeElement gap = Presets.load().element("Door, 10 mm undercut");
        assertThat(extras.addElement(gap)).isEmpty();
        assertThat(undoable()).isEqualTo(gap.name() + " added");
        Field width = Field.of("room.envelope.elements.1.gapWidth");
        assertThat(designer.edit().enter(width, "Open width", "1/4 in")).isEmpty();
        assertThat(extras.elements().get(1).gapWidth()).isCloseTo(0.00635, within(1e-12));
        assertThat(designer.edit().enter(width, "Open width", "200 mm").orElseThrow())
                .isEqualTo("Open width: 200 mm is not accepted; it must be from 0.001 to 100 mm.");
        Project before = project();
        assertThat(extras.removeElement(0).orElseThrow()).contains("at least one surface");
        assertThat(project()).isSameAs(before);
        assertThat(extras.removeElement(1)).isEmpty();
        assertThat(extras.elements()).hasSize(1);
        assertThat(extras.summary(Extra.ENVELOPE)).startsWith("1 part, 10 m²");
        assertThat(width.get(project(), 0)).isNull();
    }

    @Test
    void thinGapsAreNotRoundedAwayInEitherSystem() {
        extras.turn(Extra.ENVELOPE, true);
        extras.addElement(Presets.load().element("Door edges, seal pressed on, 0.1 mm left"));
        Field width = Field.of("room.envelope.elements.1.gapWidth");
        assertThat(designer.edit().shown(width)).isEqualTo("0.1 mm");
        designer.edit().setUnits(UnitSystem.INCH);
        // 0.1 mm / 25.4 mm
        assertThat(designer.edit().shown(width)).isEqualTo("0.003937 in");
        designer.edit().setUnits(UnitSystem.METRIC);
        designer.edit().enter(width, "Open width", "0.04 mm");
        assertThat(designer.edit().shown(width)).isEqualTo("0.04 mm");
    }

    @Test
    void pathsAreAddedAndRemovedButOneStays() {
        int count = project().paths().size();
        Project before = project();
        designer.paths().add();
        assertThat(project().paths()).hasSize(count + 1);
        assertThat(designer.edit().path()).isEqualTo(count);
        assertThat(project().paths().get(count).name()).isEqualTo("New path");
        assertThat(project().paths().get(count).box()).isNotNull();
        designer.paths().add();
        assertThat(project().paths().get(count + 1).name()).isEqualTo("New path 2");
        designer.edit().undo();
        designer.edit().undo();
        assertThat(project()).isEqualTo(before);
        while (designer.paths().mayRemove()) {
            designer.paths().remove();
        }
        assertThat(project().paths()).hasSize(1);
        designer.paths().remove();
        assertThat(project().paths()).hasSize(1);
        for (int i = 0; i < Project.MAX_PATHS + 2; i++) {
            designer.paths().add();
        }
        assertThat(project().paths()).hasSize(Project.MAX_PATHS);
    }

    @Test
    void theDateOfTheTitleBlockIsADate() {
        Field date = Field.of("titleBlock.date");
        assertThat(designer.edit().enter(date, "Date", "2027-02-28")).isEmpty();
        assertThat(designer.edit().shown(date)).isEqualTo("2027-02-28");
        assertThat(designer.edit().enter(date, "Date", "2027-02-30").orElseThrow())
                .contains("Date", "2027-02-30", "year-month-day");
    }
}
