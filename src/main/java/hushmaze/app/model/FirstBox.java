package hushmaze.app.model;

import hushmaze.air.need.DuctVelocity;
import hushmaze.air.need.OpeningVelocity;
import hushmaze.assess.RoomAir;
import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.material.Sheet;
import hushmaze.project.Activity;
import hushmaze.project.AirRule;
import hushmaze.project.Brief;
import hushmaze.project.Choices;
import hushmaze.project.Construction;
import hushmaze.project.Drive;
import hushmaze.project.Joinery;
import hushmaze.project.Noise;
import hushmaze.project.Opening;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Room;
import hushmaze.project.RoomUse;
import hushmaze.project.Space;
import hushmaze.project.Stock;
import hushmaze.project.Target;
import hushmaze.project.TitleBlock;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.sound.criterion.AWeighting;
import hushmaze.store.NoisePreset;
import hushmaze.store.Presets;
import hushmaze.store.TargetPreset;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The answers somebody gave about a first box, and the project they make. What was not answered is a usual value, which may
 * follow from other answers; it says in its source that the program filled it in. Absorption by furnishing and all usual values
 * are own assumptions, no source.
 */
public final class FirstBox {
    /** How much in the room swallows sound. */
    public enum Furnished {
        /** Bare walls and floor. */
        BARE(0.10, 0.10, 0.08, 0.08, 0.08, 0.09, 0.09, 0.10),
        /** Carpet, curtain, a sofa. */
        SOME_SOFT(0.14, 0.16, 0.19, 0.23, 0.26, 0.28, 0.29, 0.30),
        /** Most walls covered by thick panels. */
        MOSTLY_SOFT(0.18, 0.26, 0.40, 0.50, 0.55, 0.56, 0.56, 0.56);

        /** Mean absorption coefficients, 63 Hz to 8 kHz. Own assumption. */
        private final double[] coefficients;

        Furnished(double... coefficients) {
            this.coefficients = coefficients;
        }
    }

    /** Where used air goes. */
    public enum WayOut {
        /** Through a second opening with a box of its own. */
        INDOORS,
        OUTDOORS,
        NONE_YET
    }

    private static final double OUTDOOR_CO2 = 450e-6;
    private static final double CO2_LIMIT = 1000e-6;
    private static final double LIGHTS_PER_AREA = 3;
    private static final double MACHINES = 60;
    private static final double SUPPLY_C = 20;
    private static final double HIGHEST_C = 27;
    /** Pa; what small ductwork and duct fans have left over. */
    private static final double DRIVEN_DROP = 25;

    private static final double FASTEST_IN_PATH = 2.5;
    private static final double FASTEST_AT_ROOM = 1.8;
    private static final int MOST_LAYERS = 2;

    private final Presets presets;
    private final UnitSystem units;
    private final Map<Question, Object> answers;

    private FirstBox(Presets presets, UnitSystem units, Map<Question, Object> answers) {
        this.presets = presets;
        this.units = units;
        this.answers = answers;
    }

    /** Nothing answered yet. */
    static FirstBox empty(Presets presets, UnitSystem units) {
        return new FirstBox(presets, units, new EnumMap<>(Question.class));
    }

    public UnitSystem units() {
        return units;
    }

    /** How many questions were answered. */
    public int answered() {
        return answers.size();
    }

    public boolean isAnswered(Question question) {
        return answers.containsKey(question);
    }

    /** The same answers in other units; what was not answered may be another usual size then. */
    FirstBox in(UnitSystem other) {
        return new FirstBox(presets, other, answers);
    }

    /**
     * With one more answer; null takes one back.
     *
     * @throws InvalidValue if a number is beyond what is accepted
     */
    FirstBox with(Question question, Object value) {
        if (value != null && question.isNumber()) {
            double number = ((Number) value).doubleValue();
            InvalidValue.within(question.name(), number, question.least(), question.most(), question.unit());
            if (question == Question.PEOPLE && number != Math.rint(number)) {
                throw new InvalidValue(
                        question.name(), InvalidValue.shown(number, Unit.NUMBER), Texts.of("entry.wholeNumber"), "");
            }
        }
        Map<Question, Object> more = new EnumMap<>(Question.class);
        more.putAll(answers);
        if (value == null) {
            more.remove(question);
        } else {
            more.put(question, value);
        }
        return new FirstBox(presets, units, more);
    }

    /** The answer, or what is usual; null for a measured loudness that was not given. */
    public Object get(Question question) {
        Object answer = answers.get(question);
        return answer == null ? usual(question) : answer;
    }

    /** A number in SI. */
    public double number(Question question) {
        return ((Number) get(question)).doubleValue();
    }

    private Object usual(Question question) {
        boolean inch = units == UnitSystem.INCH;
        return switch (question) {
            case ROOM_LENGTH -> inch ? Unit.FOOT.toSi(11) : 3.4;
            case ROOM_WIDTH -> inch ? Unit.FOOT.toSi(9) : 2.6;
            case ROOM_HEIGHT -> inch ? Unit.FOOT.toSi(8) : 2.4;
            case PEOPLE -> 1.0;
            case DOING -> Activity.SEATED_WORK;
            case FURNISHED -> Furnished.SOME_SOFT;
            case OPENING_KIND -> Opening.Kind.REGISTER;
            case OPENING_SURFACE -> Opening.Surface.WALL;
            case OPENING_BEYOND ->
                get(Question.OPENING_KIND) == Opening.Kind.REGISTER ? Opening.Beyond.DUCTWORK : Opening.Beyond.INDOORS;
            case OPENING_WIDTH -> inch ? Unit.INCH.toSi(10) : 0.25;
            case OPENING_HEIGHT -> inch ? Unit.INCH.toSi(6) : 0.15;
            case WAY_OUT -> WayOut.INDOORS;
            case NOISE -> usualNoise((Opening.Beyond) get(Question.OPENING_BEYOND));
            case LOUDNESS -> null;
            case TARGET -> presets.target("NC 25: practice, home studio");
            case SPACE_WIDTH -> inch ? Unit.INCH.toSi(36) : 0.9;
            case SPACE_HEIGHT -> inch ? Unit.INCH.toSi(24) : 0.6;
            case SPACE_DEPTH -> inch ? Unit.INCH.toSi(14) : 0.35;
            case BOARD -> presets.board(inch ? "MDF 3/4 in" : "MDF 18 mm");
            case LINER -> presets.liner(inch ? "Glass-fibre duct liner 1 in" : "Glass-fibre duct liner 25 mm");
            case SHEET -> presets.boardSheet(inch ? "49 x 97 in, MDF" : "2440 x 1220 mm");
            case HEAVIEST -> inch ? Unit.POUND.toSi(130) : 60.0;
        };
    }

    private NoisePreset usualNoise(Opening.Beyond beyond) {
        return presets.noise(
                switch (beyond) {
                    case DUCTWORK -> "Furnace blower through a wall register";
                    case INDOORS, GARAGE -> "Hall of a house through a transfer opening";
                    case OUTDOORS -> "Garden road through a wall opening";
                });
    }

    /** What a question that is answered by choosing may be answered with. */
    public List<?> options(Question question) {
        return switch (question) {
            case DOING -> List.of(Activity.values());
            case FURNISHED -> List.of(Furnished.values());
            case OPENING_KIND -> List.of(Opening.Kind.REGISTER, Opening.Kind.WALL_OPENING);
            case OPENING_SURFACE -> List.of(Opening.Surface.values());
            case OPENING_BEYOND -> List.of(Opening.Beyond.values());
            case WAY_OUT -> List.of(WayOut.values());
            case NOISE -> presets.noises();
            case TARGET -> presets.targets();
            case BOARD -> presets.boards();
            case LINER -> presets.liners();
            case SHEET -> presets.boardSheets();
            default -> throw new IllegalArgumentException(question + " is answered by a number");
        };
    }

    /** The room, its use and its target. */
    public Room room() {
        double length = number(Question.ROOM_LENGTH);
        double width = number(Question.ROOM_WIDTH);
        double height = number(Question.ROOM_HEIGHT);
        double surface = 2 * (length * width + length * height + width * height);
        List<Double> absorption = new ArrayList<>();
        for (double each : ((Furnished) get(Question.FURNISHED)).coefficients) {
            absorption.add(Math.rint(10 * each * surface) / 10);
        }
        Activity doing = (Activity) get(Question.DOING);
        boolean still = doing == Activity.SEATED_QUIET || doing == Activity.SEATED_WORK;
        RoomUse use = new RoomUse(
                doing,
                still ? AirRule.EN_CATEGORY_II : AirRule.MUSIC,
                length * width,
                CO2_LIMIT,
                Math.rint(LIGHTS_PER_AREA * length * width),
                MACHINES,
                0,
                SUPPLY_C,
                HIGHEST_C,
                null,
                null,
                List.of(),
                Assumed.source("firstUse"));
        return new Room(
                Texts.of("first.room"),
                length * width * height,
                (int) number(Question.PEOPLE),
                null,
                OUTDOOR_CO2,
                null,
                absorption,
                microphoneDistance(),
                SUPPLY_C,
                0,
                null,
                target(),
                null,
                null,
                use,
                null,
                null);
    }

    /** From the opening to whoever listens, m: half the longer side, to the decimetre. */
    public double microphoneDistance() {
        double longer = Math.max(number(Question.ROOM_LENGTH), number(Question.ROOM_WIDTH));
        return Math.max(0.3, Math.rint(5 * longer) / 10);
    }

    /** How quiet it shall be. */
    public Target target() {
        return ((TargetPreset) get(Question.TARGET)).target();
    }

    /** The noise at the bare opening, at the loudness that was measured. */
    public Noise noise() {
        return as((NoisePreset) get(Question.NOISE), (Double) get(Question.LOUDNESS));
    }

    private static Noise as(NoisePreset preset, Double loudness) {
        Noise noise = preset.noise();
        if (loudness == null) {
            return noise;
        }
        Spectrum levels = noise.levels();
        double by = loudness - AWeighting.total(levels);
        return new Noise(
                levels.plus(by),
                noise.place(),
                noise.distance(),
                Texts.of("first.loudness", preset.name(), EntryText.brief(loudness)));
    }

    /**
     * The project the answers make: without boxes, and its flows following from the need.
     *
     * @param today date of issue
     * @throws InvalidValue if the answers do not go together
     */
    public Project project(LocalDate today) {
        Board board = (Board) get(Question.BOARD);
        boolean inch = units == UnitSystem.INCH;
        Stock stock = new Stock(
                List.of((Sheet) get(Question.SHEET)),
                List.of(presets.linerSheets().get(0)),
                presets.saws().get(0),
                presets.screws().get(0));
        Opening opening = new Opening(
                (Opening.Kind) get(Question.OPENING_KIND),
                (Opening.Surface) get(Question.OPENING_SURFACE),
                (Opening.Beyond) get(Question.OPENING_BEYOND),
                number(Question.OPENING_WIDTH),
                number(Question.OPENING_HEIGHT));
        List<VentPath> paths = new ArrayList<>();
        Drive drive = new Drive(Drive.Kind.GIVEN_FLOW, null, null, null, Assumed.source("firstDrive"));
        paths.add(path(Texts.of("first.in"), Purpose.SUPPLY, opening, noise(), drive, DRIVEN_DROP, board));
        WayOut out = (WayOut) get(Question.WAY_OUT);
        if (out != WayOut.NONE_YET) {
            Opening.Beyond to = out == WayOut.INDOORS ? Opening.Beyond.INDOORS : Opening.Beyond.OUTDOORS;
            Opening second =
                    new Opening(Opening.Kind.WALL_OPENING, Opening.Surface.WALL, to, opening.width(), opening.height());
            Drive pushed = new Drive(Drive.Kind.NOTHING, null, null, null, Assumed.source("firstReturn"));
            Purpose purpose = out == WayOut.INDOORS ? Purpose.RETURN : Purpose.EXHAUST;
            paths.add(
                    path(Texts.of("first.out"), purpose, second, usualNoise(to).noise(), pushed, RoomAir.LIMIT, board));
        }
        TitleBlock block = new TitleBlock(
                Texts.of("first.owner"), inch ? "BOX-1-IN" : "BOX-1", today, Texts.of("first.creator"), null);
        return new Project(Project.FORMAT_VERSION, Texts.of("first.name"), block, units, room(), stock, paths);
    }

    private VentPath path(
            String name, Purpose purpose, Opening opening, Noise noise, Drive drive, double drop, Board board) {
        Construction construction = new Construction(
                board,
                1,
                1,
                (Liner) get(Question.LINER),
                false,
                PortFace.BACK,
                PortFace.FRONT,
                number(Question.HEAVIEST),
                null,
                Joinery.usual(),
                null);
        Brief brief = new Brief(
                opening,
                null,
                drop,
                fastest(DuctVelocity.lastRun(criterion()), FASTEST_IN_PATH),
                fastest(OpeningVelocity.limit(criterion(), purpose == Purpose.SUPPLY), FASTEST_AT_ROOM),
                noise,
                null,
                new Space(number(Question.SPACE_WIDTH), number(Question.SPACE_HEIGHT), number(Question.SPACE_DEPTH)),
                construction,
                null,
                null,
                null,
                null,
                drive,
                null,
                Choices.FREE.withMostLayers(MOST_LAYERS));
        return new VentPath(name, purpose, brief, null);
    }

    /** The NC number the published velocities are looked up by. */
    private double criterion() {
        return target().likeNc().orElse(0);
    }

    /** What is published, but no more than is usual here, to a centimetre a second. */
    private static double fastest(OptionalDouble published, double usual) {
        return Math.floor(100 * Math.min(usual, published.orElse(usual))) / 100;
    }
}
