package hushmaze.drawing.page;

import hushmaze.assess.PathResult;
import hushmaze.build.fixing.Fixing;
import hushmaze.build.fixing.PortFrame;
import hushmaze.build.fixing.Rows;
import hushmaze.build.fixing.Rows.Cleat;
import hushmaze.build.fixing.Rows.Kind;
import hushmaze.build.fixing.ScrewLength;
import hushmaze.build.fixing.Way;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Scale;
import hushmaze.drawing.draft.Table;
import hushmaze.drawing.draft.Table.Column;
import hushmaze.project.Brief;
import hushmaze.project.Mounting;
import hushmaze.project.Opening;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** How the box comes to its place in the building: where on the surface, what holds it, in which order. */
final class FixingPages {
    private final Job job;
    private final PathResult result;
    private final Brief brief;
    private final Fixing fixing;
    private final Table table;
    private int step;

    FixingPages(Job job) {
        this.job = job;
        this.result = job.result();
        this.brief = result.path().brief();
        this.fixing = result.fixing();
        this.table = new Table(
                job.measure(),
                List.of(Column.number(Labels.of("fixing.number")), Column.words(Labels.of("fixing.what"))));
    }

    List<Draft> pages() {
        List<Draft> pages = new ArrayList<>();
        pages.add(drawing());
        pages.addAll(words());
        return pages;
    }

    private Draft drawing() {
        FixingViews views = new FixingViews(job);
        Shelves shelves = new Shelves(job.drawingSheet().content(), job.measure());
        List<Function<Scale, Sketch>> both = List.of(views::surface, views::section);
        Scale scale = shelves.scale(both, Scale.SERIES.get(0))
                .orElseThrow(() -> new IllegalArgumentException("the box is too big to be drawn on " + job.paper()));
        Sketch content = shelves.set(Shelves.at(both, scale)).get(0);
        return new Draft(Labels.of("fixing.title"), Labels.of("type.fixing"), scale, job.drawingSheet(), content);
    }

    private List<Draft> words() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(job.blocks().title(Labels.of("fixing.title")));
        steps();
        blocks.add(table);
        blocks.add(job.blocks().heading(Labels.of("fixing.holds")));
        job.wording().fixing(result).forEach(words -> blocks.add(job.blocks().bullet(words)));
        blocks.add(job.blocks().heading(Labels.of("cautions.fixing")));
        Labels.list("cautions.fixing").forEach(words -> blocks.add(job.blocks().bullet(words)));
        return job.textPages(Labels.of("fixing.words"), Labels.of("type.fixing"), blocks);
    }

    private void steps() {
        Opening opening = brief.opening();
        Opening.Surface surface = opening.surface();
        add("look");
        add(
                "mark",
                job.amounts().sizes(opening.width(), opening.height()),
                job.amounts()
                        .sizes(
                                result.solid().openingPort().port().width(),
                                result.solid().openingPort().port().height()));
        if (fixing.hanging().isPresent()) {
            hang(brief.construction().mounting());
        } else if (surface == Opening.Surface.FLOOR) {
            add("gasket");
            add("stand");
        } else {
            add("gasket");
            add(fixing.refused().isPresent() ? "refused" : "notSaid");
        }
        if (!result.collars(job.assessment().project()).isEmpty()) {
            add("collar");
        }
        add("seal");
        add("try");
    }

    private void hang(Mounting mounting) {
        boolean spaced = mounting.studSpacing() != null;
        add(spaced ? "studs.spaced" : "studs", spaced ? job.length(mounting.studSpacing()) : "");
        if (fixing.hangs(Way.HOOKED)) {
            hook(mounting);
        } else {
            through(mounting);
        }
    }

    private void through(Mounting mounting) {
        Cleat cleat = result.rows().cleats().get(0);
        add(
                "cleats",
                job.length(mounting.cleat()),
                width(cleat),
                job.length(cleat.length()),
                fromInside(mounting),
                job.length(Rows.APART));
        frame();
        add(brief.opening().surface() == Opening.Surface.CEILING ? "lift.ceiling" : "lift.wall");
        add("screws", screws(mounting, 2));
    }

    private void hook(Mounting mounting) {
        Map<Kind, Cleat> battens =
                result.rows().cleats().stream().collect(Collectors.toMap(Cleat::kind, Function.identity()));
        add(
                "hooks",
                job.length(mounting.cleat()),
                width(battens.get(Kind.WALL_HOOK)),
                job.length(battens.get(Kind.WALL_HOOK).length()),
                job.length(battens.get(Kind.BOX_HOOK).length()),
                width(battens.get(Kind.SPACER)),
                fromInside(mounting),
                job.length(Rows.APART));
        frame();
        add("wallBatten", screws(mounting, 1));
        add("hook", job.length(battens.get(Kind.WALL_HOOK).lift()));
        add("secure");
    }

    /** How many, which, how much thread in the timber, and how long without plaster. */
    private String[] screws(Mounting mounting, int rows) {
        return new String[] {
            String.valueOf(rows * mounting.screwsPerRow()),
            Labels.of("fixing.screw." + mounting.screw()),
            job.length(mounting.thread()),
            job.length(ScrewLength.of(
                    result.solid(), mounting, fixing.hanging().orElseThrow().way()))
        };
    }

    private String fromInside(Mounting mounting) {
        return job.length(ScrewLength.mostFromInside(result.solid(), mounting));
    }

    /** The frame around the port, where a cleat leaves room for one. */
    private void frame() {
        PortFrame frame = PortFrame.of(result.solid(), result.rows()).orElseThrow();
        String strips = frame.strips().stream()
                .map(strip -> job.amounts().sizes(strip.length(), strip.width()))
                .collect(Collectors.joining("; "));
        add(
                frame.strips().size() < 4 ? "packing.cleats" : "packing",
                job.length(frame.thickness()),
                strips,
                job.length(brief.construction().mounting().cleat()));
    }

    private String width(Cleat cleat) {
        return job.length(Math.ceil(1e3 * cleat.width()) / 1e3);
    }

    private void add(String key, String... values) {
        step++;
        table.row(String.valueOf(step), Labels.of("fixing.step." + key, values));
    }
}
