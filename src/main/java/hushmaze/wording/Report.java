package hushmaze.wording;

import hushmaze.assess.Assessment;
import hushmaze.assess.BandResult;
import hushmaze.assess.PathResult;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** An assessment as lines of text for a terminal. */
public final class Report {
    private final Wording wording;

    public Report(Wording wording) {
        this.wording = wording;
    }

    /** Verdicts and octave bands, and every notice that asks for attention; notes are left out. */
    public List<String> brief(Assessment assessment) {
        return lines(assessment, Severity.STOP);
    }

    /** Verdicts, octave bands and all notices. */
    public List<String> full(Assessment assessment) {
        return lines(assessment, Severity.NOTE);
    }

    private List<String> lines(Assessment assessment, Severity least) {
        List<String> lines = new ArrayList<>();
        lines.add(assessment.project().name());
        lines.add(wording.room(assessment.room(), assessment.project().room().target()));
        addNotices(lines, assessment.notices(), least);
        for (PathResult path : assessment.paths()) {
            lines.add("");
            lines.add(path.path().name() + ": " + wording.box(path.path().box()));
            wording.verdicts(path).forEach(v -> lines.add("  " + v));
            lines.add("  " + row("octave band, Hz", path, b -> Double.NaN));
            lines.add("  " + row("reduction needed, dB", path, BandResult::needed));
            lines.add("  " + row("predicted, low", path, BandResult::low));
            lines.add("  " + row("predicted, likely", path, BandResult::likely));
            addNotices(lines, path.notices(), least);
        }
        return lines;
    }

    private void addNotices(List<String> lines, List<Notice> notices, Severity least) {
        for (Severity severity : new Severity[] {Severity.STOP, Severity.WARNING, Severity.NOTE}) {
            if (severity.compareTo(least) >= 0) {
                notices.stream()
                        .filter(n -> n.severity() == severity)
                        .map(wording::notice)
                        .distinct()
                        .forEach(t -> lines.add("  " + wording.text("severity." + severity) + " " + t));
            }
        }
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
