package hushmaze.assess;

import hushmaze.air.need.NamedFlow;
import hushmaze.air.need.RoomNeed;
import hushmaze.project.Brief;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * The flow of every brief, with what the room needs where a brief says nothing.
 *
 * <p>Supply paths that say nothing share equally what the governing need leaves over; return and exhaust paths that say
 * nothing share what all supplies bring, or the need where there is no supply, less what the others take.
 */
public final class AskedFlows {
    /** Least flow a path may be left with, m³/s. */
    private static final double LEAST = 1e-4;

    private AskedFlows() {}

    /**
     * The project with a flow in every brief.
     *
     * @throws InvalidValue if the need is nothing, or the other paths leave nothing over
     */
    public static Project settled(Project project) {
        if (project.paths().stream().allMatch(p -> p.brief().flow() != null)) {
            return project;
        }
        NamedFlow need = RoomNeed.governing(project.room()).orElseThrow().governing();
        if (need.flow() < LEAST) {
            throw new InvalidValue(
                    "room.people",
                    project.room().people() + " without heat to carry off",
                    "at least 1 where a path's flow follows from the need",
                    "");
        }
        Project supplied = shared(project, true, need.flow());
        double supply = asked(supplied, true);
        return shared(supplied, false, supply > 0 ? supply : need.flow());
    }

    /** Air that the briefs of all supply paths ask for, or of all others, m³/s. */
    static double asked(Project project, boolean supply) {
        return project.paths().stream()
                .filter(p -> isSupply(p) == supply && p.brief().flow() != null)
                .mapToDouble(p -> p.brief().flow())
                .sum();
    }

    private static boolean isSupply(VentPath path) {
        return path.purpose() == Purpose.SUPPLY;
    }

    private static Project shared(Project project, boolean supply, double whole) {
        long open = project.paths().stream()
                .filter(p -> isSupply(p) == supply && p.brief().flow() == null)
                .count();
        double share = open == 0 ? 0 : (whole - asked(project, supply)) / open;
        List<VentPath> paths = new ArrayList<>();
        for (int i = 0; i < project.paths().size(); i++) {
            VentPath path = project.paths().get(i);
            Brief brief = path.brief();
            if (isSupply(path) == supply && brief.flow() == null) {
                if (share < LEAST) {
                    throw new InvalidValue(
                            "paths[" + i + "].brief.flow",
                            "nothing",
                            "given: the other paths bring " + litres(asked(project, supply)) + " of the "
                                    + litres(whole) + " there shall be, which leaves nothing for this one",
                            "");
                }
                brief = brief.withFlow(share);
            }
            paths.add(path.withBrief(brief));
        }
        return project.withPaths(paths);
    }

    private static String litres(double flow) {
        return Math.round(Unit.LITRE_PER_SECOND.fromSi(flow) * 10) / 10.0 + " L/s";
    }
}
