package hushmaze.drawing.page;

import hushmaze.build.CutItem;
import hushmaze.drawing.Labels;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.solid.Axis;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.Role;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What parts are called. */
public final class PartNames {
    private PartNames() {}

    /** Where all parts of an item belong: "back, layer 1; back, layer 2". */
    public static String of(CutItem item, Box box) {
        return of(item.parts(), box);
    }

    /** Where several parts belong. */
    static String of(List<Part> parts, Box box) {
        Map<String, Set<Integer>> plies = new LinkedHashMap<>();
        Map<String, Part> first = new LinkedHashMap<>();
        for (Part part : parts) {
            String place = withoutPly(part, box);
            plies.computeIfAbsent(place, key -> new TreeSet<>()).add(ply(part));
            first.putIfAbsent(place, part);
        }
        return plies.entrySet().stream()
                .map(e -> withPlies(e.getKey(), e.getValue(), first.get(e.getKey()), box))
                .collect(Collectors.joining("; "));
    }

    /** Where a part belongs. */
    public static String of(Part part, Box box) {
        return of(List.of(part), box);
    }

    /** The place with the layers of liner that are meant, if there are several. */
    private static String withPlies(String place, Set<Integer> plies, Part part, Box box) {
        int all = part instanceof LinerPiece ? plies(part.role(), box.linedFaces()) : 1;
        if (all == 1) {
            return place;
        }
        return plies.size() == all
                ? Labels.of("part.bothPlies", place)
                : Labels.of("part.ply", place, String.valueOf(plies.iterator().next() + 1), String.valueOf(all));
    }

    private static int ply(Part part) {
        return part instanceof LinerPiece piece ? piece.ply() : 0;
    }

    private static String withoutPly(Part part, Box box) {
        String name = part instanceof Panel panel ? panel(panel, box) : place((LinerPiece) part, box);
        int stretches = box.seams().size() + 1;
        return stretches == 1 || part.normal() == Axis.X
                ? name
                : Labels.of("part.stretch", name, String.valueOf(part.stretch() + 1), String.valueOf(stretches));
    }

    private static String panel(Panel panel, Box box) {
        if (panel.role() == Role.BAFFLE) {
            String number = String.valueOf(panel.number() + 1);
            return box.baffleLayers() == 1
                    ? Labels.of("part.baffle", number)
                    : Labels.of("part.baffleLayer", number, String.valueOf(panel.layer() + 1));
        }
        String role = role(panel.role());
        return box.shell().size() == 1 ? role : Labels.of("part.shellLayer", role, String.valueOf(panel.layer() + 1));
    }

    private static int plies(Role role, LinedFaces faces) {
        return switch (role) {
            case BACK, FRONT -> faces.broad();
            case FIRST_SIDE, LAST_SIDE -> faces.walls();
            case NEAR_END, FAR_END -> faces.ends();
            case BAFFLE -> faces.baffles();
        };
    }

    private static String place(LinerPiece piece, Box box) {
        String number = String.valueOf(piece.number() + 1);
        return switch (piece.role()) {
            // The low face of a baffle is in the pass of its own number, the high face in the next.
            case BAFFLE -> Labels.of("part.linerBaffle", number, String.valueOf(piece.number() + 1 + piece.layer()));
            case BACK, FRONT ->
                box.passes() == 1
                        ? Labels.of("part.liner", role(piece.role()))
                        : Labels.of("part.linerBroad", role(piece.role()), number);
            case NEAR_END, FAR_END ->
                box.passes() == 1
                        ? Labels.of("part.liner", role(piece.role()))
                        : Labels.of("part.linerEnd", role(piece.role()), number);
            case FIRST_SIDE, LAST_SIDE -> Labels.of("part.liner", role(piece.role()));
        };
    }

    /** The name of a place in the box. */
    static String role(Role role) {
        return Labels.of("role." + role.name().toLowerCase(Locale.ROOT));
    }
}
