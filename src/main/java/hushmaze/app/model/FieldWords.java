package hushmaze.app.model;

import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Solid;
import hushmaze.sound.section.PathField;
import hushmaze.wording.Amounts;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** The sound in a box, in sentences. */
final class FieldWords {
    /** Falls and rises of less are nothing to speak of, dB. */
    private static final double NOTHING = 1;
    /** Lower levels are no longer told apart, dB. */
    private static final double LOWEST = -200;

    private static final double KILO = 1000;

    private final PathField field;

    FieldWords(PathField field) {
        this.field = field;
    }

    /** "500 Hz" or "1.25 kHz". */
    static String frequency(double hz) {
        return hz < KILO ? EntryText.brief(hz) + " Hz" : EntryText.brief(hz / KILO) + " kHz";
    }

    /** By how much the sound falls, and where most. */
    String lesson() {
        double fall = field.fall();
        String at = frequency(field.frequency());
        if (Math.abs(fall) < NOTHING) {
            return Texts.of("inside.lesson.nothing", at);
        }
        if (fall < 0) {
            return Texts.of("inside.lesson.louder", at, whole(-fall));
        }
        int passes = field.solid().passes().size();
        if (passes == 1) {
            return Texts.of("inside.lesson.one", at, whole(fall));
        }
        int most = IntStream.range(0, passes)
                .reduce((a, b) -> field.fall(b) > field.fall(a) ? b : a)
                .orElseThrow();
        if (field.fall(most) > fall + NOTHING) {
            return Texts.of("inside.lesson.rises", at, whole(fall), whole(field.fall(most)), String.valueOf(most + 1));
        }
        String key = field.fall(most) > fall / 2 ? "inside.lesson.most" : "inside.lesson.largest";
        return Texts.of(key, at, whole(fall), whole(field.fall(most)), String.valueOf(most + 1));
    }

    private static String whole(double db) {
        return Math.round(db) + " dB";
    }

    /** What the picture is of. */
    String scope() {
        Solid solid = field.solid();
        boolean opening = solid.openingPort().port().face().isBroad();
        boolean room = solid.roomPort().port().face().isBroad();
        String ports = opening && room ? "both" : opening ? "opening" : room ? "room" : "none";
        boolean lined = solid.passes().get(0).broadLiner() > 0;
        return Texts.of(
                field.flat() ? "inside.scope.flat" : "inside.scope.slice",
                Texts.of("inside.scope." + (field.flat() ? "flat." : "slice.") + ports),
                lined && field.flat() ? Texts.of("inside.scope.lined") : "");
    }

    /** What there is at a place from the outer corner of the box, m. */
    String at(double x, double y, UnitSystem units) {
        Solid solid = field.solid();
        Cuboid outer = solid.outer();
        Amounts amounts = new Amounts(units);
        double step = units == UnitSystem.INCH ? Unit.INCH.toSi(1.0 / 8) : Unit.MILLIMETRE.toSi(1);
        String along = amounts.length(step * Math.round(x / step));
        String across = amounts.length(step * Math.round(y / step));
        OptionalDouble level = field.levelAt(outer.x0() + x, outer.y0() + y);
        if (level.isEmpty()) {
            return Texts.of("inside.at.board", along, across);
        }
        long db = Math.round(Math.max(LOWEST, level.getAsDouble()));
        String signed = (db > 0 ? "+" : db < 0 ? "−" : "") + Math.abs(db) + " dB";
        boolean soft = field.shape().lining().stream().anyMatch(block -> holds(block, outer.x0() + x, outer.y0() + y));
        return Texts.of(soft ? "inside.at.liner" : "inside.at.air", along, across, signed);
    }

    private static boolean holds(Cuboid block, double x, double y) {
        return x >= block.x0() && x <= block.x1() && y >= block.y0() && y <= block.y1();
    }
}
