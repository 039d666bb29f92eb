package hushmaze.solid;

import hushmaze.project.Box;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A box as a thing in space. The origin is the low corner of the cavity between the bare boards; the shell lies outside
 * it. Made by {@link SolidBuilder}.
 *
 * @param box what it was made from
 * @param cavity space between the inner faces of the innermost boards
 * @param outer block the finished box fills
 * @param panels all boards, shell then baffles
 * @param liners all liner pieces
 * @param seals what lies between boards: gaskets and play
 * @param baffles block of every baffle in the cavity, all its layers, board to board, as the air meets it
 * @param passes from the opening to the room
 * @param turns from the opening to the room, one fewer than passes
 * @param openingPort the port over the opening, in the first pass
 * @param roomPort the port in the room, in the last pass
 */
public record Solid(
        Box box,
        Cuboid cavity,
        Cuboid outer,
        List<Panel> panels,
        List<LinerPiece> liners,
        List<Seal> seals,
        List<Cuboid> baffles,
        List<Pass> passes,
        List<Turn> turns,
        PortPlace openingPort,
        PortPlace roomPort) {
    public Solid {
        panels = List.copyOf(panels);
        liners = List.copyOf(liners);
        seals = List.copyOf(seals);
        baffles = List.copyOf(baffles);
        passes = List.copyOf(passes);
        turns = List.copyOf(turns);
    }

    /** Panels and liner pieces together. */
    public Stream<Part> parts() {
        return Stream.concat(panels.stream(), liners.stream());
    }

    /** The parts the box is carried in: one, and one more for every seam that comes apart. */
    public List<Module> modules() {
        return Module.of(this);
    }

    /** The heaviest of its modules. */
    public Module heaviestModule() {
        return modules().stream().max(Comparator.comparingDouble(Module::mass)).orElseThrow();
    }

    /** Mass of everything, kg. Screws, glue and sealant are not counted. */
    public double mass() {
        return parts().mapToDouble(Part::mass).sum();
    }
}
