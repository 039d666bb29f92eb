package hushmaze.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.BandResult;
import hushmaze.assess.ComparedBand;
import hushmaze.assess.MeasuredNeed;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.document.FontMeasure;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Page;
import hushmaze.drawing.Paper;
import hushmaze.drawing.SampleAssessment;
import hushmaze.drawing.SampleReadings;
import hushmaze.drawing.Shape;
import hushmaze.project.Box;
import hushmaze.project.JointGap;
import hushmaze.project.PathReadings;
import hushmaze.project.Project;
import hushmaze.project.Reading;
import hushmaze.project.Reading.Round;
import hushmaze.project.Reading.Scale;
import hushmaze.project.RoomReadings;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.FirstLayout;
import hushmaze.store.SampleProjects;
import hushmaze.work.Progress;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Property: the report says what the readings come to, whatever they are; without readings there is none. All are invented. */
class ReportPagesTest {
    private static final FontMeasure MEASURE = new FontMeasure();
    private static final double FLOOR = 20;

    private static PathReadings levels(BandSet set, Scale scale, IntToDoubleFunction reduction) {
        return SampleReadings.of(set, scale, SampleReadings.OPEN, reduction, FLOOR);
    }

    private static Assessment measured(PathReadings readings) {
        return SampleAssessment.measured(UnitSystem.METRIC, readings, RoomReadings.NONE);
    }

    private static List<Page> pages(Assessment assessment, int path, Paper paper) {
        return new PathDrawing(
                        assessment,
                        assessment.paths().get(path),
                        paper,
                        assessment.project().units(),
                        MEASURE)
                .draw()
                .pages();
    }

    private static List<Page> report(Assessment assessment) {
        return pages(assessment, 0, Paper.A4).stream()
                .filter(page -> page.title().startsWith(Labels.of("report.title")))
                .toList();
    }

    private static List<Shape.Text> texts(List<Page> pages) {
        return pages.stream()
                .flatMap(page -> page.shapes().stream())
                .flatMap(s -> s instanceof Shape.Text text ? Stream.of(text) : Stream.empty())
                .toList();
    }

    /** All words in one line, as they follow each other. */
    private static String words(List<Page> pages) {
        return texts(pages).stream()
                .map(Shape.Text::text)
                .collect(Collectors.joining(" "))
                .replace('\u00a0', ' ');
    }

    @Test
    void withoutReadingsThereIsNone() {
        assertThat(report(SampleAssessment.twoPaths(UnitSystem.METRIC))).isEmpty();
        Assessment other = measured(levels(BandSet.OCTAVE, Scale.CALIBRATED, i -> 20));
        assertThat(pages(other, 1, Paper.A4)).noneMatch(page -> page.title().startsWith(Labels.of("report.title")));
    }

    @Test
    void itFollowsTheMeasuringSheet() {
        List<String> titles = pages(measured(levels(BandSet.OCTAVE, Scale.CALIBRATED, i -> 20)), 0, Paper.A4).stream()
                .map(Page::title)
                .toList();
        assertThat(titles.indexOf(Labels.of("report.title")))
                .isEqualTo(titles.lastIndexOf(Labels.of("measuring.title")) + 1);
    }

    @Test
    void whatWasPredictedIsSaid() {
        Assessment assessment =
                measured(levels(BandSet.THIRD_OCTAVE, Scale.CALIBRATED, SampleReadings.likely(BandSet.THIRD_OCTAVE)));
        String words = words(report(assessment));
        assertThat(words)
                .contains("is below the predicted range: the box does what was predicted.")
                .contains("Of 24 bands 24 are within the predicted range, 0 below and 0 above it.")
                .contains("Keep the readings with the project.")
                .contains("the levels are as good as the stated calibration")
                .contains(SampleReadings.INVENTED + ", a meter of class 1")
                .contains("Not read: with the air on.")
                .doesNotContain("Not read: with the source off");
    }

    /** The sample's sound figures are made up, so it takes a box whose figures are its own. */
    @Test
    void whatExplainsTheReadingsIsSaidWithItsCaution() {
        Project project = FirstLayout.complete(SampleProjects.read("trio-cellar"), Progress.NONE);
        PathResult path = Assessor.assess(project, Methods.ESTIMATE, Progress.NONE)
                .paths()
                .get(0);
        PathReadings readings = levels(
                BandSet.THIRD_OCTAVE,
                Scale.CALIBRATED,
                i -> path.thirds().get(i).likely());
        Project measured = project.withPath(0, path.path().measured(readings));
        assertThat(words(report(Assessor.assess(measured, Methods.ESTIMATE, Progress.NONE))))
                .contains("The joint of the cover leaks no more than a gap of")
                .contains("This is a fit, not a proof");
        PathReadings few = readings.withLevels(readings.levels().stream()
                .map(r -> new Reading(r.name(), r.round(), r.scale(), five(r.levels()), r.source()))
                .toList());
        Project little = project.withPath(0, path.path().measured(few));
        assertThat(words(report(Assessor.assess(little, Methods.ESTIMATE, Progress.NONE))))
                .contains("Fewer than six bands can be held against the prediction")
                .doesNotContain("This is a fit");
    }

    private static BandLevels five(BandLevels levels) {
        boolean[] covered = new boolean[levels.bands().size()];
        Arrays.fill(covered, 8, 13, true);
        double[] values = new double[covered.length];
        Arrays.setAll(values, levels::level);
        return new BandLevels(levels.bands(), values, covered);
    }

    @Test
    void everyBandHasItsFiguresInOneLine() {
        for (BandSet set : BandSet.values()) {
            List<Page> report = report(measured(levels(set, Scale.CALIBRATED, i -> 17.3)));
            assertThat(report.get(0).shapes()).isNotEmpty();
            List<Shape.Text> first = texts(report.subList(0, 1));
            for (int i = 0; i < set.size(); i++) {
                String label = set.bands().get(i).label();
                // all of them on the page of the chart; 110 dB without the box, 17.3 dB less with it, 72.7 dB over 20
                assertThat(first.stream().filter(t -> t.text().equals(label)))
                        .as(label)
                        .anySatisfy(t -> assertThat(first)
                                .filteredOn(o -> Math.abs(o.y() - t.y()) < 1e-6 && o.x() > t.x())
                                .extracting(Shape.Text::text)
                                .contains("110.0", "92.7", "72.7", "17.3"));
            }
        }
    }

    @Test
    void whatIsShortOfTheNeedIsCounted() {
        Assessment assessment = measured(levels(BandSet.OCTAVE, Scale.CALIBRATED, i -> 0));
        int missed = 0;
        double most = 0;
        for (BandResult band : assessment.paths().get(0).octaves()) {
            double shortBy = band.noise() - band.allowed();
            // the uncertainty of two readings at one place, as Reduction states it
            double off = band.band().centreHz() < 90 ? 5 : band.band().centreHz() < 220 ? 3 : 2;
            missed += shortBy > off ? 1 : 0;
            most = Math.max(most, shortBy);
        }
        assertThat(missed).isPositive();
        assertThat(words(report(assessment)))
                .contains("short of what the target asks of this path in " + missed + " of 8 bands")
                .contains(String.format(Locale.ROOT, "by %.1f dB", most).replace(".0 dB", " dB"));
    }

    @Test
    void whatIsEnoughIsSaidOfTheReductionAndOfALoudSource() {
        String words = words(report(measured(levels(BandSet.OCTAVE, Scale.CALIBRATED, i -> 60))));
        assertThat(words)
                .contains("is as much as the target asks of this path in all 8 bands")
                .contains("But the source was louder than the project’s noise")
                .contains("are above the predicted range");
    }

    @Test
    void recordingsWithoutCalibrationSayNothingOfLevels() {
        PathReadings readings = SampleReadings.of(BandSet.OCTAVE, Scale.FULL_SCALE, -20, i -> 20, -90);
        assertThat(words(report(measured(readings))))
                .contains("The recordings have no calibration")
                .doesNotContain("the level read")
                .doesNotContain("noise of the project");
    }

    @Test
    void whatBackgroundHidesIsMarked() {
        // 50 dB less with the box would be 10 dB below the background
        PathReadings readings = SampleReadings.of(BandSet.OCTAVE, Scale.AS_GIVEN, 70, i -> i < 4 ? 10 : 50, 30);
        String words = words(report(measured(readings)));
        assertThat(words)
                .contains("at least; background hides the rest")
                // the reading with the box less 3 dB: 70 less 17, background taken off the 70
                .contains("≥ 53.0");
        assertThat(words(report(measured(levels(BandSet.OCTAVE, Scale.AS_GIVEN, i -> 10)))))
                .doesNotContain("at least; background hides the rest");
    }

    @ParameterizedTest
    @EnumSource(
            value = Round.class,
            names = {"WITHOUT_BOX", "WITH_BOX"})
    void aLoneRoundSaysWhatIsMissing(Round lone) {
        PathReadings both = levels(BandSet.THIRD_OCTAVE, Scale.CALIBRATED, i -> 20);
        PathReadings one = both.withLevels(both.levels().stream()
                .filter(reading -> reading.round() == lone)
                .toList());
        String there = lone == Round.WITH_BOX ? "with the box" : "without the box";
        String missing = lone == Round.WITH_BOX ? "without the box" : "with the box";
        assertThat(words(report(measured(one))))
                .contains("Nothing can be held against the prediction yet. Read so far: " + there + ". Still missing: "
                        + missing + ".")
                .contains(SampleReadings.INVENTED)
                .contains("The levels as read")
                .doesNotContain("predicted, low to high")
                .doesNotContain("What the readings point to");
    }

    @Test
    void airAloneIsAReportToo() {
        Assessment assessment = SampleAssessment.measured(UnitSystem.METRIC, PathReadings.NONE, SampleReadings.BAD_AIR);
        for (int path = 0; path < 2; path++) {
            List<Page> report = pages(assessment, path, Paper.A4).stream()
                    .filter(page -> page.title().startsWith(Labels.of("report.title")))
                    .toList();
            assertThat(words(report))
                    .contains("4.5 Pa ± 0.5 Pa", "1900 ppm", "and beyond what is good")
                    .contains("More than 3 Pa across the door", "Above 1500 ppm people tire")
                    .contains("read 30 minutes after people came in, 1 of them")
                    .contains("No levels were read.");
        }
    }

    @Test
    void inInchesAirIsToo() {
        PathReadings readings = new PathReadings(List.of(), 0.019, SampleReadings.INVENTED + ", an anemometer");
        Assessment assessment = SampleAssessment.measured(UnitSystem.INCH, readings, SampleReadings.BAD_AIR);
        // 19 L/s = 40.3 cfm; 4.5 Pa = 0.0181 inH2O
        assertThat(words(report(assessment)))
                .contains("40 cfm", "0.018 inH2O", SampleReadings.INVENTED + ", an anemometer");
    }

    @Test
    void aMeasuredGapIsSaidWhereverJointsAreSupposed() {
        Box plain = SampleAssessment.fourPasses();
        JointGap gap = new JointGap(0.00003, 0.00007, 0.0004, SampleReadings.INVENTED + ", last spring");
        Box known = plain.joined(plain.joinery().gapping(gap), plain.seams());
        PathReadings readings = levels(BandSet.OCTAVE, Scale.CALIBRATED, SampleReadings.likely(BandSet.OCTAVE));
        Assessment assessment = SampleAssessment.measured(UnitSystem.METRIC, known, readings, RoomReadings.NONE);
        String all = words(pages(assessment, 0, Paper.A4));
        assertThat(all)
                .contains(
                        "The prediction rests on a gap of the cover’s joint that was measured before: 0.07 mm (between"
                                + " 0.03 mm and 0.4 mm). Source: " + SampleReadings.INVENTED + ", last spring")
                .contains("takes the widest that the readings allow, 0.4 mm")
                .contains("in place of the 0.4 mm that readings of this box allow at most")
                .contains("The joint of the cover has the widest gap that readings of this box allow.")
                .contains("How tight the glued joints are");
        String without = words(pages(SampleAssessment.twoPaths(UnitSystem.METRIC), 0, Paper.A4));
        assertThat(without)
                .contains("open by 0.1 mm all along and that of the cover by 0.2 mm, the likely figure by 0.01 mm and"
                        + " 0.02 mm")
                .contains("in place of the 0.2 mm that the worst case allows")
                .contains("How tight the joints will be");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void aLargeSetOfReadingsIsWhole(Paper paper) {
        for (BandSet set : BandSet.values()) {
            Assessment assessment = SampleReadings.everything(UnitSystem.METRIC, set);
            List<Page> report = pages(assessment, 0, paper).stream()
                    .filter(page -> page.title().startsWith(Labels.of("report.title")))
                    .toList();
            String words = words(report);
            for (Round round : Round.values()) {
                assertThat(words).contains(Labels.of("report.levels." + round));
            }
            assertThat(words)
                    .contains("With the fan on it is louder")
                    .contains("Place 3, 3 m from the mouth")
                    .contains("Not read: 2.");
        }
    }

    @ParameterizedTest
    @EnumSource(ComparedBand.Verdict.class)
    void everyVerdictHasAShortWord(ComparedBand.Verdict verdict) {
        assertThat(Labels.of("report.verdict." + verdict)).hasSizeLessThan(12);
    }

    @ParameterizedTest
    @EnumSource(MeasuredNeed.Standing.class)
    void everyStandingHasAWord(MeasuredNeed.Standing standing) {
        assertThat(Labels.of("report.standing." + standing)).isNotBlank();
    }
}
