package hushmaze.wording;

import hushmaze.assess.AirComparison;
import hushmaze.assess.BoxFitting;
import hushmaze.assess.ComparedBand;
import hushmaze.assess.Comparison;
import hushmaze.assess.Finding;
import hushmaze.assess.RoomAir;
import hushmaze.project.Reading;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
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

    /** What readings say of gap and liner, line by line; the first is empty. */
    public List<String> fittingLines(BoxFitting fitting) {
        List<String> lines = new ArrayList<>(List.of("", wording.text("fitting.head")));
        fitting(fitting).forEach(sentence -> lines.add("- " + sentence));
        return lines;
    }

    /** Measured air, line by line; the first is empty, and there is none without readings. */
    public List<String> airLines(AirComparison air) {
        List<String> lines = new ArrayList<>();
        for (AirComparison.Line line : air.lines()) {
            if (lines.isEmpty()) {
                lines.add("");
                lines.add(wording.text("compare.air.head"));
            }
            lines.add("- " + airSentence(line));
            if (!airNext(line).isEmpty()) {
                lines.add("  " + airNext(line));
            }
        }
        return lines;
    }

    /** One thing measured of the air, in a sentence. */
    public String airSentence(AirComparison.Line line) {
        return wording.text(
                "compare.air.line", airName(line.kind()), airMeasured(line), airPredicted(line), airVerdict(line));
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
        String from = finding.from().label();
        String bands = finding.from().equals(finding.to())
                ? wording.text("finding.band", from)
                : wording.text("finding.bands", from, finding.to().label());
        return wording.text("finding." + finding.kind(), bands, amount);
    }

    /** What to do next about it. */
    public String next(Finding finding) {
        return wording.text("finding." + finding.kind() + ".next");
    }

    /** What a round of readings is, in a few words. */
    public String round(Reading.Round round) {
        return wording.text("reading.round." + round);
    }

    /** What was measured of the air, as it stands in a table. */
    public String airName(AirComparison.Kind kind) {
        return wording.text("compare.air." + kind);
    }

    /** What was measured of the air, with its uncertainty. */
    public String airMeasured(AirComparison.Line line) {
        return wording.text(
                "compare.air.measured", air(line.kind(), line.measured()), air(line.kind(), line.uncertainty()));
    }

    /** What was predicted for it. */
    public String airPredicted(AirComparison.Line line) {
        if (line.least() == null) {
            return wording.text("compare.air.noPrediction");
        }
        String least = air(line.kind(), line.least());
        String most = air(line.kind(), line.most());
        return least.equals(most) ? least : wording.text("compare.air.range", least, most);
    }

    /** How it stands to the prediction, in a few words. */
    public String airVerdict(AirComparison.Line line) {
        return wording.text("compare.air.verdict." + line.verdict());
    }

    /** What it means and what to do next; empty where all is as predicted and within its limit. */
    public String airNext(AirComparison.Line line) {
        String next = line.verdict() == AirComparison.Verdict.LESS || line.verdict() == AirComparison.Verdict.MORE
                ? wording.text("compare.air." + line.kind() + "." + line.verdict() + ".next")
                : "";
        String limit = line.beyondLimit()
                ? wording.text(
                        "compare.air." + line.kind() + ".limit",
                        wording.amounts().pressure(RoomAir.LIMIT))
                : "";
        return (limit + " " + next).strip();
    }

    private String air(AirComparison.Kind kind, double value) {
        return switch (kind) {
            case FLOW, AIR_BY_CO2 -> wording.amounts().flow(value);
            case DOOR_PRESSURE -> wording.amounts().pressure(value);
            case CO2 -> wording.amounts().of(value, Unit.PARTS_PER_MILLION);
        };
    }

    /** What readings say of the cover's gap and the liner, a sentence each. */
    public List<String> fitting(BoxFitting fitting) {
        List<String> all = new ArrayList<>();
        String before = wording.amounts().decibels(fitting.before());
        String after = wording.amounts().decibels(fitting.after());
        if (!fitting.explains()) {
            all.add(wording.text("fitting.unexplained", before, after));
            return all;
        }
        all.add(gap(fitting.gap()));
        if (fitting.resistivity() != null) {
            all.add(resistivity(fitting.resistivity()));
        }
        all.add(wording.text("fitting.misfit", before, after, Integer.toString(fitting.bands())));
        return all;
    }

    private String gap(BoxFitting.Value gap) {
        if (gap.most() == null) {
            return gap.least() == 0
                    ? wording.text("fitting.gap.any")
                    : wording.text("fitting.gap.wide", gapWidth(gap.least()));
        }
        return gap.least() == 0
                ? wording.text("fitting.gap.most", gapWidth(gap.most()))
                : wording.text("fitting.gap", gapWidth(gap.likely()), gapWidth(gap.least()), gapWidth(gap.most()));
    }

    private String resistivity(BoxFitting.Value value) {
        if (value.told()) {
            return wording.text(
                    "fitting.liner", resistance(value.likely()), resistance(value.least()), resistance(value.most()));
        }
        if (value.least() == null && value.most() == null) {
            return wording.text("fitting.liner.any");
        }
        return value.most() == null
                ? wording.text("fitting.liner.least", resistance(value.least()))
                : wording.text("fitting.liner.most", resistance(value.most()));
    }

    /** A gap to two figures, in millimetres in both systems: a feeler gauge has them. */
    private static String gapWidth(double metres) {
        return significant(metres * 1e3) + " mm";
    }

    private static String resistance(double value) {
        return significant(value) + " " + Unit.PASCAL_SECOND_PER_SQUARE_METRE.symbol();
    }

    /** To two significant figures. */
    private static String significant(double value) {
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(2));
        return rounded.stripTrailingZeros().toPlainString();
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
