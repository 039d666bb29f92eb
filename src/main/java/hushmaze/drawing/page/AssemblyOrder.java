package hushmaze.drawing.page;

import hushmaze.build.joint.SeamEdges;
import hushmaze.project.Seam;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The steps in which a box is put together, and from where each part comes into its place. In this order everything a step
 * puts on finds what holds it there already, and nothing in its way.
 */
final class AssemblyOrder {
    private static final List<Role> ENDS = List.of(Role.NEAR_END, Role.FAR_END);
    private static final List<Role> SIDES = List.of(Role.FIRST_SIDE, Role.LAST_SIDE);

    /** What is done in a step. */
    enum Kind {
        PREPARE,
        JOIN,
        DRY_FIT,
        CARCASS,
        BAFFLES,
        SEAL,
        LAYER,
        CLEATS,
        LINE_BACK,
        LINE_ENDS,
        LINE_SIDES,
        LINE_COVER,
        GASKET,
        COVER,
        CHECK,
        PART,
        MOUTH
    }

    /** From where the parts of a step come. */
    enum Way {
        /** Nothing is put on for good. */
        NONE,
        /** Straight down into the box on its back. */
        ABOVE,
        /** From outside against the face of the layer before. */
        OUTSIDE,
        /** On the bench against the inside of the cover. */
        COVER
    }

    /**
     * A step.
     *
     * @param kind what is done
     * @param parts it deals with, in the order they are put on
     * @param way from where they come
     */
    record Step(Kind kind, List<Part> parts, Way way) {
        Step {
            parts = List.copyOf(parts);
        }

        /** Whether its parts stay where they are put. */
        boolean places() {
            return way != Way.NONE;
        }
    }

    private final Solid solid;
    private final List<Step> steps = new ArrayList<>();

    private AssemblyOrder(Solid solid, boolean cleats) {
        this.solid = solid;
        add(Kind.PREPARE, List.of(), Way.NONE);
        if (solid.box().hasSeam(Seam.Kind.GLUED)) {
            add(Kind.JOIN, joined(), Way.NONE);
        }
        List<Part> carcass = carcass();
        add(Kind.DRY_FIT, carcass, Way.NONE);
        add(Kind.CARCASS, carcass, Way.ABOVE);
        some(Kind.BAFFLES, panels(p -> p.role() == Role.BAFFLE), Way.ABOVE);
        add(Kind.SEAL, List.of(), Way.NONE);
        for (int layer = 1; layer < solid.box().shell().size(); layer++) {
            add(Kind.LAYER, layer(layer), Way.OUTSIDE);
        }
        if (cleats) {
            add(Kind.CLEATS, List.of(), Way.NONE);
        }
        some(Kind.LINE_BACK, liners(l -> l.role() == Role.BACK), Way.ABOVE);
        some(Kind.LINE_ENDS, liners(l -> ENDS.contains(l.role())), Way.ABOVE);
        some(Kind.LINE_SIDES, liners(l -> SIDES.contains(l.role()) || l.role() == Role.BAFFLE), Way.ABOVE);
        some(Kind.LINE_COVER, liners(l -> l.role() == Role.FRONT), Way.COVER);
        add(Kind.GASKET, List.of(), Way.NONE);
        add(Kind.COVER, panels(p -> p.role() == Role.FRONT).toList(), Way.ABOVE);
        add(Kind.CHECK, List.of(), Way.NONE);
        if (solid.box().hasSeam(Seam.Kind.PARTING)) {
            add(Kind.PART, List.of(), Way.NONE);
        }
        add(Kind.MOUTH, List.of(), Way.NONE);
    }

    /**
     * The steps.
     *
     * @param cleats whether timber goes on the outside before the box is lined
     */
    static List<Step> of(Solid solid, boolean cleats) {
        return List.copyOf(new AssemblyOrder(solid, cleats).steps);
    }

    private void add(Kind kind, List<? extends Part> parts, Way way) {
        steps.add(new Step(kind, List.copyOf(parts), way));
    }

    private void some(Kind kind, Stream<? extends Part> which, Way way) {
        List<? extends Part> parts = which.toList();
        if (!parts.isEmpty()) {
            add(kind, parts, way);
        }
    }

    /** Both halves of every board that is glued together. */
    private List<Part> joined() {
        List<Panel> glued = SeamEdges.glued(solid);
        return solid.parts()
                .filter(Panel.class::isInstance)
                .filter(p -> glued.stream().anyMatch(q -> q.equals(p) || SeamEdges.meet(q, (Panel) p)))
                .toList();
    }

    /** The back, the long sides on it, the ends between them. */
    private List<Part> carcass() {
        return inTurn(0, List.of(List.of(Role.BACK), SIDES, ENDS));
    }

    /** The boards that run through are put on last: in the second layer the ends, in the third the broad face. */
    private List<Part> layer(int layer) {
        List<Role> first = layer % 2 == 1 ? SIDES : ENDS;
        List<Role> then = layer % 2 == 1 ? ENDS : SIDES;
        return inTurn(layer, List.of(first, then, List.of(Role.BACK)));
    }

    private List<Part> inTurn(int layer, List<List<Role>> turns) {
        List<Part> parts = new ArrayList<>();
        for (List<Role> roles : turns) {
            panels(p -> p.layer() == layer && roles.contains(p.role())).forEach(parts::add);
        }
        return parts;
    }

    private Stream<Panel> panels(Predicate<Panel> which) {
        return solid.panels().stream().filter(which);
    }

    private Stream<LinerPiece> liners(Predicate<LinerPiece> which) {
        return solid.liners().stream().filter(which);
    }
}
