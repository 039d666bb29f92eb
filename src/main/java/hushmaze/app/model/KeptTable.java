package hushmaze.app.model;

import hushmaze.app.model.KeptModel.Column;
import hushmaze.assess.PathResult;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.quantity.UnitSystem;
import hushmaze.wording.Amounts;
import hushmaze.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** What several boxes come to, row by row; which is the best in a row, and which rows are alike for all. */
public final class KeptTable {
    /**
     * One row.
     *
     * @param name of what is compared
     * @param cells one for each box; "…" while it is worked out
     * @param best number of the box that is the best in it; none where there is no better or worse, or no one best
     * @param alike whether it is the same for all
     */
    public record Row(String name, List<String> cells, OptionalInt best, boolean alike) {}

    private static final String WAITING = "…";
    private static final String NOTHING = "–";

    private final List<Column> columns;
    private final Wording wording;
    private final Amounts amounts;
    private final List<Row> rows = new ArrayList<>();

    private KeptTable(List<Column> columns, UnitSystem units) {
        this.columns = columns;
        this.wording = new Wording(units);
        this.amounts = new Amounts(units);
    }

    /** All rows: first what the boxes do, then how they are made. */
    public static List<Row> of(List<Column> columns, UnitSystem units) {
        KeptTable table = new KeptTable(columns, units);
        table.doing();
        table.made();
        return List.copyOf(table.rows);
    }

    private void doing() {
        judged("margin", r -> margin(r.quiet().margin()), r -> r.quiet().margin());
        judged("governing", r -> r.quiet().governing().label() + " Hz", null);
        judged(
                "drop",
                r -> amounts.pressure(r.pathAir().pressureHigh()),
                r -> -r.pathAir().pressureHigh());
        judged("fastest", r -> amounts.velocity(fastest(r)), r -> -fastest(r));
        judged(
                "outside",
                r -> amounts.sizes(r.fits().width(), r.fits().height(), r.fits().depth()),
                null);
        judged("depth", r -> amounts.length(r.fits().depth()), r -> -r.fits().depth());
        judged(
                "mass",
                r -> amounts.mass(r.buildable().mass()),
                r -> -r.buildable().mass());
        judged(
                "sheets",
                r -> String.valueOf(r.buildable().sheets()),
                r -> -r.buildable().sheets());
        judged(
                "panels",
                r -> String.valueOf(r.buildable().panels()),
                r -> -r.buildable().panels());
        judged("verdict", this::verdict, null);
    }

    private static double fastest(PathResult r) {
        return r.pathAir().velocities().stream()
                .mapToDouble(v -> v.velocity())
                .max()
                .orElseThrow();
    }

    private static String margin(double db) {
        if (Double.isInfinite(db)) {
            return NOTHING;
        }
        return Texts.of(db < 0 ? "kept.short" : "kept.spare", Amounts.number(Math.abs(db), 1));
    }

    private String verdict(PathResult r) {
        List<String> bad = new ArrayList<>();
        if (!r.quiet().ok()) {
            bad.add(Texts.of("kept.loud"));
        }
        if (!r.air().ok()) {
            bad.add(Texts.of("kept.noAir"));
        }
        if (!r.fits().ok()) {
            bad.add(Texts.of("kept.large"));
        }
        if (!r.buildable().ok() || !r.holds()) {
            bad.add(Texts.of("kept.notBuildable"));
        }
        return bad.isEmpty() ? Texts.of("kept.good") : String.join(", ", bad);
    }

    private void made() {
        row("form", b -> Texts.of("kept.form." + b.form()));
        row("passes", b -> String.valueOf(b.passes()));
        row("clear", b -> amounts.sizes(b.clearWidth(), b.clearHeight(), b.clearLength()));
        row("gap", b -> b.passes() > 1 ? amounts.length(b.turnGap()) : NOTHING);
        row("layers", b -> b.shell().size() + " × " + b.shell().get(0).name());
        row("liner", b -> b.liner() == null ? NOTHING : wording.liner(b.liner()));
        row("lined", b -> lined(b));
    }

    private static String lined(Box b) {
        LinedFaces f = b.linedFaces();
        return Texts.of(
                "kept.lined.words",
                String.valueOf(f.walls()),
                b.passes() > 1 ? String.valueOf(f.baffles()) : NOTHING,
                String.valueOf(f.ends()),
                String.valueOf(f.broad()));
    }

    private void row(String key, Function<Box, String> words) {
        add(key, columns.stream().map(c -> words.apply(c.box())).toList(), OptionalInt.empty());
    }

    private void judged(String key, Function<PathResult, String> words, ToDoubleFunction<PathResult> better) {
        List<String> cells = columns.stream()
                .map(c -> c.result() == null ? (c.problem().isEmpty() ? WAITING : NOTHING) : words.apply(c.result()))
                .toList();
        add(key, cells, better == null ? OptionalInt.empty() : best(better, cells));
    }

    /** The one box that is better than all others as the cells show it. */
    private OptionalInt best(ToDoubleFunction<PathResult> better, List<String> cells) {
        List<Integer> known = IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).result() != null)
                .boxed()
                .toList();
        if (known.size() < 2) {
            return OptionalInt.empty();
        }
        int best = known.stream()
                .max(Comparator.comparingDouble(
                        i -> better.applyAsDouble(columns.get(i).result())))
                .orElseThrow();
        boolean alone = known.stream().noneMatch(i -> i != best && cells.get(i).equals(cells.get(best)));
        return alone ? OptionalInt.of(best) : OptionalInt.empty();
    }

    private void add(String key, List<String> cells, OptionalInt best) {
        boolean alike = cells.size() > 1 && cells.stream().distinct().count() == 1;
        rows.add(new Row(Texts.of("kept.row." + key), cells, best, alike));
    }
}
