package hushmaze.build.split;

import hushmaze.project.Box;
import hushmaze.project.Construction;
import hushmaze.project.Doorway;
import hushmaze.project.Seam;
import hushmaze.project.Stock;
import hushmaze.solid.Axis;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the pieces and parts of a box have to keep.
 *
 * @param stretches parts that are too long for their sheets; none if pieces need not fit on sheets
 * @param longestModule longest part that goes through the door, m; infinite for no limit
 * @param heaviest part that can be carried, kg; infinite for no limit
 */
record SeamLimits(List<Stretch> stretches, double longestModule, double heaviest) {
    static final SeamLimits NONE = new SeamLimits(List.of(), Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    SeamLimits withoutMass() {
        return new SeamLimits(stretches, longestModule, Double.POSITIVE_INFINITY);
    }

    SeamLimits withoutDoor() {
        return new SeamLimits(stretches, Double.POSITIVE_INFINITY, heaviest);
    }

    SeamLimits withoutSheets() {
        return new SeamLimits(List.of(), longestModule, heaviest);
    }

    /**
     * The limits of a box without seams.
     *
     * @param obstacles takes what no seam can help; that limit is left out
     */
    static SeamLimits of(Solid solid, Construction construction, Stock stock, List<Obstacle> obstacles) {
        List<Stretch> stretches = new ArrayList<>();
        Map<String, SheetRoom> boards = new HashMap<>();
        for (Panel panel : solid.panels()) {
            SheetRoom room = boards.computeIfAbsent(panel.board().name(), name -> SheetRoom.ofBoard(stock, name));
            add(solid, panel, room, stretches, obstacles);
        }
        if (!solid.liners().isEmpty()) {
            SheetRoom room = SheetRoom.ofLiner(stock, solid.box().liner().name());
            solid.liners().forEach(piece -> add(solid, piece, room, stretches, obstacles));
        }
        double longest = longestModule(solid, construction.doorway(), obstacles);
        Double heaviest = construction.maxMass();
        return new SeamLimits(stretches, longest, heaviest == null ? Double.POSITIVE_INFINITY : heaviest);
    }

    private static void add(
            Solid solid, Part part, SheetRoom sheets, List<Stretch> stretches, List<Obstacle> obstacles) {
        boolean board = part instanceof Panel;
        boolean grain = part instanceof Panel panel && panel.board().grain();
        Obstacle.Kind kind = board ? Obstacle.Kind.BOARD : Obstacle.Kind.LINER;
        if (part.normal() == Axis.X) {
            if (!sheets.holds(part.uSize(), part.vSize(), grain)) {
                SheetRoom.Excess excess = sheets.excess(part.uSize(), part.vSize(), grain);
                add(obstacles, new Obstacle(kind, part.role(), excess.value(), excess.limit()));
            }
            return;
        }
        double longest = sheets.longest(part.vSize(), grain);
        if (part.uSize() <= longest + 1e-9) {
            return;
        }
        if (longest < Box.MIN_STRETCH) {
            add(obstacles, new Obstacle(kind, part.role(), part.vSize(), sheets.widest(Box.MIN_STRETCH)));
            return;
        }
        double start = solid.outer().x0();
        boolean staggered = board && part.role() != Role.BAFFLE && part.layer() % 2 == 1;
        double gap = board ? solid.box().joinery().gasket() : 0;
        stretches.add(new Stretch(part.bounds().x0() - start, part.bounds().x1() - start, staggered, gap, longest));
    }

    /** One obstacle for each kind and place: that of the largest part. */
    private static void add(List<Obstacle> obstacles, Obstacle found) {
        for (int i = 0; i < obstacles.size(); i++) {
            Obstacle other = obstacles.get(i);
            if (other.kind() == found.kind() && other.role() == found.role()) {
                obstacles.set(i, found.value() > other.value() ? found : other);
                return;
            }
        }
        obstacles.add(found);
    }

    /** How long a part may be to go through a door with the box's width and height; a block goes through any way round. */
    private static double longestModule(Solid solid, Doorway door, List<Obstacle> obstacles) {
        if (door == null) {
            return Double.POSITIVE_INFINITY;
        }
        double y = solid.outer().size(Axis.Y);
        double z = solid.outer().size(Axis.Z);
        double small = Math.min(y, z);
        double large = Math.max(y, z);
        double narrow = door.narrow();
        double wide = door.wide();
        if (small <= narrow && large <= wide) {
            return Double.POSITIVE_INFINITY;
        }
        if (small <= narrow && wide >= Box.MIN_STRETCH) {
            return wide;
        }
        if (small <= wide && narrow >= Box.MIN_STRETCH) {
            return narrow;
        }
        boolean byNarrow = small <= wide && small > narrow;
        obstacles.add(
                new Obstacle(Obstacle.Kind.DOOR, null, small <= narrow ? large : small, byNarrow ? narrow : wide));
        return Double.POSITIVE_INFINITY;
    }

    /** Furthest that the next seam may be so that no piece is too long, m. */
    double reach(Seam.Kind before, double position, Seam.Kind next) {
        double reach = Double.POSITIVE_INFINITY;
        for (Stretch stretch : stretches) {
            reach = Math.min(reach, stretch.reach(before, position, next));
        }
        return reach;
    }

    /** Whether all pieces beyond a seam are short enough. */
    boolean ends(Seam.Kind before, double position) {
        return stretches.stream().allMatch(s -> s.ends(before, position));
    }

    /** Fewest seams that could do for the sheets. */
    int leastForSheets() {
        return stretches.stream()
                .mapToInt(s -> least(s.length() + s.gap(), s.longest() + s.gap()))
                .max()
                .orElse(0);
    }

    /** Fewest seams that come apart that could do. */
    int leastPartings(double length, double mass) {
        return Math.max(least(length, longestModule), least(mass, heaviest));
    }

    private static int least(double whole, double most) {
        return (int) Math.min(100, Math.max(0, Math.ceil(whole / most - 1e-6) - 1));
    }
}
