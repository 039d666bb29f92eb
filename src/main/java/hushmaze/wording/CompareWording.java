package hushmaze.wording;

import hushmaze.assess.ComparedBand;
import hushmaze.assess.Comparison;
import hushmaze.assess.Finding;
import hushmaze.quantity.BandSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Measured against predicted, in words. */
public final class CompareWording {
    private final Wording wording;

    public CompareWording(Wording wording) {
        this.wording = wording;
    }

    /** All of it, line by line. */
    public List<String> lines(Comparison comparison) {
        List<String> lines = new ArrayList<>();
        lines.add(wording.text(
                comparison.bands() == BandSet.OCTAVE ? "compare.head.octaves" : "compare.head.thirds",
                comparison.path()));
        lines.add(wording.text("compare.columns"));
        comparison.rows().forEach(row -> lines.add(line(row)));
        lines.add("");
        lines.add(claims(comparison));
        for (Finding finding : comparison.findings()) {
            lines.add("- " + finding(finding));
            lines.add("  " + next(finding));
        }
        return lines;
    }

    /** What the figures are worth. */
    public String claims(Comparison comparison) {
        String differences = wording.text("compare.claims." + comparison.scale());
        return comparison.withBackground() ? differences : differences + " " + wording.text("compare.noBackground");
    }

    /** The weighted levels of a recording in a line. */
    public String recording(String name, double seconds, double leq, double l10, double l90) {
        return wording.text(
                "compare.recording",
                name,
                Amounts.number(seconds, 1),
                Amounts.number(leq, 1),
                Amounts.number(l10, 1),
                Amounts.number(l90, 1));
    }

    /** Where the levels of a text are from. */
    public String textSource() {
        return wording.text("reading.source.text");
    }

    /**
     * Where the levels of a recording are from.
     *
     * @param channel counted from 1
     * @param begin of the span, s
     * @param end of the span, s; null for that of the recording
     * @param offset level of a sine at full scale, dB; null if it is not known
     */
    public String recordingSource(int channel, double begin, Double end, Double offset) {
        String from = Amounts.number(begin, 1);
        String part = end == null
                ? wording.text("reading.source.toEnd", from)
                : wording.text("reading.source.span", from, Amounts.number(end, 1));
        String level = offset == null
                ? wording.text("reading.source.fullScale")
                : wording.text("reading.source.offset", Amounts.number(offset, 1));
        return wording.text("reading.source.recording", Integer.toString(channel), part, level);
    }

    /** That a recording was overloaded. */
    public String overloaded(String name, long samples) {
        return wording.text("compare.overloaded", name, Long.toString(samples));
    }

    /** What was found, as a sentence. */
    public String finding(Finding finding) {
        String amount = finding.amount() == null ? "" : wording.amounts().decibels(finding.amount());
        return wording.text(
                "finding." + finding.kind(),
                finding.from().label(),
                finding.to().label(),
                amount);
    }

    /** What to do next about it. */
    public String next(Finding finding) {
        return wording.text("finding." + finding.kind() + ".next");
    }

    /** A verdict in a few words. */
    public String verdict(ComparedBand.Verdict verdict) {
        return wording.text("compare.verdict." + verdict);
    }

    private String line(ComparedBand row) {
        String reduction = row.reduction() == null ? "-" : (row.atLeast() ? "\u2265" : "") + db(row.reduction());
        return String.format(
                        Locale.ROOT,
                        "%6s%9s%9s%11s%6s%8s%8s%8s  %s",
                        row.band().label(),
                        db(row.before()),
                        db(row.after()),
                        reduction,
                        db(row.uncertainty()),
                        db(row.low()),
                        db(row.likely()),
                        db(row.high()),
                        verdict(row.verdict()))
                .stripTrailing();
    }

    private static String db(Double value) {
        return value == null || !Double.isFinite(value) ? "-" : String.format(Locale.ROOT, "%.1f", value + 0.0);
    }
}
