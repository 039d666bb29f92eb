package hushmaze.size;

import hushmaze.assess.Methods;
import hushmaze.assess.TestRooms;
import hushmaze.project.Brief;
import hushmaze.project.Choices;
import hushmaze.project.Opening;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Space;
import hushmaze.project.VentPath;
import hushmaze.work.Progress;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Prints how the box a search recommends stands to the best of a full grid, and the quietest it finds to the quietest of the
 * grid, for 20 seeded briefs: same methods (quick wave, a short sheet search), same limits.
 *
 * <p>The grid has every clear width, height and length in steps of 20 mm, 1 to 6 passes and offset chambers, both ways round, broad
 * faces lined or bare; one layer of board or, for every other brief, one or two; one layer of liner or, for every fourth, one or
 * two on sides and baffles and on the ends, and up to two on the broad faces. The search may choose among the same, but sizes in
 * steps of 5 mm. Not a test: it takes an hour or so.
 *
 * <p>Arguments: first and last brief, 0 to 19.
 */
final class SizeReport {
    private static final double STEP = 0.02;
    private static final PortFace[][] FACES = {
        {PortFace.BACK, PortFace.FRONT},
        {PortFace.BACK, PortFace.END},
        {PortFace.END, PortFace.END},
        {PortFace.SIDE, PortFace.SIDE},
        {PortFace.END, PortFace.SIDE}
    };

    private SizeReport() {}

    public static void main(String[] args) {
        int first = args.length > 0 ? Integer.parseInt(args[0]) : 0;
        int last = args.length > 1 ? Integer.parseInt(args[1]) : 19;
        System.out.println(
                "| brief (space, mm; noise, dB; faces; layers of board, of liner) | looked at, s | recommended, dB / m2 | boxes of the grid | its best, dB / m2 | quietest, dB | of the grid, dB |");
        System.out.println("|---|---|---|---|---|---|---|");
        for (int n = 0; n <= last; n++) {
            Random random = new Random(1_000_003L * n + 17);
            Space space = new Space(
                    0.45 + 0.3 * random.nextDouble(),
                    0.3 + 0.25 * random.nextDouble(),
                    0.2 + 0.15 * random.nextDouble());
            double level = 24 + 10 * random.nextDouble();
            PortFace[] faces = FACES[n % FACES.length];
            if (n >= first) {
                print(space, level, faces, 1 + n % 2, n % 4 == 3 ? 2 : 1);
            }
        }
    }

    private static void print(Space space, double level, PortFace[] faces, int layers, int plies) {
        Choices choices = new Choices(null, null, layers, plies, List.of(faces[0]), List.of(faces[1]));
        Brief brief =
                TestRooms.brief(level, null, space, Opening.Beyond.INDOORS).choosing(choices);
        Project project = TestRooms.project(TestRooms.nc(20), null, new VentPath("in", Purpose.SUPPLY, brief, null));
        long start = System.nanoTime();
        BoxSearch search = new BoxSearch(project, 0, Methods.QUICK, Progress.NONE);
        search.beginWide();
        Candidate found = search.settle(List.of(Kind.RECOMMENDED), Level.LINERS).get(Kind.RECOMMENDED);
        double seconds = (System.nanoTime() - start) / 1e9;
        long lookedAt = search.tally().all();
        Candidate quietest = search.settle(List.of(Kind.QUIETEST), Level.LINERS).get(Kind.QUIETEST);
        FullGrid grid = FullGrid.of(project, 0, STEP);
        String best = grid.judged() == 0
                ? "none"
                : String.format(
                        Locale.ROOT,
                        "%.1f / %.2f",
                        grid.best().margin(),
                        grid.best().cost());
        System.out.printf(
                Locale.ROOT,
                "| %.0f x %.0f x %.0f; %.1f; %s, %s; %d, %d | %d, %.1f | %s | %d | %s | %.1f | %.1f |%n",
                space.width() * 1000,
                space.height() * 1000,
                space.depth() * 1000,
                level,
                faces[0],
                faces[1],
                layers,
                plies,
                lookedAt,
                seconds,
                found == null
                        ? "none"
                        : String.format(
                                Locale.ROOT,
                                "%.1f / %.2f (%s)",
                                found.margin(Level.QUICK),
                                found.cost(),
                                found.pattern().form()),
                grid.judged(),
                best,
                quietest == null ? Double.NaN : quietest.margin(Level.QUICK),
                grid.judged() == 0 ? Double.NaN : grid.most());
    }
}
