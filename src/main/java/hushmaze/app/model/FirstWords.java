package hushmaze.app.model;

import hushmaze.air.need.NamedFlow;
import hushmaze.air.need.RoomNeed;
import hushmaze.assess.AskedFlows;
import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Project;
import hushmaze.project.Room;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.sound.criterion.AWeighting;
import hushmaze.sound.criterion.TargetMargin;
import hushmaze.sound.room.RoomLevel;
import hushmaze.wording.Amounts;
import hushmaze.wording.Wording;
import java.time.LocalDate;

/** What follows from the answers of a step, computed by the same methods as the results. */
final class FirstWords {
    /** Own habit; a date is needed to make a project, and no figure depends on it. */
    private static final LocalDate ANY_DAY = LocalDate.of(2000, 1, 1);

    private static final double SQUARE_FOOT = Unit.SQUARE_FOOT.toSi(1);

    private final FirstBox box;
    private final Amounts amounts;

    FirstWords(FirstBox box) {
        this.box = box;
        this.amounts = new Amounts(box.units());
    }

    /** One or two sentences. */
    String of(Question.Step step) {
        try {
            return switch (step) {
                case ROOM -> room();
                case OPENING -> opening();
                case SOUND -> sound();
                case SPACE -> space();
                case MATERIALS -> materials();
            };
        } catch (InvalidValue e) {
            return e.getMessage();
        }
    }

    private String room() {
        Room room = box.room();
        NamedFlow need = RoomNeed.governing(room).orElseThrow().governing();
        return Texts.of(
                "first.follows.ROOM",
                amounts.flow(need.flow()),
                new Wording(box.units()).ground(need),
                String.valueOf(Math.round(3600 * need.flow() / room.volume())));
    }

    private String opening() {
        Project project = AskedFlows.settled(box.project(ANY_DAY));
        var brief = project.paths().get(0).brief();
        double velocity = brief.flow() / brief.opening().area();
        String key = velocity > brief.maxOpeningVelocity() ? "first.follows.OPENING.small" : "first.follows.OPENING";
        return Texts.of(
                key,
                amounts.flow(brief.flow()),
                amounts.velocity(velocity),
                amounts.velocity(brief.maxOpeningVelocity()));
    }

    private String sound() {
        Room room = box.room();
        Spectrum levels = RoomLevel.atMicrophone(box.noise(), room, BandSet.OCTAVE);
        TargetMargin bare = TargetMargin.of(levels, room.target());
        String heard = Amounts.number(AWeighting.total(levels), 0);
        String distance = amounts.distance(room.microphoneDistance());
        return bare.ok()
                ? Texts.of("first.follows.SOUND.quiet", heard, distance)
                : Texts.of(
                        "first.follows.SOUND",
                        heard,
                        distance,
                        Amounts.number(-bare.margin(), 0),
                        bare.governing().label());
    }

    private String space() {
        boolean covers = box.number(Question.SPACE_WIDTH) > box.number(Question.OPENING_WIDTH)
                && box.number(Question.SPACE_HEIGHT) > box.number(Question.OPENING_HEIGHT);
        return Texts.of(
                covers ? "first.follows.SPACE" : "first.follows.SPACE.small",
                amounts.sizes(
                        box.number(Question.SPACE_WIDTH),
                        box.number(Question.SPACE_HEIGHT),
                        box.number(Question.SPACE_DEPTH)));
    }

    private String materials() {
        Board board = (Board) box.get(Question.BOARD);
        Liner liner = (Liner) box.get(Question.LINER);
        boolean inch = box.units() == UnitSystem.INCH;
        double area = inch ? SQUARE_FOOT : 1;
        return Texts.of(
                inch ? "first.follows.MATERIALS.inch" : "first.follows.MATERIALS",
                amounts.mass(board.massPerArea() * area),
                amounts.length(liner.thickness()));
    }
}
