package hushmaze.air.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.air.network.RoomNetwork.Branch;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> and <em>property</em> tests of rooms with their ways in and out. */
class RoomNetworkTest {
    private static final double CFM = 0.028316846592 / 60;
    private static final double SQUARE_INCH = 0.0254 * 0.0254;

    private static RoomNetwork.Solution solved(RoomNetwork network) {
        RoomNetwork.Outcome outcome = network.solve();
        assertThat(outcome).isInstanceOf(RoomNetwork.Solution.class);
        return (RoomNetwork.Solution) outcome;
    }

    /** Validation: printed net free areas at 3 Pa, one decimal, both ways round; air of 1.2041 kg/m³. */
    @ParameterizedTest
    @CsvSource({
        "50, 27.0",
        "75, 40.5",
        "100, 54.0",
        "125, 67.4",
        "150, 80.9",
        "200, 107.9",
        "250, 134.9",
        "300, 161.9",
        "350, 188.9"
    })
    void transferArea(double cfm, double squareInches) {
        assertThat(OrificeLaw.area(cfm * CFM, 3, 1.2041) / SQUARE_INCH)
                .isCloseTo(squareInches, within(0.05 + 0.001 * squareInches));
        Branch supply = new Branch("supply", "duct", "room", new FixedFlow(cfm * CFM));
        Branch grille = new Branch("grille", "room", "house", new OrificeLaw(squareInches * SQUARE_INCH, 1.2041));
        RoomNetwork network =
                new RoomNetwork(Map.of("duct", 0.0, "house", 0.0), List.of("room"), List.of(supply, grille));
        assertThat(solved(network).pressures().get("room")).isCloseTo(3, within(0.02));
    }

    /** Validation: the printed areas beside a door with 16 in² below it; the same law at 2.5 Pa, computed independently. */
    @ParameterizedTest
    @CsvSource({"50, 11.0, 29.6", "75, 24.5, 44.3", "100, 38.0, 59.1", "200, 91.9, 118.2", "350, 172.9, 206.9"})
    void transferAreaBesideADoor(double cfm, double besideDoor, double atTwoAndAHalf) {
        double through = new OrificeLaw(16 * SQUARE_INCH, 1.2041).flow(3);
        assertThat(OrificeLaw.area(cfm * CFM - through, 3, 1.2041) / SQUARE_INCH)
                .isCloseTo(besideDoor, within(0.05 + 0.001 * cfm));
        assertThat(OrificeLaw.area(cfm * CFM, 2.5, 1.2041) / SQUARE_INCH)
                .isCloseTo(atTwoAndAHalf, within(0.05 + 0.001 * atTwoAndAHalf));
    }

    /** Property: balance of 200 random networks, and flows over the square root of two when every k doubles. */
    @Test
    void randomNetworks() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            int rooms = 1 + random.nextInt(4);
            List<String> free = new ArrayList<>();
            List<Branch> one = new ArrayList<>();
            List<Branch> two = new ArrayList<>();
            for (int r = 0; r < rooms; r++) {
                free.add("r" + r);
                for (int w = 0; w < 3; w++) {
                    String to = w == 0 ? "house" : w == 1 ? "outside" : "r" + random.nextInt(r + 1);
                    double k = Math.pow(10, 2 + 4 * random.nextDouble());
                    String name = r + "-" + w;
                    one.add(new Branch(name, "r" + r, to, new ResistanceLaw(q -> k * q * q)));
                    two.add(new Branch(name, "r" + r, to, new ResistanceLaw(q -> 2 * k * q * q)));
                }
            }
            Map<String, Double> fixed = Map.of("house", 0.0, "outside", -20 + 40 * random.nextDouble());
            RoomNetwork.Solution a = solved(new RoomNetwork(fixed, free, one));
            RoomNetwork.Solution b = solved(new RoomNetwork(fixed, free, two));
            assertThat(a.massResidual()).isLessThanOrEqualTo(1e-9);
            double largest =
                    a.flows().values().stream().mapToDouble(Math::abs).max().orElseThrow();
            a.flows()
                    .forEach((name, q) ->
                            assertThat(b.flows().get(name)).isCloseTo(q / Math.sqrt(2), within(1e-6 * largest)));
        }
    }

    /** Property: two equal ways take half each; a door crack by hand: 0.02 m³/s through C 0.01, n 0.5 is 4 Pa for one. */
    @Test
    void equalWaysAndByHand() {
        Branch fan = new Branch("fan", "house", "room", new FixedFlow(0.02));
        Branch a = new Branch("a", "room", "house", new CrackLaw(0.01, 0.5));
        Branch b = new Branch("b", "room", "house", new CrackLaw(0.01, 0.5));
        Map<String, Double> house = Map.of("house", 0.0);
        RoomNetwork.Solution both = solved(new RoomNetwork(house, List.of("room"), List.of(fan, a, b)));
        assertThat(both.flows().get("a")).isCloseTo(both.flows().get("b"), within(1e-12));
        assertThat(both.pressures().get("room")).isCloseTo(1, within(1e-6));
        RoomNetwork one = new RoomNetwork(house, List.of("room"), List.of(fan, a));
        assertThat(solved(one).pressures().get("room")).isCloseTo(4, within(1e-6));
        assertThat(solved(one.enlarged("a", 2)).pressures().get("room")).isCloseTo(1, within(1e-6));
    }

    @Test
    void sealedRoom() {
        Branch fan = new Branch("fan", "house", "room", new FixedFlow(0.02));
        assertThat(new RoomNetwork(Map.of("house", 0.0), List.of("room"), List.of(fan)).solve())
                .isEqualTo(new RoomNetwork.Unsolved(RoomNetwork.Reason.SEALED, "room"));
    }
}
