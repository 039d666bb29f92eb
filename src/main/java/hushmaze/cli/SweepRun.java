package hushmaze.cli;

import hushmaze.assess.Methods;
import hushmaze.document.SweepCsv;
import hushmaze.project.Project;
import hushmaze.size.Sweep;
import hushmaze.size.SweepRange;
import hushmaze.size.SweepRow;
import hushmaze.store.NumberField;
import hushmaze.store.ProjectFile;
import hushmaze.store.RowFile;
import hushmaze.work.Progress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Consumer;

/**
 * One part of a sweep into its file, from the first row that is not there yet.
 *
 * @param project as asked
 * @param field the number that is swept
 * @param range of values
 * @param methods of every assessment
 * @param part from 1 to {@code parts}
 * @param parts into how many the sweep is divided
 */
record SweepRun(Project project, NumberField field, SweepRange range, Methods methods, int part, int parts) {
    /**
     * What became of it.
     *
     * @param kept rows that were in the file already
     * @param computed rows that were added
     * @param refused those of them that say why their value was refused
     */
    record Outcome(int kept, int computed, int refused) {}

    /**
     * Computes what is missing.
     *
     * @param file that is written
     * @param overwrite whether a file that is there is replaced
     * @param told gets each row once it is in the file
     */
    Outcome into(Path file, boolean overwrite, Consumer<SweepRow> told) {
        SweepCsv csv = new SweepCsv(project, field.name(), field.whole());
        List<Integer> steps = range.part(part, parts);
        List<String> starts =
                steps.stream().map(k -> csv.start(k, range.value(k))).toList();
        try (RowFile rows = RowFile.open(file, about(), csv.head(), starts, overwrite)) {
            int[] refused = {0};
            List<Integer> missing = steps.subList(rows.kept(), steps.size());
            new Sweep(range, value -> field.in(project, value), methods).rows(missing, Progress.NONE, row -> {
                rows.append(csv.line(row));
                refused[0] += row.refusal() == null ? 0 : 1;
                told.accept(row);
            });
            return new Outcome(rows.kept(), missing.size(), refused[0]);
        }
    }

    /** Everything the rows follow from, a line each. */
    private String about() {
        return "program: " + Main.VERSION + "\n"
                + "project, SHA-256: " + digest(ProjectFile.text(project)) + "\n"
                + "field: " + field.name() + "\n"
                + "from: " + range.from() + "\n"
                + "to: " + range.to() + "\n"
                + "steps: " + range.steps() + "\n"
                + "part: " + part + " of " + parts + "\n"
                + "methods: quick wave " + methods.quick() + ", wave solution " + methods.wave() + ", sheet search "
                + methods.sheets().spent(1) + "\n";
    }

    private static String digest(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
