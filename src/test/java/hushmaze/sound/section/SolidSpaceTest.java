package hushmaze.sound.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import hushmaze.sound.porous.MikiLiner;
import hushmaze.sound.wave.LinerMedium;
import hushmaze.sound.wave.WaveBlock;
import hushmaze.sound.wave.WavePort;
import hushmaze.sound.wave.WaveSpace;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Property: over seeded boxes of every form the spaces hold as much air and liner as the solid they are read from, their
 * ports are on the hull, all of it hangs together, and a box with its ports exchanged gives the same space turned round.
 */
class SolidSpaceTest {
    private static final double C = 343.2;
    private static final MikiLiner LINER = new MikiLiner(20_000);

    static Stream<Box> boxes() {
        RandomBoxes boxes = new RandomBoxes(20260);
        return Stream.generate(boxes::next).limit(150);
    }

    @ParameterizedTest
    @MethodSource("boxes")
    void theFullSpaceHoldsWhatTheSolidHolds(Box box) {
        Solid solid = SolidBuilder.build(box);
        SpaceCells cells = SpaceCells.of(SolidSpace.full(solid, LINER, C));
        double lining = solid.liners().stream().mapToDouble(LinerPiece::volume).sum();
        double baffles = solid.baffles().stream().mapToDouble(Cuboid::volume).sum();
        double inShell = holeInShell(solid, solid.openingPort().hole(), true)
                + holeInShell(solid, solid.roomPort().hole(), true);
        assertThat(cells.volume(SolidSpaceTest::isLiner)).isCloseTo(lining, within(1e-9));
        assertThat(cells.volume(block -> true)).isCloseTo(solid.cavity().volume() - baffles + inShell, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("boxes")
    void theFlatSectionHasTheAreasOfTheSolid(Box box) {
        Solid solid = SolidBuilder.build(box);
        WaveSpace flat = SolidSpace.flat(solid, LINER, C);
        SpaceCells cells = SpaceCells.of(flat);
        double baffles =
                solid.baffles().stream().mapToDouble(SolidSpaceTest::area).sum();
        double inShell = 0;
        double lining = 0;
        // Liner in the plane of the middle, without what the holes take of it; the last two blocks are the holes.
        List<Cuboid> holes = flat
                .blocks()
                .subList(flat.blocks().size() - 2, flat.blocks().size())
                .stream()
                .map(WaveBlock::place)
                .toList();
        for (Cuboid hole : holes) {
            inShell += holeInShell(solid, hole, false);
        }
        double middle = solid.cavity().centre(Axis.Z);
        for (LinerPiece piece : solid.liners()) {
            Cuboid at = piece.bounds();
            if (at.z0() < middle && at.z1() > middle) {
                lining += area(at) - common(at, holes.get(0)) - common(at, holes.get(1));
            }
        }
        assertThat(cells.volume(block -> true)).isCloseTo(area(solid.cavity()) - baffles + inShell, within(1e-9));
        assertThat(cells.volume(SolidSpaceTest::isLiner)).isCloseTo(lining, within(1e-9));
    }

    /** Area in the fold plane that two blocks have in common, m². */
    private static double common(Cuboid a, Cuboid b) {
        double x = Math.min(a.x1(), b.x1()) - Math.max(a.x0(), b.x0());
        double y = Math.min(a.y1(), b.y1()) - Math.max(a.y0(), b.y0());
        return Math.max(0, x) * Math.max(0, y);
    }

    @ParameterizedTest
    @MethodSource("boxes")
    void portsAreOnTheHullAndOpenIntoOnePieceOfSpace(Box box) {
        Solid solid = SolidBuilder.build(box);
        for (WaveSpace space : spaces(solid)) {
            SpaceCells cells = SpaceCells.of(space);
            for (WavePort port : new WavePort[] {space.inlet(), space.outlet()}) {
                assertThat(cells.mouth(port)).isEqualTo(SpaceCells.Mouth.OPEN);
                Cuboid outer = solid.outer();
                assertThat(port.at())
                        .isCloseTo(port.high() ? outer.high(port.normal()) : outer.low(port.normal()), within(1e-9));
            }
            assertThat(cells.connected()).isTrue();
            assertThat(cells.wholeInOnePiece()).isTrue();
            assertThat(space.inlet().area()).isCloseTo(box.openingPort().area(), within(1e-9));
            assertThat(space.outlet().area()).isCloseTo(box.roomPort().area(), within(1e-9));
        }
    }

    /** An even number of passes is mirrored across y, an odd one turned by half a turn about z. */
    @ParameterizedTest
    @MethodSource("boxes")
    void exchangedPortsGiveTheSameSpaceTurnedRound(Box box) {
        Solid solid = SolidBuilder.build(box);
        Solid turned = SolidBuilder.build(SampleBoxes.exchanged(box));
        boolean half = box.passes() % 2 == 1;
        Random random = new Random(7);
        for (int kind = 0; kind < 2; kind++) {
            WaveSpace one = spaces(solid)[kind];
            WaveSpace other = spaces(turned)[kind];
            assertThat(one.inlet().area()).isCloseTo(other.outlet().area(), within(1e-9));
            for (int i = 0; i < 300; i++) {
                Cuboid around = solid.outer();
                double x = around.x0() + random.nextDouble() * around.size(Axis.X);
                double y = around.y0() + random.nextDouble() * around.size(Axis.Y);
                double z = around.z0() + random.nextDouble() * around.size(Axis.Z);
                double there = half ? 2 * around.centre(Axis.X) - x : x;
                assertThat(at(one, x, y, z).map(WaveBlock::medium))
                        .as("%s %s %s", x, y, z)
                        .isEqualTo(at(other, there, 2 * around.centre(Axis.Y) - y, z)
                                .map(WaveBlock::medium));
            }
        }
    }

    private static WaveSpace[] spaces(Solid solid) {
        return new WaveSpace[] {SolidSpace.full(solid, LINER, C), SolidSpace.flat(solid, LINER, C)};
    }

    private static Optional<WaveBlock> at(WaveSpace space, double x, double y, double z) {
        return space.blocks().stream()
                .filter(block -> in(block.place(), Axis.X, x)
                        && in(block.place(), Axis.Y, y)
                        && (space.flat() || in(block.place(), Axis.Z, z)))
                .reduce((earlier, later) -> later);
    }

    private static boolean in(Cuboid block, Axis axis, double value) {
        return block.low(axis) < value && value < block.high(axis);
    }

    private static boolean isLiner(WaveBlock block) {
        return block.medium() instanceof LinerMedium;
    }

    private static double area(Cuboid block) {
        return block.size(Axis.X) * block.size(Axis.Y);
    }

    /** The part of a hole outside the cavity: m³, or m² of a flat one. */
    private static double holeInShell(Solid solid, Cuboid hole, boolean full) {
        double inside = overlap(hole, solid.cavity(), Axis.X) * overlap(hole, solid.cavity(), Axis.Y);
        return full ? hole.volume() - inside * overlap(hole, solid.cavity(), Axis.Z) : area(hole) - inside;
    }

    private static double overlap(Cuboid a, Cuboid b, Axis axis) {
        return Math.max(0, Math.min(a.high(axis), b.high(axis)) - Math.max(a.low(axis), b.low(axis)));
    }
}
