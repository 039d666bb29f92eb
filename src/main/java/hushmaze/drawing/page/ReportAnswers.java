package hushmaze.drawing.page;

import hushmaze.assess.AirComparison;
import hushmaze.assess.ComparedBand.Verdict;
import hushmaze.assess.Finding;
import hushmaze.assess.MeasuredNeed;
import hushmaze.assess.MeasuredNeed.Standing;
import hushmaze.drawing.Labels;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.page.VerdictBlock.Sign;
import hushmaze.project.PathReadings;
import hushmaze.project.Reading.Round;
import hushmaze.wording.CompareWording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The plain answers on top of the report of a measurement: as predicted or not, as needed or not, and the air. */
final class ReportAnswers {
    /** A source within so much of the project's noise is about as loud, dB; our own judgement. */
    private static final double AS_LOUD = 3;

    private final Job job;
    private final Measurement measured;
    private final CompareWording words;

    ReportAnswers(Job job, Measurement measured) {
        this.job = job;
        this.measured = measured;
        this.words = new CompareWording(job.wording());
    }

    List<Block> all() {
        List<Block> all = new ArrayList<>();
        if (measured.comparison() != null) {
            add(all, predictedSign(), "report.predicted", predicted());
            if (measured.need().measured() > 0) {
                add(all, neededSign(), "report.needed", needed());
            }
            level(all);
        } else if (!measured.readings().levels().isEmpty()) {
            add(all, Sign.OPEN, "report.sound", missing());
        }
        if (!measured.air().lines().isEmpty()) {
            add(all, airSign(), "report.air", air());
        }
        return all;
    }

    private void add(List<Block> all, Sign sign, String name, String sentence) {
        all.add(VerdictBlock.row(job, all.isEmpty(), sign, Labels.of(name), sentence));
    }

    /** The first finding that says how the box stands to the prediction. */
    private Finding main() {
        return measured.comparison().findings().stream()
                .filter(f -> f.kind() != Finding.Kind.FLOW_NOISE && f.kind() != Finding.Kind.BACKGROUND_HIDES)
                .findFirst()
                .orElseThrow();
    }

    private Sign predictedSign() {
        return switch (main().kind()) {
            case AS_PREDICTED, MORE_THAN_PREDICTED -> Sign.YES;
            case NOTHING_TO_JUDGE, LOW_NEAR_BACKGROUND, LOW_FEW_MODES, SINGLE_BANDS -> Sign.OPEN;
            default -> Sign.NO;
        };
    }

    private String predicted() {
        int bands = measured.comparison().rows().size();
        List<String> sentences = new ArrayList<>();
        sentences.add(words.finding(main()));
        sentences.add(Labels.of(
                "report.counts",
                String.valueOf(bands),
                String.valueOf(count(Verdict.WITHIN)),
                String.valueOf(count(Verdict.BELOW_LOW)),
                String.valueOf(count(Verdict.ABOVE_HIGH))));
        Stream.of(Verdict.NOT_BELOW_LOW, Verdict.HIDDEN, Verdict.NOT_MEASURED)
                .filter(verdict -> count(verdict) > 0)
                .map(verdict -> Labels.of("report.counts." + verdict, String.valueOf(count(verdict))))
                .forEach(sentences::add);
        return String.join(" ", sentences);
    }

    private long count(Verdict verdict) {
        return measured.comparison().rows().stream()
                .filter(row -> row.verdict() == verdict)
                .count();
    }

    private Sign neededSign() {
        MeasuredNeed need = measured.need();
        if (need.count(Standing.SHORT) > 0) {
            return Sign.NO;
        }
        return need.count(Standing.OPEN) > 0 ? Sign.OPEN : Sign.YES;
    }

    private String needed() {
        MeasuredNeed need = measured.need();
        String all = String.valueOf(need.measured());
        int open = need.count(Standing.OPEN);
        if (need.worst() == null) {
            return open == 0
                    ? Labels.of("report.needed.met", all)
                    : Labels.of("report.needed.open", String.valueOf(need.count(Standing.MET)), all);
        }
        String band = need.worst().label();
        String missed = String.valueOf(need.count(Standing.SHORT));
        List<String> sentences = new ArrayList<>();
        sentences.add(
                Double.isFinite(need.shortBy())
                        ? Labels.of(
                                "report.needed.short",
                                missed,
                                all,
                                band,
                                job.amounts().decibels(need.shortBy()))
                        : Labels.of("report.needed.nothing", missed, all, band));
        if (open > 0) {
            sentences.add(Labels.of("report.needed.alsoOpen", String.valueOf(open)));
        }
        if (job.result().quiet().whole()) {
            sentences.add(Labels.of("report.needed.whole"));
        }
        return String.join(" ", sentences);
    }

    /** Where the source was about the noise itself, or quieter; else the level is no answer. */
    private void level(List<Block> all) {
        MeasuredNeed.Loudness level = measured.need().loudness();
        if (level != null && !isLouder(level)) {
            add(all, level.over() == 0 ? Sign.YES : Sign.NO, "report.level", levelWords(level));
        }
    }

    /** What the level read with the box says, where it is no answer: the source was louder than the noise the box is for. */
    Optional<String> loudLevel() {
        return Optional.ofNullable(measured.need())
                .map(MeasuredNeed::loudness)
                .filter(ReportAnswers::isLouder)
                .map(this::levelWords);
    }

    /** Whether the source was clearly louder than the noise the box is for, or nobody can tell. */
    private static boolean isLouder(MeasuredNeed.Loudness level) {
        return level.louder() == null || level.louder() > AS_LOUD;
    }

    private String levelWords(MeasuredNeed.Loudness level) {
        String worst = job.amounts().decibels(Math.abs(level.above()));
        String bands = String.valueOf(level.bands());
        String band = level.worst().label();
        String first = level.over() == 0
                ? Labels.of("report.level.within", bands, band, worst)
                : Labels.of("report.level.above", String.valueOf(level.over()), bands, band, worst);
        if (level.louder() == null) {
            return first;
        }
        String key = "report.level.alike";
        if (isLouder(level)) {
            key = level.over() == 0 ? "report.level.evenLouder" : "report.level.louder";
        } else if (level.louder() < -AS_LOUD) {
            key = "report.level.quieter";
        }
        return first + " " + Labels.of(key, job.amounts().decibels(Math.abs(level.louder())));
    }

    /** Which rounds there are, and which must still be read before anything can be said. */
    private String missing() {
        PathReadings readings = measured.readings();
        String there = Stream.of(Round.values())
                .filter(readings::has)
                .map(words::round)
                .collect(Collectors.joining("; "));
        String wanted = Stream.of(Round.WITHOUT_BOX, Round.WITH_BOX)
                .filter(round -> !readings.has(round))
                .map(words::round)
                .collect(Collectors.joining("; "));
        return Labels.of("report.missing", there, wanted);
    }

    private Sign airSign() {
        List<AirComparison.Line> lines = measured.air().lines();
        if (lines.stream()
                .anyMatch(line -> line.beyondLimit()
                        || line.kind() == AirComparison.Kind.FLOW && line.verdict() == AirComparison.Verdict.LESS)) {
            return Sign.NO;
        }
        boolean all = lines.stream().allMatch(line -> line.verdict() == AirComparison.Verdict.AS_PREDICTED);
        return all ? Sign.YES : Sign.OPEN;
    }

    private String air() {
        return measured.air().lines().stream()
                .map(line -> Labels.of(
                        line.beyondLimit() ? "report.air.beyond" : "report.air.line",
                        words.airName(line.kind()),
                        words.airVerdict(line)))
                .collect(Collectors.joining(" "));
    }
}
