package hushmaze.drawing.page;

import hushmaze.assess.AirComparison;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Blocks;
import hushmaze.drawing.draft.SpectrumChart;
import hushmaze.project.JointGap;
import hushmaze.project.Reading.Round;
import hushmaze.project.RoomReadings;
import hushmaze.wording.CompareWording;
import java.util.ArrayList;
import java.util.List;

/** A report of what was measured: the plain answers, the bands, what they point to and what to try next, readings and air. */
final class ReportPages {
    /** Height of the charts, mm; with thirds, chart and table share an upright page. */
    private static final double CHART = 50;

    /** Of the levels as they were read: shown where the table of the bands has not all of them. */
    private static final double LEVELS = 48;

    private final Job job;
    private final Blocks blocks;
    private final CompareWording words;

    ReportPages(Job job) {
        this.job = job;
        this.blocks = job.blocks();
        this.words = new CompareWording(job.wording());
    }

    /** None where nothing was measured. */
    List<Draft> pages() {
        return Measurement.of(job).map(this::pages).orElse(List.of());
    }

    private List<Draft> pages(Measurement measured) {
        List<Block> all = said(measured);
        List<Block> readings = readings(measured);
        List<Block> both = new ArrayList<>(all);
        both.addAll(readings);
        List<Draft> together = set(both);
        if (together.size() == 1 || !job.paper().large()) {
            return together;
        }
        // A large page takes what is said of the readings; where they are from has the next one.
        List<Draft> pages = new ArrayList<>(set(all));
        pages.addAll(set(readings));
        return pages;
    }

    private List<Draft> set(List<Block> blocks) {
        return job.textPages(Labels.of("report.title"), Labels.of("type.report"), blocks);
    }

    private List<Block> said(Measurement measured) {
        List<Block> all = new ArrayList<>();
        all.add(blocks.title(Labels.of("report.title")));
        all.addAll(new ReportAnswers(job, measured).all());
        if (measured.comparison() != null) {
            bands(all, measured);
            findings(all, measured);
        }
        air(all, measured);
        fitting(all, measured);
        return all;
    }

    private void bands(List<Block> all, Measurement measured) {
        SpectrumChart chart = new ReportCharts(job).reduction(measured.comparison());
        all.add(blocks.chart(2, CHART, chart::draw, Labels.of("report.bands.remark")));
        all.add(new ReportTables(job).bands(measured.comparison(), measured.need()));
    }

    private void findings(List<Block> all, Measurement measured) {
        all.add(blocks.heading(Labels.of("report.findings")));
        all.add(new ReportTables(job).findings(measured.comparison()));
        all.add(blocks.paragraph(words.claims(measured.comparison())));
    }

    private void air(List<Block> all, Measurement measured) {
        List<AirComparison.Line> lines = measured.air().lines();
        if (lines.isEmpty()) {
            return;
        }
        all.add(blocks.heading(Labels.of("report.air.heading")));
        all.add(new ReportTables(job).air(lines));
        for (AirComparison.Line line : lines) {
            String next = words.airNext(line);
            if (!next.isEmpty()) {
                all.add(blocks.bullet(next, line.beyondLimit() ? Ink.ALERT : Ink.BLACK));
            }
        }
        all.add(blocks.remark(Labels.of("report.air.remark")));
    }

    /** What the readings say of joint and liner, and what the project holds of the joint already. */
    private void fitting(List<Block> all, Measurement measured) {
        if (measured.comparison() == null) {
            return;
        }
        all.add(blocks.heading(Labels.of("report.fitting")));
        if (measured.fitting() == null) {
            all.add(blocks.paragraph(Labels.of("report.fitting.few")));
        } else {
            words.fitting(measured.fitting()).forEach(text -> all.add(blocks.bullet(text)));
        }
        if (measured.fitting() != null && measured.fitting().explains()) {
            all.add(blocks.paragraph(Labels.of("report.fitting.caution")));
        }
        JointGap gap = job.result().path().box().joinery().coverGap();
        if (gap != null) {
            all.add(blocks.paragraph(new GapWords(job).kept(gap)));
        }
    }

    private List<Block> readings(Measurement measured) {
        List<Block> all = new ArrayList<>();
        all.add(blocks.heading(Labels.of("report.readings")));
        if (measured.readings().levels().isEmpty()) {
            all.add(blocks.paragraph(Labels.of("report.readings.none")));
        } else {
            if (measured.comparison() == null || measured.readings().has(Round.WITH_AIR)) {
                SpectrumChart chart = new ReportCharts(job).levels(measured.readings());
                all.add(blocks.chart(1, LEVELS, chart::draw));
            }
            new ReportAnswers(job, measured).loudLevel().ifPresent(text -> all.add(blocks.paragraph(text)));
            all.add(new ReportTables(job).readings(measured.readings()));
            for (Round round : List.of(Round.SOURCE_OFF, Round.WITH_AIR)) {
                if (!measured.readings().has(round)) {
                    all.add(blocks.bullet(Labels.of("report.readings.without." + round)));
                }
            }
        }
        airSources(all, measured);
        if (!measured.readings().levels().isEmpty() && measured.comparison() == null) {
            all.add(blocks.heading(Labels.of("report.levels")));
            all.add(new ReportTables(job).levels(ReadLevels.of(job, measured.readings())));
        }
        return all;
    }

    private void airSources(List<Block> all, Measurement measured) {
        if (measured.readings().flowSource() != null) {
            all.add(blocks.bullet(
                    Labels.of("report.source.flow", measured.readings().flowSource())));
        }
        RoomReadings room = measured.room();
        if (room.co2() != null) {
            all.add(blocks.bullet(Labels.of(
                    "report.source.co2", String.valueOf(room.co2Minutes()), String.valueOf(room.co2People()))));
        }
        if (room.source() != null) {
            all.add(blocks.bullet(Labels.of("report.source.room", room.source())));
        }
    }
}
