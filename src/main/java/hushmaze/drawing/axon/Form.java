package hushmaze.drawing.axon;

import hushmaze.solid.Cuboid;
import hushmaze.solid.Part;
import hushmaze.solid.PartCells;
import java.util.List;

/**
 * A body with faces across the axes.
 *
 * @param blocks that fill it, none of which overlap
 * @param edges where two of its faces meet at an angle; lines in which blocks only touch are none
 */
public record Form(List<Cuboid> blocks, List<Edge> edges) {
    public Form {
        blocks = List.copyOf(blocks);
        edges = List.copyOf(edges);
    }

    /** A part in its place with its cut-outs and grooves. */
    public static Form of(Part part) {
        return of(PartCells.of(part));
    }

    /** One whole block. */
    public static Form of(Cuboid block) {
        return of(new PartCells(block, List.of()));
    }

    private static Form of(PartCells cells) {
        return new Form(cells.blocks(), CellEdges.of(cells));
    }

    /** The same elsewhere, m. */
    public Form moved(double dx, double dy, double dz) {
        return new Form(
                blocks.stream()
                        .map(b -> new Cuboid(
                                b.x0() + dx, b.y0() + dy, b.z0() + dz, b.x1() + dx, b.y1() + dy, b.z1() + dz))
                        .toList(),
                edges.stream().map(e -> e.moved(dx, dy, dz)).toList());
    }

    /** Turned upside down, by half a turn about the x axis: y and z change their signs. */
    public Form turnedOver() {
        return new Form(
                blocks.stream()
                        .map(b -> new Cuboid(b.x0(), -b.y1(), -b.z1(), b.x1(), -b.y0(), -b.z0()))
                        .toList(),
                edges.stream().map(Edge::turnedOver).toList());
    }
}
