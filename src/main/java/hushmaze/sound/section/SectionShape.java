package hushmaze.sound.section;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Panel;
import hushmaze.solid.Solid;
import hushmaze.sound.wave.LinerMedium;
import hushmaze.sound.wave.Medium;
import hushmaze.sound.wave.WaveBlock;
import hushmaze.sound.wave.WaveSpace;
import java.util.ArrayList;
import java.util.List;

/**
 * What a plane across z, half way up the clear height, cuts of a box and of the space its sound is computed in. Only x and y of
 * the blocks count.
 *
 * @param boards pieces of boards
 * @param open air and what stands for it, from the opening's mouth to the room's
 * @param lining pieces of liner
 */
public record SectionShape(List<SectionShape.Board> boards, List<Cuboid> open, List<Cuboid> lining) {
    /**
     * A piece of a board.
     *
     * @param place what it fills
     * @param layer of the board, counted from the inside
     */
    public record Board(Cuboid place, int layer) {}

    public SectionShape {
        boards = List.copyOf(boards);
        open = List.copyOf(open);
        lining = List.copyOf(lining);
    }

    /** @param space of the box, flat or full */
    static SectionShape of(Solid solid, WaveSpace space) {
        double z = height(solid);
        List<Board> boards = new ArrayList<>();
        for (Panel panel : solid.panels()) {
            for (Cuboid piece : Cut.without(panel.bounds(), panel.taken())) {
                if (isCut(piece, z)) {
                    boards.add(new Board(piece, panel.layer()));
                }
            }
        }
        List<Cuboid> open = new ArrayList<>();
        List<Cuboid> lining = new ArrayList<>();
        for (WaveBlock block : space.blocks()) {
            if (space.flat() || isCut(block.place(), z)) {
                (isLining(block.medium()) ? lining : open).add(block.place());
            }
        }
        return new SectionShape(boards, open, lining);
    }

    /** Where the plane is, m. */
    static double height(Solid solid) {
        return solid.passes().get(0).clear().centre(Axis.Z);
    }

    private static boolean isLining(Medium medium) {
        return medium instanceof LinerMedium || medium instanceof FacingMedium;
    }

    private static boolean isCut(Cuboid block, double z) {
        return block.z0() < z && z < block.z1();
    }
}
