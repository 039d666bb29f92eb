package hushmaze.drawing.page;

import hushmaze.build.CutList;
import hushmaze.build.joint.Fastener;
import hushmaze.build.joint.FastenerList;
import hushmaze.build.joint.Fastening;
import hushmaze.build.joint.Joint;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Table;
import hushmaze.drawing.draft.Table.Column;
import hushmaze.material.Facing;
import hushmaze.material.Screw;
import hushmaze.project.Box;
import hushmaze.project.Joinery;
import hushmaze.project.Seam;
import hushmaze.solid.SeamPlaces;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How the boards are joined: every joint with what holds it, and the rules behind. */
final class JointPages {
    private final Job job;
    private final Box box;
    private final Fastening fastening;

    /** Joints that are alike for the person who makes them. */
    private record Alike(String face, String edge, Fastener fastener, int count, String ends, String apart) {}

    JointPages(Job job) {
        this.job = job;
        this.box = job.result().solid().box();
        this.fastening = Fastening.of(
                job.result().solid(), job.assessment().project().stock().screw());
    }

    List<Draft> pages() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(job.blocks().title(Labels.of("joints.title")));
        blocks.add(job.blocks().paragraph(Labels.of("joints.explained")));
        blocks.add(job.blocks().heading(Labels.of("joints.glued")));
        blocks.add(table(false));
        blocks.add(job.blocks().heading(Labels.of("joints.cover")));
        blocks.add(table(true));
        blocks.add(job.blocks().heading(Labels.of("joints.rules")));
        rules().forEach(rule -> blocks.add(job.blocks().bullet(rule, Ink.BLACK)));
        return job.textPages(Labels.of("joints.title"), Labels.of("type.joints"), blocks);
    }

    private Block table(boolean cover) {
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.words(Labels.of("joints.face")),
                        Column.words(Labels.of("joints.edge")),
                        Column.number(Labels.of("joints.number")),
                        Column.words(Labels.of("joints.held")),
                        Column.number(Labels.of("joints.each")),
                        Column.number(Labels.of("joints.ends")),
                        Column.number(Labels.of("joints.apart"))));
        Map<Alike, Integer> alike = new LinkedHashMap<>();
        for (Fastening.Held held : fastening.held()) {
            if (held.joint().cover() == cover && !held.places().isEmpty()) {
                alike.merge(alike(held), 1, Integer::sum);
            }
        }
        FastenerNames names = new FastenerNames(job);
        alike.forEach((a, number) -> table.row(
                a.face(),
                a.edge(),
                String.valueOf(number),
                FastenerNames.kind(a.fastener()) + " " + names.size(a.fastener()),
                String.valueOf(a.count()),
                a.ends(),
                a.apart()));
        return table;
    }

    private Alike alike(Fastening.Held held) {
        Joint joint = held.joint();
        List<Double> places = held.places();
        Screw screw = job.assessment().project().stock().screw();
        CutList cuts = job.result().cutList();
        return new Alike(
                cuts.markOf(joint.face()) + ", " + PartNames.role(joint.face().role()),
                cuts.markOf(joint.edge()) + ", " + PartNames.role(joint.edge().role()),
                FastenerList.holding(held, job.result().solid(), screw, job.units()),
                places.size(),
                job.coarse(places.get(0) - joint.from()),
                places.size() < 2 ? "–" : job.coarse(places.get(1) - places.get(0)));
    }

    private boolean baffles() {
        return !job.result().solid().baffles().isEmpty();
    }

    private List<String> rules() {
        Screw screw = job.assessment().project().stock().screw();
        Joinery joinery = box.joinery();
        List<String> rules = new ArrayList<>();
        rules.add(Labels.of(
                "joints.rule.pilot",
                job.length(screw.clearanceHole()),
                job.length(screw.pilot()),
                job.coarseLength(Fastening.EDGE_CORNER),
                job.coarseLength(Fastening.FACE_EDGE)));
        if (fastening.held().stream().anyMatch(held -> held.hold() == Fastening.Hold.BRADS)) {
            rules.add(Labels.of("joints.rule.brads"));
        }
        double near = fastening.coverScrewsNearEdge();
        if (near < Fastening.FACE_EDGE) {
            rules.add(Labels.of("joints.rule.near", job.length(near), job.coarseLength(Fastening.FACE_EDGE)));
        }
        rules.add(Labels.of("joints.rule.glue"));
        if (box.shell().size() > 1 || box.baffleLayers() > 1) {
            rules.add(Labels.of(
                    "joints.rule.layers",
                    job.coarseLength(FastenerList.LAYERS_APART),
                    job.coarseLength(Fastening.FACE_CORNER)));
        }
        rules.add(Labels.of(
                baffles() ? "joints.rule.gasket.baffles" : "joints.rule.gasket", job.length(joinery.gasket())));
        if (joinery.fitClearance() > 0 && box.shell().size() > 1) {
            rules.add(Labels.of("joints.rule.play", job.length(joinery.fitClearance())));
        }
        if (joinery.groove() > 0 && box.passes() > 1) {
            rules.add(Labels.of("joints.rule.groove", job.length(joinery.groove())));
            if (joinery.fitClearance() > 0) {
                rules.add(Labels.of("joints.rule.groove.play", job.length(joinery.fitClearance())));
            }
        }
        if (box.hasSeam(Seam.Kind.GLUED)) {
            rules.add(Labels.of("joints.rule.glued", job.length(SeamPlaces.STAGGER)));
        }
        if (box.hasSeam(Seam.Kind.PARTING)) {
            rules.add(Labels.of("joints.rule.parting"));
        }
        if (!job.result().solid().liners().isEmpty()) {
            rules.add(Labels.of("joints.rule.liner"));
            Facing facing = box.liner().facing();
            if (facing != null) {
                rules.add(Labels.of("joints.rule.facing", facing.name()));
            }
        }
        return rules;
    }
}
