package hushmaze.assess;

import static hushmaze.assess.TestRooms.nc;
import static hushmaze.assess.TestRooms.path;
import static hushmaze.assess.TestRooms.project;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Sheet;
import hushmaze.project.Opening;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Space;
import hushmaze.project.Stock;
import hushmaze.project.Target;
import hushmaze.project.VentPath;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.size.FirstLayout;
import hushmaze.store.AssessmentJson;
import hushmaze.store.SampleProjects;
import hushmaze.wording.Wording;
import hushmaze.work.Progress;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Property: the figures of an assessment hang together (sums redone here from their parts). Validation: carbon dioxide
 * and heat against a published worked table.
 */
class AssessorTest {
    private static Assessment assess(Project project) {
        return Assessor.assess(FirstLayout.complete(project, Progress.NONE), Methods.QUICK, Progress.NONE);
    }

    private static Project twoPaths() {
        return project(
                nc(25),
                Spectrum.flat(BandSet.OCTAVE, 5),
                path("in", Purpose.SUPPLY, 50, null),
                path("out", Purpose.RETURN, 45, null));
    }

    private static final List<Assessment> JUDGED = Stream.concat(
                    SampleProjects.names().stream().map(SampleProjects::read), Stream.of(twoPaths()))
            .map(AssessorTest::assess)
            .toList();

    static Stream<Assessment> assessments() {
        return JUDGED.stream();
    }

    @ParameterizedTest
    @MethodSource("assessments")
    void octaveLevelsAreTheEnergyOfTheirThirds(Assessment assessment) {
        for (PathResult path : assessment.paths()) {
            for (int i = 0; i < 8; i++) {
                double energy = 0;
                for (int k = 0; k < 3; k++) {
                    energy += Math.pow(10, path.thirds().get(3 * i + k).level() / 10);
                }
                BandResult octave = path.octaves().get(i);
                assertThat(octave.level()).isCloseTo(10 * Math.log10(energy), within(1e-6));
                // The moving air adds to what comes through the box.
                assertThat(octave.level()).isGreaterThanOrEqualTo(octave.noise() - octave.low() - 1e-9);
                assertThat(octave.low()).isLessThanOrEqualTo(octave.likely() + 1e-9);
                assertThat(octave.likely()).isLessThanOrEqualTo(octave.high() + 1e-9);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("assessments")
    void theWholeBoxLetsThroughWhatPathAndWallsDo(Assessment assessment) {
        for (PathResult path : assessment.paths()) {
            for (BandResult band : path.thirds()) {
                double weaker = Math.min(band.path(), band.walls());
                assertThat(band.likely()).isBetween(weaker - 3.02, weaker + 1e-9);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("assessments")
    void theWaysToTheMicrophoneAddUpToItsLevel(Assessment assessment) {
        for (PathResult path : assessment.paths()) {
            for (int i = 0; i < 24; i++) {
                double energy = 0;
                for (SoundRoute route : path.sound().routes()) {
                    energy += Math.pow(10, route.level().value(i) / 10);
                }
                assertThat(path.thirds().get(i).level()).isCloseTo(10 * Math.log10(energy), within(1e-6));
            }
        }
    }

    /**
     * A resonance takes 10 dB from the boards in one third octave: with the energy of that band's walls ten times as great the
     * level rises, so the margin falls, and by no more than 10 dB; it is a warning where none is left.
     */
    @ParameterizedTest
    @MethodSource("assessments")
    void whatAResonanceLeavesOfTheMargin(Assessment assessment) {
        for (PathResult path : assessment.paths()) {
            for (Notice notice : path.notices()) {
                boolean decides = notice.kind() == NoticeKind.PANEL_RESONANCE_DECIDES;
                if (decides || notice.kind() == NoticeKind.PANEL_RESONANCE) {
                    assertThat(notice.value())
                            .isBetween(
                                    path.quiet().margin() - 10 - 1e-9,
                                    path.quiet().margin() + 1e-9);
                    assertThat(notice.value() < 0).isEqualTo(decides);
                    assertThat(notice.severity()).isEqualTo(decides ? Severity.WARNING : Severity.NOTE);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("assessments")
    void theRoomHearsAllPathsItselfAndItsEnvelope(Assessment assessment) {
        Spectrum own = assessment.project().room().ownNoise();
        RoomNoise.EnvelopeNoise walls = assessment.room().noise().envelope();
        for (int i = 0; i < 24; i++) {
            double energy = own == null ? 0 : Math.pow(10, own.levelsInThirds().value(i) / 10);
            energy += walls == null ? 0 : Math.pow(10, walls.level().value(i) / 10);
            for (PathResult path : assessment.paths()) {
                energy += Math.pow(10, path.thirds().get(i).level() / 10);
            }
            assertThat(assessment.room().level().value(i)).isCloseTo(10 * Math.log10(energy), within(1e-6));
        }
    }

    @ParameterizedTest
    @MethodSource("assessments")
    void verdictsFollowFromTheirFigures(Assessment assessment) {
        for (PathResult path : assessment.paths()) {
            if (assessment.project().room().target().kind() == Target.Kind.NC) {
                BandResult least = path.octaves().stream()
                        .min(Comparator.comparingDouble(BandResult::margin))
                        .orElseThrow();
                Band governing = path.quiet().governing();
                assertThat(governing).isEqualTo(least.band());
                assertThat(path.quiet().margin()).isCloseTo(least.allowed() - least.level(), within(1e-9));
            }
            assertThat(path.quiet().ok()).isEqualTo(path.quiet().margin() >= 0);
            assertThat(path.air().pressureOk())
                    .isEqualTo(
                            path.pathAir().pressureHigh() <= path.path().brief().maxPressureDrop());
            assertThat(path.buildable().mass()).isCloseTo(path.solid().mass(), within(1e-9));
            boolean stopped = path.notices().stream().anyMatch(n -> n.severity() == Severity.STOP);
            assertThat(stopped).isEqualTo(!path.ok());
        }
    }

    @Test
    void theSameProjectGivesTheSameAssessment() {
        Project project = FirstLayout.complete(twoPaths(), Progress.NONE);
        Wording wording = new Wording(project.units());
        String once = AssessmentJson.of(Assessor.assess(project, Methods.QUICK, Progress.NONE), wording);
        String again = AssessmentJson.of(Assessor.assess(project, Methods.QUICK, Progress.NONE), wording);
        assertThat(again).isEqualTo(once);
    }

    /**
     * Two people of 0.0052 L/s each, 15 L/s, 420 ppm outside: 420 + 1e6 · 0.0104/15 = 1113 ppm (published mass balance).
     * 200 W in 15 L/s: 200/(1.204 · 1006 · 0.015) = 11.0 K (by hand).
     */
    @Test
    void carbonDioxideAndHeatOfTheRoom() {
        RoomResult room = assess(twoPaths()).room();
        assertThat(room.co2Steady() * 1e6).isCloseTo(1113, within(0.5));
        assertThat(room.temperatureRise()).isCloseTo(11.0, within(0.05));
        assertThat(room.pressure()).isNull();
    }

    @Test
    void supplyWithoutAReturnIsCalledOutLoudly() {
        Assessment assessment = assess(project(nc(25), null, path("in", Purpose.SUPPLY, 50, null)));
        assertThat(kinds(assessment.notices(), Severity.STOP)).contains(NoticeKind.NO_WAY_OUT);
        assertThat(assessment.roomOk()).isFalse();
        assertThat(assessment.ok()).isFalse();
    }

    /** Two paths that just keep their halves of the target keep it together; the room's own noise is in their shares. */
    @Test
    void theRoomIsQuietWhenEveryPathKeepsItsShare() {
        Assessment quiet = assess(project(
                nc(25),
                Spectrum.flat(BandSet.OCTAVE, 5),
                path("in", Purpose.SUPPLY, 28, null),
                path("out", Purpose.RETURN, 28, null)));
        assertThat(quiet.paths()).allMatch(p -> p.quiet().ok());
        assertThat(quiet.roomOk()).isTrue();
        Assessment loud = assess(project(
                nc(25),
                Spectrum.flat(BandSet.OCTAVE, 5),
                path("in", Purpose.SUPPLY, 90, null),
                path("out", Purpose.RETURN, 28, null)));
        assertThat(loud.paths().get(0).quiet().ok()).isFalse();
        assertThat(loud.roomOk()).isFalse();
    }

    @Test
    void airFromAGarageIsStopped() {
        VentPath garage = new VentPath(
                "in",
                Purpose.SUPPLY,
                TestRooms.brief(50, null, new Space(0.9, 0.7, 0.35), Opening.Beyond.GARAGE),
                null);
        Assessment assessment = assess(project(nc(25), null, garage, path("out", Purpose.RETURN, 50, null)));
        assertThat(kinds(assessment.paths().get(0).notices(), Severity.STOP)).contains(NoticeKind.AIR_FROM_GARAGE);
        assertThat(assessment.paths().get(0).ok()).isFalse();
    }

    @Test
    void ownNoiseAboveTheTargetIsNotTheBoxsFault() {
        Assessment assessment = assess(project(
                nc(20),
                Spectrum.flat(BandSet.OCTAVE, 30),
                path("in", Purpose.SUPPLY, 50, null),
                path("out", Purpose.RETURN, 50, null)));
        PathResult path = assessment.paths().get(0);
        assertThat(path.quiet().ok()).isFalse();
        assertThat(path.quiet().margin()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(kinds(path.notices(), Severity.STOP)).contains(NoticeKind.OWN_NOISE_ABOVE_TARGET);
    }

    @Test
    void aPathWithoutABoxIsAnErrorThatNamesIt() {
        assertThatThrownBy(() -> Assessor.assess(twoPaths(), Methods.ALL, Progress.NONE))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("paths[0].box");
    }

    @Test
    void tooFewSheetsAndTooSmallSheetsAreToldApart() {
        Project project = FirstLayout.complete(twoPaths(), Progress.NONE);
        Assessment none = Assessor.assess(withBoardSheet(project, 2.44, 1.22, 0), Methods.QUICK, Progress.NONE);
        assertThat(kinds(none.paths().get(0).notices(), Severity.STOP))
                .contains(NoticeKind.NOT_ENOUGH_SHEETS)
                .doesNotContain(NoticeKind.PANEL_LARGER_THAN_SHEET);
        Assessment small = Assessor.assess(withBoardSheet(project, 0.4, 0.3, null), Methods.QUICK, Progress.NONE);
        assertThat(kinds(small.paths().get(0).notices(), Severity.STOP)).contains(NoticeKind.PANEL_LARGER_THAN_SHEET);
        assertThat(small.paths().get(0).buildable().ok()).isFalse();
    }

    private static Project withBoardSheet(Project p, double length, double width, Integer count) {
        Sheet sheet = new Sheet("sheet", length, width, null, count, "invented for a test");
        Stock stock = new Stock(
                List.of(sheet),
                p.stock().linerSheets(),
                p.stock().saw(),
                p.stock().screw());
        return new Project(p.formatVersion(), p.name(), p.titleBlock(), p.units(), p.room(), stock, p.paths());
    }

    private static List<NoticeKind> kinds(List<Notice> notices, Severity severity) {
        return notices.stream()
                .filter(n -> n.severity() == severity)
                .map(Notice::kind)
                .toList();
    }
}
