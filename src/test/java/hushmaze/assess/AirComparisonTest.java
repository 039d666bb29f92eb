package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.AirComparison.Kind;
import hushmaze.assess.AirComparison.Line;
import hushmaze.assess.AirComparison.Verdict;
import hushmaze.project.PathReadings;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.RoomReadings;
import hushmaze.size.FirstLayout;
import hushmaze.store.TestProjects;
import hushmaze.work.Progress;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Validation: carbon dioxide worked by hand from the mass balance of a well-mixed room, C = Co + (G / Q)(1 - exp(-Q t / V)).
 * Property: how readings stand to predictions.
 */
class AirComparisonTest {
    /** 30 m³, two people of 0.0052 L/s, 420 ppm outside, 15 L/s. */
    private static Assessment booth;

    private static Assessment cellar;

    @BeforeAll
    static void assess() {
        Project asked = TestRooms.project(TestRooms.nc(25), null, TestRooms.path("way", Purpose.SUPPLY, 40, null));
        booth = Assessor.assess(FirstLayout.complete(asked, Progress.NONE), Methods.ESTIMATE, Progress.NONE);
        cellar = Assessor.assess(
                FirstLayout.complete(TestProjects.read("trio-cellar"), Progress.NONE), Methods.ESTIMATE, Progress.NONE);
    }

    private static List<Line> lines(Assessment assessment, Double flow, RoomReadings room) {
        PathReadings readings = new PathReadings(List.of(), flow, null);
        return AirComparison.of(assessment, assessment.paths().get(0), readings, room)
                .lines();
    }

    private static RoomReadings co2(double ppm, int minutes, int people, Double start) {
        return new RoomReadings(null, ppm * 1e-6, minutes, people, start, null);
    }

    @Test
    void carbonDioxideAfterAnHourIsThatOfTheMassBalance() {
        // G/Q = 2 x 0.0052/15 = 693.33 ppm; Q t/V = 1.8; 1 - exp(-1.8) = 0.834701; a fifth either way
        Line line = lines(booth, null, co2(1000, 60, 2, null)).get(0);
        assertThat(line.kind()).isEqualTo(Kind.CO2);
        assertThat(line.least()).isCloseTo(420e-6 + 0.8 * 578.73e-6, within(1e-8));
        assertThat(line.most()).isCloseTo(420e-6 + 1.2 * 578.73e-6, within(1e-8));
        assertThat(line.verdict()).isEqualTo(Verdict.AS_PREDICTED);
        assertThat(line.beyondLimit()).isFalse();
    }

    @Test
    void aReadingTellsTheAirTheRoomGets() {
        Line line = lines(booth, null, co2(1300, 60, 2, null)).get(1);
        assertThat(line.kind()).isEqualTo(Kind.AIR_BY_CO2);
        double flow = line.measured();
        assertThat(420 + 1e6 * 2 * 0.0052e-3 / flow * (1 - Math.exp(-flow * 3600 / 30)))
                .isCloseTo(1300, within(0.01));
        assertThat(line.least()).isEqualTo(0.015);
        assertThat(flow).isLessThan(0.015);
        // with nothing but outdoor air a reading below 420 ppm cannot be
        assertThat(lines(booth, null, co2(410, 60, 2, null))).hasSize(1);
        // no air gives 420 + 2 x 0.0052e-3 x 3600/30 = 1668 ppm, so 2500 ppm cannot be explained by air
        assertThat(lines(booth, null, co2(2500, 60, 2, null))).hasSize(1);
    }

    @Test
    void muchMoreCarbonDioxideIsMoreAndBeyondTheLimit() {
        Line line = lines(booth, null, co2(1600, 60, 2, null)).get(0);
        assertThat(line.verdict()).isEqualTo(Verdict.MORE);
        assertThat(line.beyondLimit()).isTrue();
        // who starts from stale air ends in staler air: 1.2 x 578.73 + 420 + 1000 exp(-1.8) = 1279.8 ppm
        Line stale = lines(booth, null, co2(1000, 60, 2, 1420e-6)).get(0);
        assertThat(stale.most()).isCloseTo(1279.8e-6, within(1e-7));
        assertThat(stale.verdict()).isEqualTo(Verdict.AS_PREDICTED);
    }

    @Test
    void flowIsHeldAgainstWhatThePathCarries() {
        assertThat(lines(booth, 0.015, RoomReadings.NONE).get(0).verdict()).isEqualTo(Verdict.AS_PREDICTED);
        // 15 % of 12.9 L/s reach to 14.8, of 13.1 L/s to 15.07
        assertThat(lines(booth, 0.0129, RoomReadings.NONE).get(0).verdict()).isEqualTo(Verdict.LESS);
        assertThat(lines(booth, 0.0131, RoomReadings.NONE).get(0).verdict()).isEqualTo(Verdict.AS_PREDICTED);
        assertThat(lines(booth, 0.018, RoomReadings.NONE).get(0).verdict()).isEqualTo(Verdict.MORE);
        PathFlow carried = cellar.paths().get(0).carried();
        Line line = lines(cellar, 0.03, RoomReadings.NONE).get(0);
        assertThat(line.least()).isEqualTo(Math.min(carried.least(), carried.most()));
        assertThat(line.most()).isEqualTo(Math.max(carried.least(), carried.most()));
    }

    @Test
    void pressureAcrossTheDoorHasItsLimitWhateverWasPredicted() {
        RoomReadings four = new RoomReadings(4.0, null, null, null, null, null);
        assertThat(lines(booth, null, four).get(0).verdict()).isEqualTo(Verdict.NOT_PREDICTED);
        assertThat(lines(booth, null, four).get(0).beyondLimit()).isTrue();
        double likely = cellar.room().air().likely();
        RoomReadings same = new RoomReadings(likely, null, null, null, null, null);
        assertThat(lines(cellar, null, same).get(0).verdict()).isEqualTo(Verdict.AS_PREDICTED);
        RoomReadings far = new RoomReadings(likely + 30, null, null, null, null, null);
        assertThat(lines(cellar, null, far).get(0).verdict()).isEqualTo(Verdict.MORE);
        RoomReadings below = new RoomReadings(-likely - 30, null, null, null, null, null);
        assertThat(lines(cellar, null, below).get(0).verdict()).isEqualTo(Verdict.LESS);
    }

    @Test
    void nothingMeasuredGivesNoLine() {
        assertThat(lines(booth, null, RoomReadings.NONE)).isEmpty();
    }
}
