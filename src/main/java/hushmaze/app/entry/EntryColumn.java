package hushmaze.app.entry;

import hushmaze.app.model.Designer;
import hushmaze.app.model.EditModel;
import hushmaze.app.model.EntryPlace;
import hushmaze.app.model.PathsModel;
import hushmaze.app.model.Texts;
import hushmaze.material.Board;
import hushmaze.project.MouthPosition;
import hushmaze.project.Noise;
import hushmaze.project.Target;
import hushmaze.store.NoisePreset;
import hushmaze.store.Presets;
import hushmaze.store.TargetPreset;
import hushmaze.wording.Wording;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.scene.control.Accordion;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** All entries, in the order a builder comes to them; one group is open at a time. */
public final class EntryColumn extends VBox {
    private final EditModel edit;
    private final Entries make;
    private final Presets presets;
    private final ExtraEntries extra;
    private final AirEntries air;
    private final JointEntries joints;
    private final ChoicesEntries choices;
    private final LinerEntries liners;
    private final MaterialEntries figures;
    private final SheetEntries sheets;
    private final PathsModel paths;
    private final Designer designer;
    private final Accordion groups = new Accordion();
    /** What makes the entries of the groups that were not opened yet. */
    private final Map<TitledPane, Supplier<VBox>> makers = new HashMap<>();

    private final List<Entry> entries = new ArrayList<>();

    /** @param later for the entries of the group that is open at first */
    public EntryColumn(Designer designer, Executor later) {
        this.designer = designer;
        this.edit = designer.edit();
        this.make = new Entries(edit);
        this.presets = designer.presets();
        this.extra = new ExtraEntries(designer, make);
        this.air = new AirEntries(designer, make);
        this.joints = new JointEntries(designer, make);
        this.choices = new ChoicesEntries(designer, make, this::boardName);
        this.liners = new LinerEntries(designer, make);
        this.figures = new MaterialEntries(designer, make);
        this.sheets = new SheetEntries(designer, make);
        this.paths = designer.paths();
        getStyleClass().add("entry-column");
        Label heading = new Label(Texts.of("entries.heading"));
        heading.getStyleClass().add("column-heading");
        getChildren().addAll(heading, groups);
        VBox.setVgrow(groups, Priority.ALWAYS);
        room();
        opening();
        noise();
        space();
        materials();
        box();
        add("extras", extra::all);
        drawings();
        groups.setExpandedPane(groups.getPanes().get(0));
        groups.getPanes()
                .forEach(pane -> pane.expandedProperty().addListener((p, before, open) -> {
                    if (open) {
                        fill(pane);
                    }
                }));
        later.execute(
                () -> groups.getPanes().stream().filter(TitledPane::isExpanded).forEach(this::fill));
        edit.projectProperty().addListener((p, before, after) -> entries.forEach(Entry::refresh));
        edit.pathProperty().addListener((p, before, after) -> entries.forEach(Entry::refresh));
    }

    private void room() {
        add(
                "room",
                () -> List.of(
                        make.text("room.name"),
                        make.typed("room.volume"),
                        make.typed("room.people"),
                        make.typed("room.co2PerPerson"),
                        make.typed("room.outdoorCo2"),
                        make.typed("room.heatGain"),
                        make.typed("room.microphoneDistance"),
                        octaves("room.absorptionArea", null),
                        make.typed("room.airTemperature"),
                        make.typed("room.altitude"),
                        air.use(),
                        air.leaks()));
    }

    private void opening() {
        add(
                "opening",
                () -> List.of(
                        make.text("path.name"),
                        make.choice("path.purpose"),
                        make.choice("path.brief.opening.kind"),
                        make.choice("path.brief.opening.surface"),
                        make.choice("path.brief.opening.beyond"),
                        make.typed("path.brief.opening.width"),
                        make.typed("path.brief.opening.height"),
                        make.typed("path.brief.flow"),
                        make.typed("path.brief.maxPressureDrop"),
                        make.typed("path.brief.maxPathVelocity"),
                        make.typed("path.brief.maxOpeningVelocity"),
                        make.choiceOr("path.brief.roomMouth", MouthPosition.MIDDLE_OF_SURFACE),
                        air.drive(),
                        air.fittings(),
                        new PressEntry("path-remove", "paths.remove", paths::remove, paths::mayRemove)));
    }

    private void noise() {
        add("noise", () -> {
            List<Noise> noises =
                    presets.noises().stream().map(NoisePreset::noise).toList();
            List<Target> targets =
                    presets.targets().stream().map(TargetPreset::target).toList();
            List<Entry> rows = new ArrayList<>(List.of(
                    make.chosen("path.brief.noise", true, noises, this::noiseName),
                    octaves("path.brief.noise.levels", null),
                    make.choice("path.brief.noise.place"),
                    make.typed("path.brief.noise.distance"),
                    make.chosen("room.target", true, targets, this::targetName)));
            rows.addAll(extra.target("room.target"));
            rows.addAll(extra.ownNoise());
            rows.add(make.typed("path.brief.noiseShare"));
            return rows;
        });
    }

    private void box() {
        addGroup("box", () -> {
            BoxSizes box = new BoxSizes(designer, make, joints);
            entries.add(box);
            return box.node();
        });
    }

    private Entry octaves(String name, String source) {
        return make.octaves(name, source, name, name, false);
    }

    private void drawings() {
        add(
                "drawings",
                () -> List.of(
                        make.text("name"),
                        make.text("titleBlock.owner"),
                        make.typed("titleBlock.number"),
                        make.typed("titleBlock.date"),
                        make.typed("titleBlock.creator"),
                        make.typed("titleBlock.approver")));
    }

    private String noiseName(Noise noise) {
        return presets.noises().stream()
                .filter(p -> p.noise().equals(noise))
                .map(NoisePreset::name)
                .findFirst()
                .orElseGet(() -> Texts.of("entry.ownNoiseGiven"));
    }

    private String targetName(Target target) {
        return presets.targets().stream()
                .filter(p -> p.target().equals(target))
                .map(TargetPreset::name)
                .findFirst()
                .orElseGet(() -> Texts.of("entry.ownTargetGiven", Texts.word(target.kind())));
    }

    private void space() {
        add(
                "space",
                () -> List.of(
                        make.typed("path.brief.space.width"),
                        make.typed("path.brief.space.height"),
                        make.typed("path.brief.space.depth")));
    }

    private void materials() {
        add(
                "materials",
                () -> List.of(
                        make.chosen("path.brief.construction.board", true, presets.boards(), this::boardName),
                        make.thickness("path.brief.construction.board"),
                        new ResultWords(designer, "board-words", Wording::boards),
                        figures.board(),
                        make.typed("path.brief.construction.shellLayers"),
                        make.typed("path.brief.construction.baffleLayers"),
                        liners.liner(),
                        liners.facing(),
                        liners.figures(),
                        figures.liner(),
                        make.yesNo("path.brief.construction.linedBroadFaces"),
                        make.choice("path.brief.construction.openingFace"),
                        make.choice("path.brief.construction.roomFace"),
                        make.typed("path.brief.construction.maxMass"),
                        sheets.sheets(),
                        figures.tools(),
                        choices.all(),
                        joints.joinery(),
                        joints.doorway(),
                        extra.mounting()));
    }

    private String boardName(Board board) {
        if (presets.boards().contains(board)) {
            return board.name();
        }
        boolean figures = presets.boards().stream()
                .anyMatch(b -> b.name().equals(board.name()) && b.thickness() == board.thickness());
        return figures
                ? Texts.of("entry.ownFigures", board.name())
                : Texts.of("entry.ownBoard", board.name(), edit.thickness(board.thickness()));
    }

    private void add(String key, Supplier<List<Entry>> rows) {
        addGroup(key, () -> {
            VBox content = new VBox();
            content.getStyleClass().add("entry-group");
            Texts.find("group." + key + ".words")
                    .ifPresent(text -> content.getChildren().add(words(text)));
            for (Entry row : rows.get()) {
                content.getChildren().add(row.node());
                entries.add(row);
            }
            return content;
        });
    }

    /** Opens what an entry is in, brings it into sight and puts the cursor there. */
    public void show(EntryPlace place) {
        TitledPane group = groups.getPanes().stream()
                .filter(pane -> pane.getId().equals("group-" + place.group()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no group " + place.group()));
        groups.setExpandedPane(group);
        fill(group);
        settle();
        if (place.fold() != null && group.lookup("#fold-" + place.fold()) instanceof TitledPane fold) {
            fold.setExpanded(true);
            settle();
        }
        new SoughtEntry(group, place).show();
    }

    /** So that what was opened has its place before something in it is looked for; long texts take their lines once laid out. */
    private void settle() {
        applyCss();
        layout();
        layout();
    }

    private static Label words(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.getStyleClass().add("quiet-words");
        return label;
    }

    /** What is in a group is made when it is first opened: all of them would take longer than the rest of the window. */
    private void addGroup(String key, Supplier<VBox> content) {
        TitledPane pane = new TitledPane();
        pane.setText(Texts.of("group." + key));
        pane.setExpanded(false);
        pane.setAnimated(false);
        pane.setMnemonicParsing(true);
        pane.setId("group-" + key);
        makers.put(pane, content);
        groups.getPanes().add(pane);
    }

    private void fill(TitledPane pane) {
        Supplier<VBox> content = makers.remove(pane);
        if (content != null) {
            ScrollPane scroll = new ScrollPane(content.get());
            scroll.setFitToWidth(true);
            scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
            pane.setContent(scroll);
        }
    }
}
