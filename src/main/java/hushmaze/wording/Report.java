package hushmaze.wording;

import hushmaze.assess.Assessment;
import hushmaze.assess.BandResult;
import hushmaze.assess.PathResult;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** An assessment as lines of text for a terminal. */
public final class Report {
    private static final int WIDTH = 100;
    private static final String INDENT = "  ";
    private static final Set<NoticeKind> IN_A_VERDICT = EnumSet.of(
            NoticeKind.NOT_QUIET_ENOUGH,
            NoticeKind.PRESSURE_ABOVE_LIMIT,
            NoticeKind.VELOCITY_ABOVE_LIMIT,
            NoticeKind.DOES_NOT_FIT);

    private final Wording wording;

    public Report(Wording wording) {
        this.wording = wording;
    }

    /** Verdicts and octave bands, with the notices that stop a design and are not said by a verdict already. */
    public List<String> brief(Assessment assessment) {
        return lines(assessment, false, n -> n.severity() == Severity.STOP && !IN_A_VERDICT.contains(n.kind()));
    }

    /** Verdicts, octave bands and all notices. */
    public List<String> full(Assessment assessment) {
        return lines(assessment, true, n -> true);
    }

    private List<String> lines(Assessment assessment, boolean all, Predicate<Notice> wanted) {
        List<String> lines = new ArrayList<>();
        lines.add(assessment.project().name());
        add(
                lines,
                "",
                wording.room(assessment.room(), assessment.project().room().target()));
        add(lines, "", wording.roomAir(assessment.room()));
        wording.envelope(assessment.room()).ifPresent(e -> add(lines, "", e));
        addNotices(lines, assessment.notices(), wanted);
        for (PathResult path : assessment.paths()) {
            lines.add("");
            add(lines, "", path.path().name() + ": " + wording.box(path.path().box()));
            wording.verdicts(path).forEach(v -> add(lines, INDENT, v));
            wording.heard(path).forEach(v -> add(lines, INDENT, v));
            if (all) {
                add(lines, INDENT, wording.improvements(path));
                add(lines, INDENT, wording.difference(path));
                wording.fixing(path).forEach(f -> add(lines, INDENT, f));
            }
            lines.add(INDENT + row("octave band, Hz", path, b -> Double.NaN));
            lines.add(INDENT + row("reduction needed, dB", path, BandResult::needed));
            lines.add(INDENT + row("predicted, low", path, BandResult::low));
            lines.add(INDENT + row("predicted, likely", path, BandResult::likely));
            addNotices(lines, path.notices(), wanted);
        }
        return lines;
    }

    private void addNotices(List<String> lines, List<Notice> notices, Predicate<Notice> wanted) {
        notices.stream()
                .filter(wanted)
                .sorted(Comparator.comparing(Notice::severity).reversed())
                .map(n -> wording.text("severity." + n.severity()) + " " + wording.notice(n))
                .distinct()
                .forEach(t -> add(lines, INDENT, t));
    }

    /** Adds a text as lines of a terminal's width; what is left over goes on a little further in. */
    private static void add(List<String> lines, String indent, String text) {
        String start = indent;
        StringBuilder line = new StringBuilder(start);
        for (String word : text.split(" ")) {
            if (line.length() > start.length() && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                start = indent + INDENT;
                line = new StringBuilder(start);
            }
            line.append(line.length() > start.length() ? " " : "").append(word);
        }
        lines.add(line.toString());
    }

    private static String row(String label, PathResult path, ToDoubleFunction<BandResult> value) {
        StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%-22s", label));
        for (BandResult band : path.octaves()) {
            double db = value.applyAsDouble(band);
            String text = Double.isNaN(db)
                    ? band.band().label()
                    : Double.isInfinite(db) ? "-" : String.format(Locale.ROOT, "%.0f", db + 0.0);
            row.append(String.format(Locale.ROOT, "%6s", text));
        }
        return row.toString();
    }
}
