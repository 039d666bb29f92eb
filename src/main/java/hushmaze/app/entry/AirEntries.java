package hushmaze.app.entry;

import hushmaze.app.entry.TypedEntry.Size;
import hushmaze.app.model.AirModel;
import hushmaze.app.model.Designer;
import hushmaze.app.model.EditModel;
import hushmaze.app.model.Extra;
import hushmaze.app.model.ExtrasModel;
import hushmaze.app.model.Field;
import hushmaze.app.model.PointsText;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Tip;
import hushmaze.material.Fan;
import hushmaze.project.Drive;
import hushmaze.project.Fitting;
import hushmaze.project.Session;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.scene.control.Button;

/** The entries about air, each group folded: what moves it, what it passes at the ends, who needs it, where it leaks. */
final class AirEntries {
    private static final String DRIVE = "path.brief.drive.";
    private static final String USE = "room.use.";
    private static final String DOOR = "room.door.";
    private static final String LEAKAGE = "room.leakage.";
    private static final String FILLED_IN = "extras.assumedTillSource";

    private final EditModel edit;
    private final ExtrasModel extras;
    private final AirModel air;
    private final Entries make;
    private final Switches switches;
    private final List<Fan> fans;

    AirEntries(Designer designer, Entries make) {
        this.edit = designer.edit();
        this.extras = designer.extras();
        this.air = designer.air();
        this.make = make;
        this.switches = new Switches(extras);
        this.fans = designer.presets().fans();
    }

    /** What moves the air through the path. */
    Entry drive() {
        Field kind = Field.of(DRIVE + "kind");
        String label = Texts.of("entry." + DRIVE + "kind");
        List<Entry> inside = new ArrayList<>();
        inside.add(switches.assumed(Extra.DRIVE, FILLED_IN));
        inside.add(make.chosen(
                DRIVE + "kind",
                DRIVE + "kind",
                true,
                Arrays.asList(Drive.Kind.values()),
                Texts::word,
                k -> air.setDriveKind(label, k)));
        for (Drive.Kind each : Drive.Kind.values()) {
            List<Entry> parts = new ArrayList<>(List.of(Words.quiet("drive." + each)));
            parts.addAll(ofKind(each));
            inside.add(new Shown(() -> kind.get(edit.project(), edit.path()) == each, parts));
        }
        inside.add(make.longText(DRIVE + "source"));
        return new FoldGroup(
                        "drive",
                        air::driveSummary,
                        List.of(switches.turn(Extra.DRIVE), switches.when(Extra.DRIVE, inside)))
                .narrow();
    }

    private List<Entry> ofKind(Drive.Kind kind) {
        return switch (kind) {
            case NOTHING, GIVEN_FLOW -> List.of();
            case GIVEN_PRESSURE -> List.of(make.typedFrom(DRIVE + "pressure", DRIVE + "source"));
            case FAN_CURVE -> fan();
        };
    }

    private List<Entry> fan() {
        String fan = DRIVE + "fan";
        PointsText points = new PointsText(edit, Field.of(fan + ".points"), Field.of(fan + ".source"));
        return List.of(
                make.chosen(fan, true, fans, AirEntries::shortName),
                make.longText(fan + ".name"),
                make.points(fan + ".points", points),
                Words.quiet(() -> Texts.of("points.units", points.flowUnit(), points.pressureUnit())),
                make.longText(fan + ".source"),
                make.typed(DRIVE + "speed"));
    }

    /** Without what the source below says too, so that it fits. */
    private static String shortName(Fan fan) {
        return fan.name().replace(" (invented)", "");
    }

    /** What the air passes at the ends of the box. */
    Entry fittings() {
        return new FoldGroup("fittings", air::fittingsSummary, List.of(Words.quiet("fittings.words"), fittingCards()))
                .narrow();
    }

    private Entry fittingCards() {
        CardList<Fitting, Fitting.Kind> list = new CardList<>(
                "fitting",
                air::fittings,
                Fitting::kind,
                (number, kind, remove) -> new FittingCard(air, make, number, kind, remove),
                air::removeFitting);
        return list.with(AddChoice.of(
                "fitting", Arrays.asList(Fitting.Kind.values()), Texts::word, kind -> list.say(air.addFitting(kind))));
    }

    /** What goes on in the room. */
    Entry use() {
        List<Entry> inside = new ArrayList<>(List.of(
                switches.assumed(Extra.USE, FILLED_IN),
                Words.quiet("use.words"),
                make.wideChoice(USE + "activity"),
                make.wideChoice(USE + "rule")));
        for (String amount : List.of(
                "floorArea",
                "co2Limit",
                "startCo2",
                "lights",
                "machines",
                "sun",
                "supplyTemperature",
                "highestTemperature")) {
            inside.add(make.typed(USE + amount));
        }
        inside.add(switches.turn(Extra.WALLS));
        inside.add(switches.when(
                Extra.WALLS,
                List.of(make.typed(USE + "walls.conductance"), make.typed(USE + "walls.outsideTemperature"))));
        inside.add(Words.heading("use.timetable"));
        inside.add(Words.quiet("use.timetable.words"));
        inside.add(timetable());
        inside.add(make.longText(USE + "source"));
        return new FoldGroup(
                        "use",
                        () -> extras.summary(Extra.USE),
                        List.of(switches.turn(Extra.USE), switches.when(Extra.USE, inside)))
                .narrow();
    }

    private Entry timetable() {
        Button more = new Button(Texts.of("session.add"));
        more.setId("session-add");
        Tip.on(more, Texts.of("session.add.tip"));
        more.setMaxWidth(Double.MAX_VALUE);
        // every time has the same entries
        CardList<Session, Boolean> list = new CardList<>(
                "session",
                air::timetable,
                session -> true,
                (number, same, remove) -> new SessionCard(edit, number, remove),
                air::removeSession);
        more.setOnAction(e -> list.say(air.addSession()));
        return list.with(more);
    }

    /** Where the room leaks. */
    Entry leaks() {
        return new FoldGroup(
                        "leaks",
                        air::leaksSummary,
                        List.of(
                                switches.turn(Extra.DOOR),
                                switches.when(
                                        Extra.DOOR,
                                        List.of(
                                                switches.assumed(Extra.DOOR, FILLED_IN),
                                                make.typed(DOOR + "length"),
                                                make.typed(DOOR + "width"),
                                                make.typed(DOOR + "depth"),
                                                switches.turn(Extra.UNDERCUT),
                                                switches.when(
                                                        Extra.UNDERCUT,
                                                        List.of(
                                                                make.typed(
                                                                        DOOR + "undercutLength",
                                                                        "door.undercutLength",
                                                                        "undercut.length",
                                                                        Size.BESIDE),
                                                                make.typed(DOOR + "undercutHeight"))),
                                                make.longText(DOOR + "source"))),
                                switches.turn(Extra.LEAKAGE),
                                switches.when(
                                        Extra.LEAKAGE,
                                        List.of(
                                                switches.assumed(Extra.LEAKAGE, FILLED_IN),
                                                make.typed(LEAKAGE + "flow"),
                                                make.typed(LEAKAGE + "pressure"),
                                                make.typed(LEAKAGE + "exponent"),
                                                make.longText(LEAKAGE + "source"))),
                                make.typed("room.outsidePressure")))
                .narrow();
    }
}
