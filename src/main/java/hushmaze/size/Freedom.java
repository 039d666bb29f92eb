package hushmaze.size;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Brief;
import hushmaze.project.Choices;
import hushmaze.project.Construction;
import hushmaze.project.LinedFaces;
import hushmaze.project.PortFace;
import java.util.ArrayList;
import java.util.List;

/**
 * What one search chooses among.
 *
 * @param builds to make a box of
 * @param linerLayers most layers of liner on a face
 * @param openingFaces that may lie over the opening
 * @param roomFaces that may have the port in the room
 * @param linings whether boxes may be lined otherwise than the builds are
 */
record Freedom(
        List<Build> builds, int linerLayers, List<PortFace> openingFaces, List<PortFace> roomFaces, boolean linings) {
    private static final List<PortFace> OVER_OPENING = List.of(PortFace.BACK, PortFace.END, PortFace.SIDE);
    private static final List<PortFace> IN_ROOM = List.of(PortFace.FRONT, PortFace.END, PortFace.SIDE);

    Freedom {
        builds = List.copyOf(builds);
        openingFaces = List.copyOf(openingFaces);
        roomFaces = List.copyOf(roomFaces);
    }

    /** The same with every lining that is allowed: the same on sides and baffles or bare baffles, any on ends and broad faces. */
    Freedom everyLining() {
        if (!linings) {
            return this;
        }
        List<Build> all = new ArrayList<>();
        for (Build build : builds) {
            if (build.lined().equals(LinedFaces.FOLD_PLANE)) {
                everyLining(build, all);
            }
        }
        return all.isEmpty() ? this : new Freedom(all, linerLayers, openingFaces, roomFaces, true);
    }

    private void everyLining(Build build, List<Build> all) {
        for (int walls = 1; walls <= linerLayers; walls++) {
            for (int baffles : new int[] {walls, 0}) {
                for (int ends = 1; ends <= linerLayers; ends++) {
                    for (int broad = 0; broad <= linerLayers; broad++) {
                        all.add(build.lined(new LinedFaces(walls, baffles, ends, broad)));
                    }
                }
            }
        }
    }

    /** Only what is made and lined as a box is, with its faces over the opening and in the room. */
    Freedom asMade(Pattern box) {
        return new Freedom(
                List.of(box.build()), linerLayers, List.of(box.openingFace()), List.of(box.roomFace()), false);
    }

    /** Only what takes the least room, mass and sheets of every board and liner: walls of one layer, broad faces bare. */
    Freedom lightest() {
        int least = builds.stream().mapToInt(Build::layers).min().orElse(1);
        List<Build> light = builds.stream()
                .filter(build -> build.layers() == least && build.lined().equals(LinedFaces.FOLD_PLANE))
                .toList();
        return light.isEmpty() ? this : new Freedom(light, 1, openingFaces, roomFaces, linings);
    }

    /** The one build and the faces that are wished for. */
    static Freedom asWished(Brief brief) {
        Construction wished = brief.construction();
        LinedFaces lined = wished.linedBroadFaces() ? LinedFaces.ALL : LinedFaces.FOLD_PLANE;
        return new Freedom(
                List.of(new Build(wished.board(), wished.shellLayers(), wished.baffleLayers(), wished.liner(), lined)),
                1,
                List.of(wished.openingFace()),
                List.of(wished.roomFace()),
                false);
    }

    /** What the brief lets be chosen among. */
    static Freedom of(Brief brief) {
        Choices choices = brief.choicesOrFree();
        Construction wished = brief.construction();
        List<Board> boards = choices.boards().isEmpty() ? List.of(wished.board()) : choices.boards();
        List<Liner> liners = choices.liners().isEmpty() ? List.of(wished.liner()) : choices.liners();
        List<Build> builds = new ArrayList<>();
        for (Board board : boards) {
            for (Liner liner : liners) {
                for (int layers = 1; layers <= choices.layers(); layers++) {
                    for (int plies = 1; plies <= choices.linerLayers(); plies++) {
                        Build bare = new Build(board, layers, wished.baffleLayers(), liner, LinedFaces.NONE);
                        builds.add(bare.lined(new LinedFaces(plies, plies, plies, 0)));
                        builds.add(bare.lined(new LinedFaces(plies, plies, plies, plies)));
                        if (plies == 1) {
                            // Where lined baffles leave no room for one more pass, bare ones may.
                            builds.add(bare.lined(LinedFaces.FOLD_PLANE.withBaffles(0)));
                            builds.add(bare.lined(LinedFaces.ALL.withBaffles(0)));
                        }
                    }
                }
            }
        }
        return new Freedom(
                builds,
                choices.linerLayers(),
                choices.openingFaces().isEmpty() ? OVER_OPENING : choices.openingFaces(),
                choices.roomFaces().isEmpty() ? IN_ROOM : choices.roomFaces(),
                true);
    }
}
