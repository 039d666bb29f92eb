package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.Methods;
import hushmaze.document.FontMeasure;
import hushmaze.material.Fan;
import hushmaze.project.Drive;
import hushmaze.project.Fitting;
import hushmaze.project.Project;
import hushmaze.project.RoomUse;
import hushmaze.project.Session;
import hushmaze.quantity.UnitSystem;
import hushmaze.store.Presets;
import hushmaze.store.ProjectFile;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Property tests of the entries about air, without a window and without judging the project: one edit is one step to undo,
 * and what is refused changes nothing.
 */
class AirModelTest {
    private static final String DRIVE = "path.brief.drive.";

    private static final Presets PRESETS = Presets.load();
    private static final FontMeasure MEASURE = new FontMeasure();

    @TempDir
    Path folder;

    private Designer designer;
    private EditModel edit;
    private ExtrasModel extras;
    private AirModel air;

    @BeforeEach
    void open() {
        designer = new Designer(
                Runners.all(new HeldRunner()),
                PRESETS,
                MEASURE,
                folder.resolve("unnamed.json"),
                List.of(Methods.ESTIMATE));
        designer.files().newFrom("lesson-cabin");
        edit = designer.edit();
        edit.edit("plain", PlainAir::of);
        extras = designer.extras();
        air = designer.air();
    }

    private Project project() {
        return edit.project();
    }

    private Drive drive() {
        return project().paths().get(edit.path()).brief().drive();
    }

    private RoomUse use() {
        return project().room().use();
    }

    private String refused(String field, String text) {
        Project before = project();
        String problem = edit.enter(Field.of(field), "Entry", text).orElseThrow();
        assertThat(project()).isSameAs(before);
        return problem;
    }

    private void takes(String field, String text) {
        assertThat(edit.enter(Field.of(field), "Entry", text)).isEmpty();
    }

    private void staysTheSameSavedAndRead() {
        Path file = folder.resolve("saved.json");
        ProjectFile.write(project(), file);
        assertThat(ProjectFile.read(file)).isEqualTo(project());
    }

    @Test
    void sayingWhatMovesTheAirBeginsAsItIsTakenToBe() {
        assertThat(drive()).isNull();
        // there is a fan whose noise counts
        assertThat(air.driveSummary()).isEqualTo("Flow as asked for, as usual");
        extras.turn(Extra.FAN, false);
        assertThat(air.driveSummary()).isEqualTo("Pressure in the room, as usual");
        extras.turn(Extra.DRIVE, true);
        assertThat(drive().kind()).isEqualTo(Drive.Kind.NOTHING);
        assertThat(extras.isAssumed(Extra.DRIVE)).isTrue();
        assertThat(air.driveSummary()).isEqualTo("guessed: Pressure in the room");
        edit.undo();
        assertThat(drive()).isNull();
    }

    @ParameterizedTest
    @EnumSource(Drive.Kind.class)
    void anotherDriveIsOneEditWithWhatItNeeds(Drive.Kind kind) {
        extras.turn(Extra.DRIVE, true);
        Drive before = drive();
        assertThat(air.setDriveKind("It is moved by", kind)).isEmpty();
        assertThat(drive().kind()).isEqualTo(kind);
        staysTheSameSavedAndRead();
        if (kind != before.kind()) {
            assertThat(edit.undoableProperty().get()).isEqualTo("It is moved by");
            edit.undo();
            assertThat(drive()).isEqualTo(before);
        }
    }

    @Test
    void aPressureIsAGuessUntilItIsTyped() {
        extras.turn(Extra.DRIVE, true);
        air.setDriveKind("Kind", Drive.Kind.GIVEN_PRESSURE);
        assertThat(drive().pressure()).isEqualTo(20.0);
        assertThat(drive().source()).startsWith("Assumed");
        assertThat(air.driveSummary()).isEqualTo("guessed: 20 Pa at the far end");
        Field pressure = Field.of(DRIVE + "pressure");
        Field source = Field.of(DRIVE + "source");
        assertThat(edit.enter(pressure, source, "Pressure there", "35")).isEmpty();
        assertThat(drive().source()).isEqualTo("Entered by hand.");
        assertThat(air.driveSummary()).contains("35 Pa").doesNotContain("guessed");
        assertThat(edit.enter(pressure, source, "Pressure there", "6000").orElseThrow())
                .isEqualTo("Pressure there: 6000 Pa is not accepted; it must be from 0.1 to 5000 Pa.");
        assertThat(edit.enter(pressure, source, "Pressure there", " ").orElseThrow())
                .contains("Pressure there", "must be given");
        // what was typed is there again after another kind
        air.setDriveKind("Kind", Drive.Kind.NOTHING);
        air.setDriveKind("Kind", Drive.Kind.GIVEN_PRESSURE);
        assertThat(drive().pressure()).isEqualTo(35.0);
        assertThat(extras.isAssumed(Extra.DRIVE)).isFalse();
        for (int i = 0; i < 3; i++) {
            edit.undo();
        }
        assertThat(drive().source()).startsWith("Assumed");
        assertThat(drive().pressure()).isEqualTo(20.0);
    }

    private PointsText fan() {
        extras.turn(Extra.DRIVE, true);
        air.setDriveKind("Kind", Drive.Kind.FAN_CURVE);
        return new PointsText(edit, Field.of(DRIVE + "fan.points"), Field.of(DRIVE + "fan.source"));
    }

    @Test
    void aFanIsACopyOfAPresetAndAGuessUntilItsPointsAreTyped() {
        PointsText points = fan();
        Fan preset = PRESETS.fans().get(0);
        assertThat(drive().fan()).isEqualTo(preset);
        assertThat(points.shown()).isEqualTo("0 45; 5 41; 10 35; 15 26; 20 15; 26 0");
        assertThat(air.driveSummary()).isEqualTo("guessed: " + preset.name());
        assertThat(points.enter("Points", "0 60; 20 55;\n40 45 ; 22 cfm 0")).isPresent();
        assertThat(points.enter("Points", "0 60; 20 L/s 55;\n40 45 Pa ; 72 m3/h 0"))
                .isPresent();
        assertThat(points.enter("Points", "0 60; 20 L/s 55;\n40 45 Pa ; 180 m3/h 0;"))
                .isEmpty();
        assertThat(drive().fan().points())
                .containsExactly(
                        new Fan.Point(0, 60), new Fan.Point(0.02, 55), new Fan.Point(0.04, 45), new Fan.Point(0.05, 0));
        assertThat(drive().fan().source()).isEqualTo("Points entered by hand.");
        assertThat(air.driveSummary()).doesNotContain("guessed");
        staysTheSameSavedAndRead();
        edit.undo();
        assertThat(drive().fan()).isEqualTo(preset);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0 60; 20 55; 15 45 | 15 L/s in point 3 | more than the 20 L/s
            0 60; 20 55; 30 58 | 58 Pa in point 3 | at most the 55 Pa
            0 60; 20 60 | 60 Pa in the last point | below the summit of the curve
            0 60; 20 | "20" in point 2 | a flow and a pressure, such as 20 55
            0 60; 20 loud | "20 loud" in point 2 | a flow and a pressure
            0 60; 20 5 mm | "5 mm" (a length) in point 2 | a pressure
            0 60; -3 50 | -3 L/s in point 2 | from 0 to 1000000 L/s
            0 60 | 1 points | 2 to 100 points
            """)
    void wrongPointsAreRefusedWithPointValueAndLimit(String text, String given, String limit) {
        PointsText points = fan();
        Project before = project();
        assertThat(points.enter("Points", text).orElseThrow())
                .startsWith("Points: " + given)
                .contains(limit);
        assertThat(project()).isSameAs(before);
    }

    @Test
    void pointsInInchesKeepTheDigitsOfThoseThatStay() {
        PointsText points = fan();
        List<Fan.Point> before = drive().fan().points();
        edit.setUnits(UnitSystem.INCH);
        // 5 L/s is 10.59 cfm and 41 Pa is 0.1646 inches of water
        assertThat(points.shown()).startsWith("0 0.1807; 10.59 0.1646; ");
        assertThat(points.flowUnit()).isEqualTo("cfm");
        assertThat(points.pressureUnit()).isEqualTo("inH2O");
        assertThat(points.enter("Points", points.shown().replace("0 0.1807", "0 0.2")))
                .isEmpty();
        // 0.2 times 249.08891 Pa
        assertThat(drive().fan().points().get(0).pressure()).isCloseTo(49.817782, within(1e-9));
        assertThat(drive().fan().points().subList(1, before.size())).isEqualTo(before.subList(1, before.size()));
    }

    @ParameterizedTest
    @EnumSource(Fitting.Kind.class)
    void everyFittingBeginsWithUsualValuesThatSayTheyAreAssumed(Fitting.Kind kind) {
        Project before = project();
        assertThat(air.fittingsSummary()).isEqualTo("none");
        assertThat(air.addFitting(kind)).isEmpty();
        assertThat(air.fittings()).hasSize(1);
        assertThat(air.fittings().get(0).source()).startsWith("Assumed by the program, no source: ");
        assertThat(air.fittingsSummary()).isEqualTo("guessed: " + Texts.word(kind));
        staysTheSameSavedAndRead();
        takes("path.brief.fittings.0.source", "Data sheet");
        assertThat(air.fittingsSummary()).isEqualTo(Texts.word(kind));
        assertThat(air.removeFitting(0)).isEmpty();
        assertThat(edit.undoableProperty().get()).isEqualTo(Texts.word(kind) + " removed");
        assertThat(project()).isEqualTo(before);
    }

    @Test
    void facesAreAsLargeAsTheOpeningAndLossesHoldAtThePathsFlow() {
        air.addFitting(Fitting.Kind.GRILLE);
        air.addFitting(Fitting.Kind.FILTER);
        var opening = project().paths().get(0).brief().opening();
        assertThat(air.fittings().get(0).width()).isEqualTo(opening.width());
        assertThat(air.fittings().get(0).height()).isEqualTo(opening.height());
        assertThat(air.fittings().get(1).flow()).isEqualTo(0.028);
        assertThat(refused("path.brief.fittings.0.freeArea", "1.2")).contains("1.2", "from 0.05 to 1");
        assertThat(refused("path.brief.fittings.0.width", "")).contains("must be given");
        takes("path.brief.fittings.1.pressure", "0.1 inH2O");
        assertThat(air.fittings().get(1).pressure()).isCloseTo(24.908891, within(1e-9));
    }

    @Test
    void thereIsOneDuctAtEachEnd() {
        air.addFitting(Fitting.Kind.FLEXIBLE_DUCT);
        assertThat(air.addFitting(Fitting.Kind.ROUND_COLLAR)).isEmpty();
        assertThat(air.fittings().get(0).end()).isEqualTo(Fitting.End.AT_OPENING);
        assertThat(air.fittings().get(1).end()).isEqualTo(Fitting.End.IN_ROOM);
        Project before = project();
        assertThat(air.addFitting(Fitting.Kind.FLEXIBLE_DUCT).orElseThrow()).contains("both ends", "only one");
        assertThat(air.setEnd(1, "End", Fitting.End.AT_OPENING).orElseThrow()).contains("only one at each end");
        assertThat(project()).isSameAs(before);
        assertThat(air.setEnd(1, "End", Fitting.End.IN_ROOM)).isEmpty();
        air.addFitting(Fitting.Kind.GRILLE);
        assertThat(air.setEnd(2, "End", Fitting.End.IN_ROOM)).isEmpty();
        assertThat(air.fittings().get(2).end()).isEqualTo(Fitting.End.IN_ROOM);
    }

    @Test
    void aNinthFittingIsRefused() {
        for (int i = 0; i < 8; i++) {
            assertThat(air.addFitting(Fitting.Kind.GRILLE)).isEmpty();
        }
        assertThat(air.addFitting(Fitting.Kind.FILTER).orElseThrow()).contains("9 fittings", "at most 8");
    }

    @Test
    void figuresThatFollowFromTheUseMayBeBlankOnlyWhileItIsGiven() {
        assertThat(refused("path.brief.flow", "")).startsWith("Airflow may be left blank only while");
        assertThat(refused("room.co2PerPerson", "")).startsWith("Carbon dioxide per person may be left blank only");
        assertThat(refused("room.heatGain", "")).startsWith("Heat may be left blank only while");
        extras.turn(Extra.USE, true);
        takes("path.brief.flow", "");
        takes("room.co2PerPerson", "");
        takes("room.heatGain", "");
        assertThat(edit.shown(Field.of("path.brief.flow"))).isEmpty();
        staysTheSameSavedAndRead();
    }

    /** 3 people at 70 W, 40 W of lights and 100 W of machines are 350 W; the air may warm from 20 to 26 °C. */
    @Test
    void whatWasBlankIsWrittenDownWhenTheUseIsTakenAway() {
        extras.turn(Extra.USE, true);
        takes("path.brief.flow", "");
        takes("room.co2PerPerson", "");
        takes("room.heatGain", "");
        Project before = project();
        assertThat(extras.turn(Extra.USE, false)).isEmpty();
        assertThat(use()).isNull();
        assertThat(project().room().heatGain()).isEqualTo(350);
        // 0.00276 · 1.8 m² · 1.2 met · 0.83 / (0.23 · 0.83 + 0.77) L/s
        assertThat(project().room().co2PerPerson()).isCloseTo(5.15e-6, within(0.06e-6));
        // 350 W / (1.158 kg/m³ · 1006 J/(kg·K) · 6 K), the density being that of 97.77 kPa at 300 m and of 21 °C, dry;
        // more than the rule and the carbon dioxide ask for
        assertThat(project().paths().get(0).brief().flow()).isCloseTo(0.0501, within(0.0005));
        assertThat(project().paths().get(1).brief().flow()).isEqualTo(0.028);
        edit.undo();
        assertThat(project()).isEqualTo(before);
    }

    @Test
    void whatOthersBringIsNotAskedOfAPathAgain() {
        extras.turn(Extra.USE, true);
        designer.paths().add();
        assertThat(edit.path()).isEqualTo(2);
        takes("path.brief.flow", "");
        extras.turn(Extra.USE, false);
        // 320 W as given ask for 45.8 L/s, worked as above, and 28 come through the first path
        assertThat(project().paths().get(2).brief().flow()).isCloseTo(0.0178, within(0.0005));
    }

    @Test
    void theUseStaysWhileAFlowDoesNotFollowFromIt() {
        extras.turn(Extra.USE, true);
        takes("path.brief.flow", "60");
        designer.paths().add();
        takes("path.brief.flow", "");
        Project before = project();
        assertThat(extras.turn(Extra.USE, false).orElseThrow())
                .startsWith("Airflow: nothing is not accepted")
                .contains("the other paths bring 60.0 L/s");
        assertThat(project()).isSameAs(before);
        air.addFitting(Fitting.Kind.FILTER);
        assertThat(air.fittings().get(0).flow()).isEqualTo(0.02);
    }

    @Test
    void aPathOfOpenFlowCanBeAddedTo() {
        extras.turn(Extra.USE, true);
        takes("path.brief.flow", "");
        designer.paths().add();
        assertThat(project().paths().get(2).brief().flow()).isNull();
    }

    @Test
    void whatGoesOnIsChangedAndRefusedByName() {
        extras.turn(Extra.USE, true);
        assertThat(extras.summary(Extra.USE)).isEqualTo("guessed: Sitting, working; 10 m²");
        assertThat(refused("room.use.supplyTemperature", "26")).startsWith("Room may warm up to: 26 °C");
        assertThat(refused("room.use.co2Limit", "300")).contains("Entry: 300 ppm", "of the air supplied");
        takes("room.use.startCo2", "900");
        takes("room.use.startCo2", "");
        assertThat(use().startCo2()).isNull();
        assertThat(extras.turn(Extra.WALLS, true)).isEmpty();
        takes("room.use.walls.conductance", "45");
        assertThat(use().walls().conductance()).isEqualTo(45);
        assertThat(extras.turn(Extra.WALLS, false)).isEmpty();
        assertThat(use().walls()).isNull();
        takes("room.use.source", "As agreed");
        assertThat(extras.summary(Extra.USE)).doesNotContain("guessed");
    }

    @Test
    void timesAreAddedChangedAndTakenOut() {
        extras.turn(Extra.USE, true);
        assertThat(air.timetable()).isEmpty();
        assertThat(air.addSession()).isEmpty();
        assertThat(air.addSession()).isEmpty();
        assertThat(air.timetable()).containsExactly(new Session(60, 3, true), new Session(60, 3, true));
        takes("room.use.timetable.1.minutes", "15");
        assertThat(edit.set(Field.of("room.use.timetable.1.airOn"), "Air on", false))
                .isEmpty();
        assertThat(refused("room.use.timetable.1.minutes", "0")).contains("Entry: 0 ", "from 1 to 10000");
        assertThat(refused("room.use.timetable.1.people", "1.5")).contains("a whole number");
        assertThat(air.removeSession(0)).isEmpty();
        assertThat(air.timetable()).containsExactly(new Session(15, 3, false));
        assertThat(extras.summary(Extra.USE)).endsWith("; timetable: 1");
        edit.undo();
        assertThat(air.timetable()).hasSize(2);
        for (int i = air.timetable().size(); i < RoomUse.MAX_SESSIONS; i++) {
            assertThat(air.addSession()).isEmpty();
        }
        assertThat(air.addSession().orElseThrow()).contains("Timetable", "at most 50");
    }

    @Test
    void doorAndLeaksAreSaidTogether() {
        extras.turn(Extra.DOOR, false);
        assertThat(air.leaksSummary()).isEqualTo("none");
        extras.turn(Extra.DOOR, true);
        assertThat(air.leaksSummary()).isEqualTo("guessed: door 5.6 m by 1 mm");
        assertThat(extras.turn(Extra.UNDERCUT, true)).isEmpty();
        assertThat(refused("room.door.undercutHeight", "")).contains("must be given");
        takes("room.door.undercutHeight", "1/2 in");
        assertThat(project().room().door().undercutArea()).isCloseTo(0.8 * 0.0127, within(1e-12));
        takes("room.door.depth", "40");
        assertThat(extras.turn(Extra.UNDERCUT, false)).isEmpty();
        assertThat(project().room().door().undercutArea()).isZero();
        assertThat(project().room().door().depth()).isEqualTo(0.04);
        takes("room.door.source", "Measured");
        extras.turn(Extra.LEAKAGE, true);
        // three times 24 m³ an hour
        assertThat(project().room().leakage().flow()).isEqualTo(0.020);
        assertThat(air.leaksSummary()).isEqualTo("guessed: door 5.6 m by 1 mm; rest 20 L/s");
        assertThat(refused("room.leakage.exponent", "0.4")).contains("from 0.5 to 1");
        assertThat(refused("room.outsidePressure", "60 Pa")).contains("from -50 to 50 Pa");
        takes("room.outsidePressure", "4");
        assertThat(project().room().outsidePressure()).isEqualTo(4.0);
        takes("room.outsidePressure", "");
        assertThat(project().room().outsidePressure()).isNull();
        extras.turn(Extra.DOOR, false);
        assertThat(air.leaksSummary()).isEqualTo("guessed: rest 20 L/s");
        extras.turn(Extra.LEAKAGE, false);
        assertThat(air.leaksSummary()).isEqualTo("none");
    }
}
