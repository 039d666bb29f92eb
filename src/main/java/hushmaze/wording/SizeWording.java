package hushmaze.wording;

import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Mounting;
import hushmaze.project.Project;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.Design;
import hushmaze.size.HeldAgainst;
import hushmaze.size.Kind;
import hushmaze.size.PathDesigns;
import hushmaze.size.Relaxation;
import hushmaze.size.Sized;
import hushmaze.size.Tally;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a search for boxes found, in words. */
public final class SizeWording {
    private static final int PERCENT = 100;

    private final Wording wording;
    private final Amounts amounts;

    public SizeWording(UnitSystem units) {
        this.wording = new Wording(units);
        this.amounts = new Amounts(units);
    }

    /** @param project whose units are used */
    public SizeWording(Project project) {
        this(project.units());
    }

    /** All of it, line by line. */
    public List<String> lines(Sized sized) {
        List<String> lines = new ArrayList<>();
        for (PathDesigns path : sized.paths()) {
            lines.addAll(lines(sized.project(), path));
            lines.add("");
        }
        boolean boxes = sized.paths().stream().noneMatch(p -> p.designs().isEmpty());
        if (boxes && sized.paths().size() > 1) {
            lines.add(together(sized));
        }
        if (boxes && !sized.enoughAir()) {
            lines.add(noAir());
        }
        return lines;
    }

    /** That the boxes found do not bring the air together. */
    public String noAir() {
        return wording.text("size.noAir");
    }

    /** What was found for one path, line by line. */
    public List<String> lines(Project project, PathDesigns path) {
        List<String> lines = new ArrayList<>();
        lines.add(head(project.paths().get(path.path()).name(), path));
        Double share = project.paths().get(path.path()).brief().noiseShare();
        if (share != null) {
            lines.add("  " + wording.text("size.share", Amounts.number(PERCENT * share, 1)));
        }
        lines.add("  " + looked(path.tally()));
        if (path.held() != null) {
            lines.add("  " + held(path.held()));
        }
        for (Design design : path.designs()) {
            lines.add("  " + kinds(design));
            lines.add("      " + box(design.box()));
            lines.add("      " + figures(design, path.inMoney()));
            if (design.kinds().contains(Kind.RECOMMENDED)) {
                lines.add("      " + why(design));
            }
            Mounting asked =
                    project.paths().get(path.path()).brief().construction().mounting();
            Mounting rows = design.result().path().brief().construction().mounting();
            if (rows != null && asked != null && rows.rowDistance() < asked.rowDistance()) {
                lines.add("      "
                        + wording.text(
                                "size.rows", amounts.length(rows.rowDistance()), amounts.length(asked.rowDistance())));
            }
        }
        ways(path).forEach(way -> lines.add("  " + way));
        return lines;
    }

    /** How it went for a path. */
    public String head(String name, PathDesigns path) {
        String how = path.designs().isEmpty()
                ? wording.text("size.none")
                : path.shortfall().isAny() ? missed(path.shortfall()) : wording.text("size.quiet");
        return wording.text("size.head", name, how);
    }

    /** Which limits on sound no box keeps, and by how much. */
    public String missed(PathDesigns.Shortfall missed) {
        return missed("size.missed.", missed);
    }

    /** What became of the boxes looked at. */
    public String looked(Tally tally) {
        return wording.text(
                "size.looked",
                whole(tally.all()),
                whole(tally.noRoom()),
                whole(tally.noAir()),
                some("size.looked.notCarried", tally.notCarried()) + some("size.looked.noSheets", tally.noSheets()),
                whole(tally.hopeless()),
                whole(tally.estimated()),
                whole(tally.quick()),
                whole(tally.assessed()));
    }

    /** What the recommended box was held against, and what came of it. */
    public String held(HeldAgainst held) {
        String better =
                held.settled() ? wording.text("size.held.none") : wording.text("size.held.open", whole(held.open()));
        return wording.text("size.held." + held.among(), whole(held.boxes()), amounts.length(held.step()), better)
                + some("size.held.judged", held.judged());
    }

    /** What a design is the best at: "Recommended, cheapest". */
    public String kinds(Design design) {
        String all = design.kinds().stream()
                .map(kind -> wording.text(kind == Kind.RECOMMENDED && !design.good() ? "kind.NEAREST" : "kind." + kind))
                .collect(Collectors.joining(", "));
        return all.substring(0, 1).toUpperCase(Locale.ROOT) + all.substring(1);
    }

    /** Why the recommended one is. */
    public String why(Design design) {
        String how = !design.good()
                ? design.othersGovern() ? "heard" : "loud"
                : design.margin() < Kind.IN_HAND ? "quiet" : "safe";
        return wording.text("why.RECOMMENDED." + how, amounts.decibels(Kind.IN_HAND), amounts.decibels(Kind.ENOUGH));
    }

    /** The box in one line. */
    public String box(Box box) {
        String form = box.form() == Box.Form.OFFSET_CHAMBER
                ? wording.text("size.form.chamber")
                : box.passes() == 1
                        ? wording.text("size.form.one")
                        : wording.text("size.form.many", Integer.toString(box.passes()));
        return wording.text(
                "size.box",
                form,
                amounts.length(box.clearWidth()),
                amounts.length(box.clearHeight()),
                amounts.length(box.clearLength()),
                wording.text("size.face." + box.openingPort().face()),
                wording.text("size.face." + box.roomPort().face()),
                layers(box),
                lined(box));
    }

    private String layers(Box box) {
        int layers = box.shell().size();
        return wording.text(
                layers == 1 ? "size.layers.one" : "size.layers.many",
                box.shell().get(0).name(),
                Integer.toString(layers));
    }

    private String lined(Box box) {
        LinedFaces faces = box.linedFaces();
        if (faces.most() > 1) {
            return wording.text(
                    "size.lined.layers",
                    wording.liner(box.liner()),
                    plies(faces.walls()),
                    box.passes() > 1 ? wording.text("size.lined.baffles", plies(faces.baffles())) : "",
                    plies(faces.ends()),
                    plies(faces.broad()));
        }
        String key = faces.baffles() == 0 && box.passes() > 1 ? "bareBaffles" : faces.broad() > 0 ? "all" : "fold";
        return wording.text("size.lined." + key, wording.liner(box.liner()));
    }

    private String plies(int layers) {
        return wording.text("size.plies." + layers);
    }

    /** Its figures in one line. */
    public String figures(Design design, boolean inMoney) {
        return wording.text(
                design.good() ? "size.figures" : design.othersGovern() ? "size.figuresHeard" : "size.figuresLoud",
                outside(design),
                amounts.decibels(Math.abs(design.margin())),
                amounts.mass(design.mass()),
                amounts.pressure(design.drop()),
                sheets(design.sheets(), design.linerSheets(), design.keptOffcuts()),
                cost(design.cost(), inMoney));
    }

    /** Its outer sizes, the depth last. */
    public String outside(Design design) {
        Cuboid outer = design.result().solid().outer();
        Axis level = design.result().level();
        Axis away = design.result().solid().openingPort().role().normal();
        Axis other = away.u() == level ? away.v() : away.u();
        return amounts.sizes(outer.size(level), outer.size(other), outer.size(away));
    }

    /** What its sheets cost. */
    public String cost(Design design, boolean inMoney) {
        return cost(design.cost(), inMoney);
    }

    private String cost(double cost, boolean inMoney) {
        return inMoney
                ? wording.text("size.cost.money", Amounts.number(cost, 2))
                : wording.text("size.cost.area", Amounts.number(cost, 1));
    }

    /** "2 sheets of board, 1 sheet of liner and 1 offcut of the boxes before". */
    private String sheets(int boards, int liners, int kept) {
        List<String> all = new ArrayList<>();
        count(all, "size.board", boards);
        count(all, "size.liner", liners);
        count(all, "sheets.kept", kept);
        int last = all.size() - 1;
        return last < 1
                ? String.join("", all)
                : wording.text("sheets.and", String.join(", ", all.subList(0, last)), all.get(last));
    }

    private void count(List<String> all, String key, int n) {
        if (n > 0) {
            all.add(wording.count(key, n));
        }
    }

    /** What the recommended boxes of several paths take and cost together. */
    public String together(Sized sized) {
        List<Design> boxes = sized.paths().stream()
                .flatMap(path -> path.recommended().stream())
                .toList();
        String sheets = sheets(
                boxes.stream().mapToInt(Design::sheets).sum(),
                boxes.stream().mapToInt(Design::linerSheets).sum(),
                0);
        double cost = boxes.stream().mapToDouble(Design::cost).sum();
        return wording.text(
                "size.together", sheets, cost(cost, sized.paths().stream().allMatch(PathDesigns::inMoney)));
    }

    /** What would help where no box is good, line by line. */
    public List<String> ways(PathDesigns path) {
        List<String> ways = new ArrayList<>();
        if (!path.designs().isEmpty() && !path.shortfall().isAny()) {
            return ways;
        }
        if (path.designs().isEmpty() && path.tally().estimated() > 0) {
            return List.of(wording.text("size.noLayout", whole(path.tally().quick())));
        }
        if (path.designs().isEmpty() && path.relaxations().isEmpty()) {
            return List.of(wording.text("size.noHelp"));
        }
        ways.add(wording.text("size.wouldHelp"));
        if (path.shortfall().isAny()) {
            ways.add("- " + lessSound(path.shortfall()));
        }
        for (Relaxation relaxation : path.relaxations()) {
            ways.add("- " + wording.relaxation(relaxation));
        }
        return ways;
    }

    /** How much less sound would let a box keep the limits. */
    public String lessSound(PathDesigns.Shortfall missed) {
        return missed("size.less.", missed);
    }

    private String missed(String keys, PathDesigns.Shortfall missed) {
        String which = missed.others() == 0 ? "target" : missed.target() == 0 ? "others" : "both";
        return wording.text(keys + which, amounts.decibels(missed.target()), amounts.decibels(missed.others()));
    }

    private String some(String key, long n) {
        return n == 0 ? "" : wording.text(key, whole(n));
    }

    private static String whole(long n) {
        return String.format(Locale.ROOT, "%,d", n);
    }
}
