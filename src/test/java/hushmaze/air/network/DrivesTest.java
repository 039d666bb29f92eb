package hushmaze.air.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Fan;
import hushmaze.quantity.InvalidValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> and <em>property</em> tests of fans and slits as branches, and of enlarging one. */
class DrivesTest {
    private static final double DENSITY = 1.2041;
    private static final double VISCOSITY = 1.8134e-5;

    private static FanCurve fan(double... flowsAndPressures) {
        List<Fan.Point> points = new ArrayList<>();
        for (int i = 0; i < flowsAndPressures.length; i += 2) {
            points.add(new Fan.Point(flowsAndPressures[i] / 1000, flowsAndPressures[i + 1]));
        }
        return new FanCurve(new Fan("made up", points, "made up"));
    }

    private static final FanCurve FALLING = fan(0, 60, 20, 55, 40, 45, 60, 30, 80, 10, 90, 0);

    /**
     * Validation: an independent library's cubic and root finder for the system 20 Pa at 50 L/s: 60.65517 L/s. With 10 Pa
     * against it the same as a system 10 Pa dearer.
     */
    @Test
    void meetsItsPath() {
        FanLaw law = new FanLaw(FALLING, q -> 8000 * q * q);
        assertThat(law.flow(0) * 1000).isCloseTo(60.65516829968322, within(1e-9));
        double against = law.flow(-10);
        assertThat(8000 * against * against + 10).isCloseTo(FALLING.pressure(against), within(1e-9));
        assertThat(law.isOnCurve(against)).isTrue();
    }

    /** Property: more pressure behind it, more flow; beyond the curve and backwards too. */
    @Test
    void riseWithTheDifference() {
        FanLaw law = new FanLaw(FALLING, q -> 3000 * q * q + 40 * q);
        double before = Double.NEGATIVE_INFINITY;
        for (double d = -300; d <= 300; d += 1) {
            double flow = law.flow(d);
            assertThat(flow).isGreaterThan(before);
            before = flow;
        }
        assertThat(law.isOnCurve(law.flow(-200))).isFalse();
        assertThat(law.flow(-200)).isNegative();
        assertThat(law.isOnCurve(law.flow(200))).isFalse();
        // from the summit's pressure a path without any loss would run off the curve
        assertThat(new FanLaw(FALLING, q -> 1e-6 * q).flow(0) * 1000).isBetween(89.9, 99.1);
    }

    /** Property: of two flows the one on the falling part. */
    @Test
    void takesTheSteadyPart() {
        FanCurve humped = fan(0, 40, 20, 60, 60, 0);
        FanLaw law = new FanLaw(humped, q -> 1000 * q);
        assertThat(law.flow(-30)).isGreaterThan(humped.summitFlow());
        assertThat(law.flow(-100)).isNegative();
    }

    /** Property: mass balance to 1e-9 in random rooms with fans, given pressures, slits, cracks and fixed flows. */
    @Test
    void balance() {
        Random random = new Random(11);
        int solved = 0;
        for (int i = 0; i < 300; i++) {
            RoomNetwork network = network(random);
            if (network.solve() instanceof RoomNetwork.Solution solution) {
                solved++;
                assertThat(solution.massResidual()).isLessThan(1e-9);
                double net = network.branches().stream()
                        .mapToDouble(b -> (b.to().equals("room") ? 1 : -1)
                                * solution.flows().get(b.name()))
                        .sum();
                double largest = solution.flows().values().stream()
                        .mapToDouble(Math::abs)
                        .max()
                        .orElseThrow();
                assertThat(Math.abs(net)).isLessThanOrEqualTo(1e-9 * largest);
            }
        }
        assertThat(solved).isEqualTo(300);
    }

    private static RoomNetwork network(Random random) {
        List<RoomNetwork.Branch> branches = new ArrayList<>();
        double steep = Math.pow(10, 2 + 3 * random.nextDouble());
        branches.add(new RoomNetwork.Branch("fan", "around", "room", new FanLaw(FALLING, q -> steep * q * q)));
        branches.add(new RoomNetwork.Branch(
                "slit",
                "room",
                "around",
                new SlitLaw(
                        1 + 4 * random.nextDouble(),
                        0.0005 + 0.005 * random.nextDouble(),
                        0.04,
                        0,
                        DENSITY,
                        VISCOSITY)));
        if (random.nextBoolean()) {
            double other = Math.pow(10, 2 + 3 * random.nextDouble());
            branches.add(new RoomNetwork.Branch("duct", "duct", "room", new ResistanceLaw(q -> other * q * q)));
        }
        if (random.nextBoolean()) {
            branches.add(new RoomNetwork.Branch("crack", "room", "around", CrackLaw.through(0.02, 50, 0.65)));
        }
        if (random.nextBoolean()) {
            branches.add(new RoomNetwork.Branch("fixed", "room", "around", new FixedFlow(0.1 * random.nextDouble())));
        }
        if (random.nextBoolean()) {
            branches.add(new RoomNetwork.Branch("out", "room", "around", new FanLaw(FALLING, q -> 2000 * q * q)));
        }
        return new RoomNetwork(Map.of("around", 0.0, "duct", 60 * random.nextDouble() - 20), List.of("room"), branches);
    }

    /**
     * Validation, by hand: 5 m of 2 mm, 40 mm deep, at 2 Pa: linear term 12 · 1.8134e-5 · 0.04 / (5 · 8e-9) = 217.6 Pa per
     * m³/s, square term 1.2041 · 1.5 / (2 · 1e-4) = 9030.75 Pa per (m³/s)²; Q = (-217.6 + √(217.6² + 4 · 9030.75 · 2)) /
     * (2 · 9030.75) = 0.0070993 m³/s.
     */
    @Test
    void slitByHand() {
        SlitLaw slit = new SlitLaw(5, 0.002, 0.04, 0, DENSITY, VISCOSITY);
        assertThat(slit.flow(2)).isCloseTo(0.0070993, within(5e-7));
        assertThat(slit.flow(-2)).isEqualTo(-slit.flow(2));
        assertThat(slit.flow(0)).isZero();
    }

    /** Property: a wide, shallow slit is near the orifice of the sizing law (1 / √1.5 = 0.816 against 0.607); narrow: laminar. */
    @Test
    void slitLimits() {
        SlitLaw wide = new SlitLaw(1, 0.05, 0.001, 0, DENSITY, VISCOSITY);
        double ratio = wide.flow(3) / new OrificeLaw(0.05, DENSITY).flow(3);
        assertThat(ratio).isCloseTo(1 / Math.sqrt(1.5) / 0.607, within(0.01));
        SlitLaw narrow = new SlitLaw(1, 0.0002, 0.04, 0, DENSITY, VISCOSITY);
        assertThat(narrow.flow(2) / narrow.flow(1)).isCloseTo(2, within(0.01));
    }

    /** Validation: a blower test of 100 m³/h at 50 Pa with 0.65 gives 100 (4/50)^0.65 = 19.37 m³/h at 4 Pa. */
    @Test
    void crackThroughATest() {
        assertThat(CrackLaw.through(100 / 3600.0, 50, 0.65).flow(4) * 3600).isCloseTo(19.37, within(0.01));
    }

    /** Validation, by hand: an orifice must grow as the root of the pressures: 12 Pa to 3 Pa, twice. */
    @ParameterizedTest
    @CsvSource({"12, 2", "27, 3", "3, 1", "1, 1"})
    void enlarged(double pressure, double factor) {
        double flow = new OrificeLaw(0.01, DENSITY).flow(pressure);
        RoomNetwork network = supplied(flow, new OrificeLaw(0.01, DENSITY));
        assertThat(Enlargement.of(network, "room", "hole", 3))
                .isInstanceOfSatisfying(
                        Enlargement.Found.class, f -> assertThat(f.factor()).isCloseTo(factor, within(1e-6)));
    }

    /** What does not help says why. */
    @Test
    void notEnlarged() {
        RoomNetwork tiny = supplied(0.05, new OrificeLaw(1e-4, DENSITY));
        assertThat(Enlargement.of(tiny, "room", "hole", 3))
                .isEqualTo(new Enlargement.None(Enlargement.Reason.NOT_ENOUGH));
        assertThat(Enlargement.of(tiny, "room", "in", 3))
                .isEqualTo(new Enlargement.None(Enlargement.Reason.DOES_NOT_ANSWER));
        assertThatThrownBy(() -> Enlargement.of(tiny, "room", "hole", -3))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("limit");
    }

    private static RoomNetwork supplied(double flow, BranchLaw hole) {
        return new RoomNetwork(
                Map.of("around", 0.0),
                List.of("room"),
                List.of(
                        new RoomNetwork.Branch("in", "around", "room", new FixedFlow(flow)),
                        new RoomNetwork.Branch("hole", "room", "around", hole)));
    }
}
