package hushmaze.app.model;

import hushmaze.quantity.Unit;
import java.util.Arrays;
import java.util.List;

/** What is asked of somebody who designs a first box, in the order of the trade. */
public enum Question {
    ROOM_LENGTH(Step.ROOM, Unit.METRE, 0.8, 40),
    ROOM_WIDTH(Step.ROOM, Unit.METRE, 0.8, 40),
    ROOM_HEIGHT(Step.ROOM, Unit.METRE, 1.2, 12),
    PEOPLE(Step.ROOM, Unit.NUMBER, 1, 60),
    DOING(Step.ROOM),
    FURNISHED(Step.ROOM),
    OPENING_KIND(Step.OPENING),
    OPENING_SURFACE(Step.OPENING),
    OPENING_BEYOND(Step.OPENING),
    OPENING_WIDTH(Step.OPENING, Unit.MILLIMETRE, 0.03, 2),
    OPENING_HEIGHT(Step.OPENING, Unit.MILLIMETRE, 0.03, 2),
    WAY_OUT(Step.OPENING),
    NOISE(Step.SOUND),
    /** A-weighted level of that noise, 1 m from the bare opening; may be left blank. */
    LOUDNESS(Step.SOUND, Unit.DECIBEL, 10, 120),
    TARGET(Step.SOUND),
    SPACE_WIDTH(Step.SPACE, Unit.MILLIMETRE, 0.15, 10),
    SPACE_HEIGHT(Step.SPACE, Unit.MILLIMETRE, 0.15, 10),
    SPACE_DEPTH(Step.SPACE, Unit.MILLIMETRE, 0.1, 10),
    BOARD(Step.MATERIALS),
    LINER(Step.MATERIALS),
    SHEET(Step.MATERIALS),
    HEAVIEST(Step.MATERIALS, Unit.KILOGRAM, 5, 2000);

    /** Questions that belong together. */
    public enum Step {
        ROOM,
        OPENING,
        SOUND,
        SPACE,
        MATERIALS;

        /** Its questions, in their order. */
        public List<Question> questions() {
            return Arrays.stream(Question.values()).filter(q -> q.step == this).toList();
        }
    }

    private final Step step;
    private final Unit unit;
    private final double least;
    private final double most;

    /** One that is answered by choosing. */
    Question(Step step) {
        this(step, null, 0, 0);
    }

    /** One that is answered by a number, its limits in SI. */
    Question(Step step, Unit unit, double least, double most) {
        this.step = step;
        this.unit = unit;
        this.least = least;
        this.most = most;
    }

    public Step step() {
        return step;
    }

    /** Whether a number is typed. */
    public boolean isNumber() {
        return unit != null;
    }

    /** Unit of the number in metric projects. */
    public Unit unit() {
        return unit;
    }

    double least() {
        return least;
    }

    double most() {
        return most;
    }
}
