package hushmaze.drawing.page;

import hushmaze.air.Loss;
import hushmaze.drawing.Labels;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Blocks;
import hushmaze.drawing.draft.Lettering;
import hushmaze.material.Board;
import hushmaze.material.Facing;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Seam;
import hushmaze.sound.LossTerm;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Pages of words: cautions, and how everything was computed. */
final class WordPages {
    private static final List<String> CAUTIONS =
            List.of("first", "keepAway", "fire", "fixing", "dust", "moisture", "numbers");

    private final Job job;
    private final Blocks blocks;

    WordPages(Job job) {
        this.job = job;
        this.blocks = new Blocks(job.measure(), Lettering.TABLE);
    }

    /** Cautions first, then methods: each on a page of its own, side by side on a large one. */
    List<Draft> pages() {
        List<Block> cautions = new ArrayList<>();
        cautions(cautions);
        List<Block> methods = new ArrayList<>();
        methods(methods);
        return job.textPagesApart(Labels.of("words.title"), Labels.of("type.words"), cautions, methods);
    }

    private void cautions(List<Block> all) {
        all.add(blocks.title(Labels.of("cautions.title")));
        for (String group : CAUTIONS) {
            all.add(blocks.heading(Labels.of("cautions." + group)));
            Labels.list("cautions." + group).forEach(text -> all.add(blocks.bullet(text)));
            if (group.equals("fixing")) {
                all.add(blocks.bullet(job.wording().lifting(job.result())));
            }
        }
    }

    private void methods(List<Block> all) {
        all.add(blocks.title(Labels.of("methods.title")));
        section(all, "sound");
        all.add(blocks.bullet(new GapWords(job).supposed()));
        sources(all, soundSources());
        section(all, "air");
        sources(all, airSources());
        section(all, "build");
        seams(all);
        all.add(blocks.heading(Labels.of("methods.inputs")));
        inputs().forEach(text -> all.add(blocks.bullet(text)));
        unknown(all);
    }

    /** How the seams of this box are made, if it has any. */
    private void seams(List<Block> all) {
        List<Seam> seams = job.result().path().box().seams();
        if (!seams.isEmpty()) {
            section(all, "seams");
            seams.stream()
                    .map(seam -> "methods.seams." + seam.kind().name().toLowerCase(Locale.ROOT))
                    .distinct()
                    .flatMap(key -> Labels.list(key).stream())
                    .forEach(text -> all.add(blocks.bullet(text)));
        }
    }

    private void unknown(List<Block> all) {
        List<String> texts = new ArrayList<>(Labels.list("methods.unknown"));
        if (job.result().path().box().joinery().coverGap() != null) {
            texts.set(0, Labels.of("methods.unknown.measured"));
        }
        all.add(blocks.heading(Labels.of("methods.unknown")));
        texts.forEach(text -> all.add(blocks.bullet(text)));
    }

    private void section(List<Block> all, String group) {
        all.add(blocks.heading(Labels.of("methods." + group)));
        Labels.list("methods." + group).forEach(text -> all.add(blocks.bullet(text)));
    }

    private void sources(List<Block> all, Set<String> sources) {
        if (!sources.isEmpty()) {
            all.add(blocks.remark(Labels.of("methods.sources", String.join("; ", sources))));
        }
    }

    private Set<String> soundSources() {
        Set<String> sources = new LinkedHashSet<>();
        job.result().terms().stream()
                .map(LossTerm::source)
                .filter(s -> !s.isBlank())
                .forEach(sources::add);
        return sources;
    }

    private Set<String> airSources() {
        Set<String> sources = new LinkedHashSet<>();
        job.result().pathAir().losses().stream()
                .map(Loss::source)
                .filter(s -> !s.isBlank())
                .forEach(sources::add);
        return sources;
    }

    private List<String> inputs() {
        Brief brief = job.result().path().brief();
        Box box = job.result().path().box();
        Set<String> inputs = new LinkedHashSet<>();
        inputs.add(Labels.of("methods.input.noise", brief.noise().source()));
        inputs.add(Labels.of(
                "methods.input.target",
                job.wording().target(job.assessment().project().room().target()),
                job.assessment().project().room().target().source()));
        for (Board board : box.shell()) {
            inputs.add(material(board));
        }
        inputs.add(material(box.baffleBoard()));
        if (box.liner() != null) {
            Liner liner = box.liner();
            inputs.add(Labels.of(
                    "methods.input.liner",
                    liner.name(),
                    job.figures().fixed(liner.density(), 0),
                    job.figures().fixed(liner.flowResistivity(), 0),
                    job.figures().fixed(liner.flowResistivityLow(), 0),
                    job.figures().fixed(liner.flowResistivityHigh(), 0),
                    liner.source()));
            if (liner.facing() != null) {
                inputs.add(facing(liner.facing()));
            }
        }
        return List.copyOf(inputs);
    }

    private String facing(Facing facing) {
        String mass = job.figures().fixed(1000 * facing.massPerArea(), 0);
        return facing.isFilm()
                ? Labels.of("methods.input.film", facing.name(), mass, facing.source())
                : Labels.of(
                        "methods.input.cloth",
                        facing.name(),
                        mass,
                        job.figures().fixed(facing.flowResistance(), 0),
                        facing.source());
    }

    private String material(Board board) {
        return Labels.of("methods.input.board", board.name(), job.figures().fixed(board.density(), 0), board.source());
    }
}
