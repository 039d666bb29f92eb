package hushmaze.build.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.material.Screw;
import hushmaze.project.Box;
import hushmaze.project.Joinery;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Seam;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Axis;
import hushmaze.solid.Cutout;
import hushmaze.solid.Panel;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Joints found in the solid, the rules for fasteners in MDF, and counts worked by hand. */
class FasteningTest {
    private static final Liner LINER = new Liner("liner 25", 0.025, 48, 20000, 10000, 30000, 0.0009, "test");
    private static final Screw SCREW = new Screw("4 x 40", 0.004, 0.04, 0.0022, "test");

    private static Board mdf(double thickness) {
        return new Board("MDF", thickness, 750, 3.5e9, 0.02, false, "test");
    }

    /** Two passes, clear 140 x 200 x 600, turn gap 150, lined 25 on every face: cavity 650 x 398 x 250. */
    private static Box twoPasses(int layers, double thickness) {
        return new Box(
                Box.Form.MAZE,
                2,
                0.14,
                0.2,
                0.6,
                0.15,
                java.util.Collections.nCopies(layers, mdf(thickness)),
                mdf(thickness),
                1,
                LINER,
                LinedFaces.ALL,
                new Port(PortFace.END, 0.1, 0.15, 0),
                new Port(PortFace.BACK, 0.2, 0.1, 0));
    }

    /**
     * Validation, by hand. One layer of 18: the back takes two sides (686), two ends (398) and the baffle (475); each side two
     * ends (250); the near end the baffle (250); the cover five. Sides over ends and back at the corners: 9 mm from the edge,
     * so brads: 2 x 686 → 8 each (636/100 in 7), 2 x 398 → 5 each (348 in 4), 4 x 250 → 3 each (200 in 2). Screws: baffle 4 + 2,
     * cover 20.
     */
    @Test
    void oneLayerByHand() {
        Solid solid = SolidBuilder.build(twoPasses(1, 0.018));
        List<Fastening.Held> held = Fastening.of(solid).held();
        assertThat(held).hasSize(5 + 4 + 1 + 5);
        assertThat(held.stream().filter(h -> h.joint().cover())).hasSize(5);
        List<FastenerList.Counted> list = FastenerList.of(solid, SCREW, UnitSystem.METRIC, false);
        assertThat(list)
                .containsExactly(
                        counted(Fastener.Kind.SCREW, 0.004, 0.04, FastenerList.Use.COVER, 20),
                        counted(Fastener.Kind.SCREW, 0.004, 0.04, FastenerList.Use.JOINTS, 6),
                        counted(Fastener.Kind.BRAD, 0.0012, 0.05, FastenerList.Use.JOINTS, 2 * 8 + 2 * 5 + 4 * 3));
        assertThat(Fastening.of(solid).coverScrewsNearEdge()).isCloseTo(0.009, within(1e-9));
    }

    /**
     * Validation, by hand. Boards of 25: 12.5 mm from the edge keeps the 12 mm, so every joint long enough is screwed; the
     * screw is twice 25, 50 long. Outside 700 x 448: sides 700 → 560 in 4, 5; ends 398 → 3; uprights 250 → 2.
     */
    @Test
    void thickBoardsAreScrewedEverywhere() {
        Solid solid = SolidBuilder.build(twoPasses(1, 0.025));
        List<FastenerList.Counted> list = FastenerList.of(solid, SCREW, UnitSystem.METRIC, false);
        assertThat(list)
                .containsExactly(
                        counted(Fastener.Kind.SCREW, 0.004, 0.05, FastenerList.Use.COVER, 2 * 5 + 2 * 3 + 4),
                        counted(
                                Fastener.Kind.SCREW,
                                0.004,
                                0.05,
                                FastenerList.Use.JOINTS,
                                2 * 5 + 2 * 3 + 4 + 4 * 2 + 2));
        assertThat(Fastening.of(solid).coverScrewsNearEdge()).isCloseTo(0.0125, within(1e-9));
    }

    /**
     * Validation, by hand. Two layers of 18 and a gasket of 3: the cover is 39 thick, its screws 80 long, in inches 3 1/2. A
     * brad through both layers is at most 18 + 18 - 3 = 33 long: 30, or 1 1/4 in.
     */
    @Test
    void twoLayersAskForLongerScrewsInTheCover() {
        Solid solid = SolidBuilder.build(twoPasses(2, 0.018).joined(Joinery.usual(), List.of()));
        assertThat(FastenerList.of(solid, SCREW, UnitSystem.METRIC, false))
                .anyMatch(c -> c.use() == FastenerList.Use.COVER && c.fastener().length() == 0.08 && c.count() == 20)
                .anyMatch(
                        c -> c.use() == FastenerList.Use.LAYERS && c.fastener().length() == 0.03);
        assertThat(FastenerList.of(solid, SCREW, UnitSystem.INCH, false))
                .anyMatch(c -> c.use() == FastenerList.Use.COVER
                        && Math.abs(c.fastener().length() - 3.5 * 0.0254) < 1e-9)
                .anyMatch(c -> c.use() == FastenerList.Use.LAYERS
                        && Math.abs(c.fastener().length() - 1.25 * 0.0254) < 1e-9);
    }

    /**
     * Validation, by hand. Glued at 300 from the outside, one layer of 18: back and cover 434 wide, 370 between the outer dowels
     * in 2, 3 dowels each; sides 250 high, 186 in 1, 2 each; baffle 250 high, 2: 12 of 8 x 40. As a seam that comes apart:
     * around the outside 434 → 314 in 2, 3, and 286 → 166, 2: 10 plates; gaskets 434 + 434 + 250 + 250 + 250.
     */
    @Test
    void seamsByHand() {
        Solid glued =
                SolidBuilder.build(twoPasses(1, 0.018).joined(Joinery.PLAIN, List.of(new Seam(Seam.Kind.GLUED, 0.3))));
        assertThat(FastenerList.of(glued, SCREW, UnitSystem.METRIC, false))
                .contains(counted(Fastener.Kind.DOWEL, 0.008, 0.04, FastenerList.Use.GLUED_SEAM, 12));
        Joinery gasket = new Joinery(0, 0.003, 0);
        Solid parting =
                SolidBuilder.build(twoPasses(1, 0.018).joined(gasket, List.of(new Seam(Seam.Kind.PARTING, 0.3))));
        assertThat(FastenerList.of(parting, SCREW, UnitSystem.METRIC, false))
                .contains(counted(Fastener.Kind.PLATE, 0.04, 0.1, FastenerList.Use.PARTING_SEAM, 10))
                .noneMatch(c -> c.fastener().kind() == Fastener.Kind.DOWEL);
        // Walls and baffle are lower by the cover's gasket.
        assertThat(SeamEdges.partingGasket(parting)).isCloseTo(2 * 0.434 + 3 * 0.247, within(1e-9));
        assertThat(SeamEdges.partingGasket(glued)).isZero();
    }

    /** Validation, by hand: side liner of 600 x 200 takes 3 x 1 pins (400 in 2 of 200; the middle of 200). */
    @Test
    void pinsOnlyWhenAskedFor() {
        Solid solid = SolidBuilder.build(twoPasses(1, 0.018));
        assertThat(FastenerList.of(solid, SCREW, UnitSystem.METRIC, false))
                .noneMatch(c -> c.fastener().kind() == Fastener.Kind.PIN);
        FastenerList.Counted pins = FastenerList.of(solid, SCREW, UnitSystem.METRIC, true).stream()
                .filter(c -> c.fastener().kind() == Fastener.Kind.PIN)
                .findFirst()
                .orElseThrow();
        // broad 2 x (650 x 208) and 2 x (650 x 190): 3 x 2... by hand 650 → 450 in 2, 3; 208 → 8 in 1, 2; 190 → middle,
        // 1
        // sides 2 x (3 x 1), baffle faces 2 x (450 → 250 in 1, 2) x 1, far end 398 → 198 in 1, 2 x 1, near ends 2 x 1
        assertThat(pins.count()).isEqualTo(2 * 3 * 2 + 2 * 3 + 2 * 3 + 2 * 2 + 2 + 2);
        assertThat(pins.fastener().length()).isEqualTo(0.025);
    }

    /**
     * Property: in any box, holes lie in their board and clear of its cut-outs; but for the cover's they keep 12 mm from the
     * edge; every screw sits over the middle of the edge under it and 70 mm from its ends, if that is 140 mm long; a box is
     * held by joints at every edge of its cavity, but for those a port opens.
     */
    @Test
    void anyBoxKeepsTheRules() {
        RandomBoxes boxes = new RandomBoxes(20261126);
        for (int i = 0; i < 1500; i++) {
            Solid solid = SolidBuilder.build(boxes.next());
            Fastening fastening = Fastening.of(solid);
            for (Panel panel : solid.panels()) {
                for (Hole hole : fastening.holes(panel)) {
                    double edge = Math.min(
                            Math.min(hole.u(), panel.uSize() - hole.u()), Math.min(hole.v(), panel.vSize() - hole.v()));
                    double least = panel.role() == Role.FRONT ? 0.0005 : Fastening.FACE_EDGE - 1e-9;
                    assertThat(edge).as("box %d %s", i, panel.role()).isGreaterThanOrEqualTo(least);
                    assertThat(panel.cutouts().stream().anyMatch(c -> in(c, hole)))
                            .as("box %d %s %s", i, panel.role(), hole)
                            .isFalse();
                }
            }
            for (Fastening.Held held : fastening.held()) {
                Joint joint = held.joint();
                double middle = joint.edge().bounds().centre(joint.across());
                assertThat(joint.middle()).isEqualTo(middle);
                if (held.hold() == Fastening.Hold.SCREWS && joint.length() >= 0.14) {
                    assertThat(held.places())
                            .allMatch(p -> p >= joint.from() + 0.07 - 1e-9 && p <= joint.to() - 0.07 + 1e-9);
                }
            }
            double perimeter = 4
                    * (solid.cavity().size(Axis.X)
                            + solid.cavity().size(Axis.Y)
                            + solid.cavity().size(Axis.Z));
            double joints = fastening.held().stream()
                    .mapToDouble(h -> h.joint().length())
                    .sum();
            // A port as high as its wall has no joints at its sides.
            double ports =
                    around(solid.openingPort().port()) + around(solid.roomPort().port());
            assertThat(joints).isGreaterThan(perimeter - ports - 0.1);
        }
    }

    /**
     * Property: in any box no two fasteners of the innermost layer come nearer than one diameter, from axis to axis. They
     * did: at a corner the brads of two joints crossed in the middle of a board.
     */
    @Test
    void fastenersNeverMeet() {
        RandomBoxes boxes = new RandomBoxes(20261128);
        for (int i = 0; i < 300; i++) {
            Solid solid = SolidBuilder.build(boxes.next());
            for (UnitSystem units : UnitSystem.values()) {
                List<Driven> all = new ArrayList<>();
                for (Fastening.Held held : Fastening.of(solid, SCREW).held()) {
                    Fastener f = FastenerList.holding(held, solid, SCREW, units);
                    held.places().forEach(p -> all.add(Driven.at(held.joint(), p, f, solid)));
                }
                for (int k = 0; k < all.size(); k++) {
                    Driven a = all.get(k);
                    assertThat(all.subList(0, k))
                            .as("box %d %s", i, units)
                            .allMatch(b -> a.distance(b) >= Math.max(a.diameter(), b.diameter()));
                }
            }
        }
    }

    /**
     * Validation, by hand. Boards of 18 take brads of 50, which reach 32 into an edge. The uprights are the shortest joints and
     * keep 25 from their ends; at 25 and 30 from their own, brads through the back would meet those, at 35 there are 3 between, at 40 there are 8, more than the
     * 4 and the 1.2 of a brad.
     */
    @Test
    void bradsOfTwoJointsAtACornerKeepApart() {
        Solid solid = SolidBuilder.build(twoPasses(1, 0.018));
        assertThat(Fastening.of(solid).held())
                .filteredOn(h -> h.hold() == Fastening.Hold.BRADS)
                .allSatisfy(h -> assertThat(h.places().get(0) - h.joint().from())
                        .isCloseTo(
                                h.joint().face().role() == Role.BACK
                                                && h.joint().edge().role() != Role.FIRST_SIDE
                                                && h.joint().edge().role() != Role.LAST_SIDE
                                        ? 0.04
                                        : 0.025,
                                within(1e-9)));
    }

    private static double around(Port port) {
        return 2 * (port.width() + port.height());
    }

    private static boolean in(Cutout c, Hole h) {
        return h.u() > c.u0() && h.u() < c.u1() && h.v() > c.v0() && h.v() < c.v1();
    }

    private static FastenerList.Counted counted(
            Fastener.Kind kind, double diameter, double length, FastenerList.Use use, int count) {
        return new FastenerList.Counted(new Fastener(kind, diameter, length), use, count);
    }
}
