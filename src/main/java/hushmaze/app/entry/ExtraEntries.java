package hushmaze.app.entry;

import hushmaze.app.model.Designer;
import hushmaze.app.model.EditModel;
import hushmaze.app.model.Extra;
import hushmaze.app.model.ExtrasModel;
import hushmaze.app.model.Field;
import hushmaze.app.model.Texts;
import hushmaze.project.DuctRun;
import hushmaze.project.EnvelopeElement;
import hushmaze.project.Mounting;
import hushmaze.project.Outgoing;
import hushmaze.project.Target;
import hushmaze.wording.Wording;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The entries of what a project may leave out: fan, envelope, listeners outside, shared duct. */
final class ExtraEntries {
    private static final String OUT = "path.brief.outgoing.";
    private static final String DUCT = "path.brief.sharedDuct.";

    private final EditModel edit;
    private final ExtrasModel extras;
    private final Entries make;
    private final Designer designer;
    private final Switches switches;

    ExtraEntries(Designer designer, Entries make) {
        this.designer = designer;
        this.edit = designer.edit();
        this.extras = designer.extras();
        this.make = make;
        this.switches = new Switches(extras);
    }

    /** All groups, each folded. */
    List<Entry> all() {
        return List.of(
                Words.heading("extras.path"),
                group("fan", Extra.FAN, fan()),
                group("outgoing", Extra.OUTGOING, outgoing()),
                group("sharedDuct", Extra.SHARED_DUCT, sharedDuct()),
                Words.heading("extras.room"),
                group("envelope", Extra.ENVELOPE, envelope()));
    }

    /** How a hanging box is fixed, and what comes of it. */
    Entry mounting() {
        String of = "path.brief.construction.mounting.";
        Field into = Field.of(of + "into");
        List<Entry> screws = List.of(
                make.wideChoice(of + "timber"),
                make.wideChoice(of + "screw"),
                make.typed(of + "thread"),
                make.typed(of + "screwsPerRow"),
                make.typed(of + "rowDistance"),
                make.typed(of + "cleat"),
                make.typed(of + "studSpacing"),
                make.typed(of + "cleatLength"));
        List<Entry> all = List.of(
                make.wideChoiceOr(of + "into", Mounting.Into.STUDS),
                new Shown(() -> value(into) == null || value(into) == Mounting.Into.STUDS, screws),
                make.yesNo(of + "abovePeople"),
                make.longText(of + "source"));
        return group(
                "mounting",
                Extra.MOUNTING,
                all,
                List.of(Words.heading("extras.fixing"), new ResultWords(designer, "fixing-words", Wording::fixing)));
    }

    /** What the room has of noise by itself: a switch with its levels. */
    List<Entry> ownNoise() {
        return List.of(
                switches.turn(Extra.OWN_NOISE),
                switches.when(Extra.OWN_NOISE, List.of(levels("room.ownNoise", null, "grid.ownNoise"))));
    }

    /** Kind of a target, and its number or limits. */
    List<Entry> target(String name) {
        Field target = Field.of(name);
        Field kind = Field.of(name + ".kind");
        String label = Texts.of("entry." + name + ".kind");
        return List.of(
                chosen(name + ".kind", Target.Kind.values(), v -> extras.setTargetKind(target, label, v)),
                new Shown(
                        () -> there(kind) && value(kind) != Target.Kind.SPECTRUM,
                        List.of(make.typed(name + ".number"))),
                new Shown(
                        () -> value(kind) == Target.Kind.SPECTRUM,
                        List.of(levels(name + ".spectrum", name + ".source", name + ".spectrum"))));
    }

    private Entry group(String key, Extra extra, List<Entry> entries) {
        return group(key, extra, entries, List.of());
    }

    /** @param always entries that are there whether it is on or not */
    private Entry group(String key, Extra extra, List<Entry> entries, List<Entry> always) {
        List<Entry> all = new ArrayList<>();
        all.add(switches.turn(extra));
        List<Entry> inside = new ArrayList<>();
        inside.add(switches.assumed(extra, "extras.assumed"));
        inside.addAll(entries);
        all.add(switches.when(extra, inside));
        all.addAll(always);
        return new FoldGroup(key, () -> extras.summary(extra), all);
    }

    private List<Entry> fan() {
        return List.of(
                make.text("path.brief.fan.name"),
                make.choice("path.brief.fan.side"),
                levels("path.brief.fan.power", "path.brief.fan.source", "path.brief.fan.power"),
                make.longText("path.brief.fan.source"));
    }

    private List<Entry> outgoing() {
        Field receiver = Field.of(OUT + "receiver");
        String label = Texts.of("entry." + OUT + "receiver");
        List<Entry> entries = new ArrayList<>(List.of(
                levels(OUT + "levelInRoom", OUT + "source", OUT + "levelInRoom"),
                chosen(OUT + "receiver", Outgoing.Receiver.values(), v -> extras.setReceiver(label, v)),
                make.choice(OUT + "position"),
                make.typed(OUT + "distance"),
                new Shown(
                        () -> value(receiver) == Outgoing.Receiver.ROOM,
                        List.of(levels(OUT + "absorptionArea", null, OUT + "absorptionArea")))));
        entries.addAll(target(OUT + "limit"));
        entries.add(make.longText(OUT + "source"));
        return entries;
    }

    private List<Entry> sharedDuct() {
        List<Entry> entries = new ArrayList<>(List.of(
                make.text(DUCT + "room"),
                levels(DUCT + "levelThere", DUCT + "source", DUCT + "levelThere"),
                make.typed(DUCT + "openingArea"),
                make.choice(DUCT + "position"),
                Words.quiet("extras.run")));
        entries.addAll(run());
        entries.add(switches.turn(Extra.TALK_BACK));
        List<Entry> back = new ArrayList<>(List.of(
                levels(DUCT + "levelHere", DUCT + "source", "grid.levelHere"),
                make.typed(DUCT + "distance"),
                levels(DUCT + "absorptionArea", null, DUCT + "absorptionArea")));
        back.addAll(target(DUCT + "limit"));
        entries.add(switches.when(Extra.TALK_BACK, back));
        entries.add(make.longText(DUCT + "source"));
        return entries;
    }

    private List<Entry> run() {
        Field kind = Field.of(DUCT + "run.kind");
        String label = Texts.of("entry." + DUCT + "run.kind");
        return List.of(
                chosen(DUCT + "run.kind", DuctRun.Kind.values(), v -> extras.setDuctKind(label, v)),
                make.typed(DUCT + "run.length"),
                make.typed(DUCT + "run.width"),
                new Shown(
                        () -> there(kind) && value(kind) != DuctRun.Kind.ROUND_SHEET,
                        List.of(make.typed(DUCT + "run.height"), make.typed(DUCT + "run.linerThickness"))),
                make.numbers(DUCT + "run.branchShares"));
    }

    /** Walls, doors, windows and gaps: one card each, and a list to take more from. */
    private Entry elements() {
        CardList<EnvelopeElement, ElementCard.Shape> list = new CardList<>(
                "element",
                extras::elements,
                ElementCard.Shape::of,
                (number, shape, remove) -> new ElementCard(edit, make, number, shape, remove),
                extras::removeElement);
        return list.with(AddChoice.of(
                "element",
                designer.presets().elements(),
                EnvelopeElement::name,
                chosen -> list.say(extras.addElement(chosen))));
    }

    private List<Entry> envelope() {
        return List.of(
                elements(),
                switches.turn(Extra.OUTSIDE_LEVEL),
                switches.when(
                        Extra.OUTSIDE_LEVEL,
                        List.of(
                                levels(
                                        "room.envelope.outsideLevel",
                                        "room.envelope.outsideSource",
                                        "grid.outsideLevel"),
                                make.longText("room.envelope.outsideSource"))));
    }

    private Entry levels(String name, String source, String key) {
        return make.octaves(name, source, key, name, false);
    }

    private <T extends Enum<?>> Entry chosen(String name, T[] options, Function<T, Optional<String>> take) {
        return make.chosen(name, name, false, Arrays.asList(options), Texts::word, take);
    }

    private boolean there(Field field) {
        return value(field) != null;
    }

    private Object value(Field field) {
        return field.get(edit.project(), edit.path());
    }
}
