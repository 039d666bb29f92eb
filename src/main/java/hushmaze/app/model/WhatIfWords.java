package hushmaze.app.model;

import hushmaze.app.model.WhatIfModel.Course;
import hushmaze.app.model.WhatIfModel.Point;
import hushmaze.app.model.WhatIfModel.Verdict;
import hushmaze.quantity.UnitSystem;
import hushmaze.wording.Amounts;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What came of trying other values of one number, in sentences. */
final class WhatIfWords {
    /** Least that is shown of a level, dB. */
    private static final double SHOWN = 0.05;

    private final Course course;
    private final UnitSystem units;

    WhatIfWords(Course course, UnitSystem units) {
        this.course = course;
        this.units = units;
    }

    static String join(String... parts) {
        return Arrays.stream(parts).filter(part -> !part.isEmpty()).collect(Collectors.joining(" "));
    }

    /** What came out. */
    String found() {
        Amounts amounts = new Amounts(units);
        String now = course.points().stream()
                .filter(p -> course.isNow(p) && Double.isFinite(p.margin()))
                .findFirst()
                .map(p -> Texts.of(
                        "whatif.now" + how(p.margin()),
                        shown(p.value()),
                        amounts.decibels(Math.abs(p.margin())),
                        amounts.pressure(p.drop())))
                .orElse("");
        String good = course.points().isEmpty() ? "" : Texts.of("whatif.good", good());
        int refused = course.refusals().size();
        String left = refused == 0
                ? ""
                : Texts.of(
                        refused == 1 ? "whatif.refused.one" : "whatif.refused",
                        String.valueOf(refused),
                        course.refusals().get(0));
        return join(now, good, failing(), left);
    }

    private static String how(double margin) {
        if (Math.abs(margin) < SHOWN) {
            return ".even";
        }
        return margin < 0 ? ".short" : "";
    }

    /** What fails at the values that are not good. */
    private String failing() {
        List<Verdict> failing = course.points().stream()
                .flatMap(p -> p.failing().stream())
                .distinct()
                .sorted()
                .toList();
        return failing.isEmpty()
                ? ""
                : Texts.of(
                        "whatif.failing",
                        failing.stream()
                                .map(verdict -> Texts.of("whatif.failing." + verdict))
                                .collect(Collectors.joining(", ")));
    }

    /** Values at which every verdict is good, neighbours as ranges. */
    private String good() {
        List<String> runsOfGood = new ArrayList<>();
        List<Point> points = course.points();
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).good()) {
                int first = i;
                while (i + 1 < points.size() && points.get(i + 1).good()) {
                    i++;
                }
                String from = shown(points.get(first).value());
                runsOfGood.add(
                        i == first
                                ? Texts.of("whatif.good.one", from)
                                : Texts.of(
                                        "whatif.good.range",
                                        from,
                                        shown(points.get(i).value())));
            }
        }
        return runsOfGood.isEmpty()
                ? Texts.of("whatif.good.none")
                : String.join(Texts.of("whatif.good.and"), runsOfGood);
    }

    /** A value in words, with its unit. */
    private String shown(double value) {
        Swept of = course.number();
        if (of == Swept.PASSES) {
            int passes = (int) value;
            return Texts.of(passes == 1 ? "whatif.pass" : "whatif.passes", String.valueOf(passes));
        }
        String text = EntryText.show(of.unit().toSi(value), of.unit(), units);
        return of == Swept.NOISE && value > 0 ? "+" + text : text;
    }
}
