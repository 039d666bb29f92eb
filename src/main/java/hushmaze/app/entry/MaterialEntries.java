package hushmaze.app.entry;

import hushmaze.app.entry.TypedEntry.Size;
import hushmaze.app.model.Designer;
import hushmaze.app.model.EditModel;
import hushmaze.app.model.Field;
import hushmaze.app.model.LinerFigures;
import hushmaze.app.model.Texts;
import hushmaze.material.Saw;
import hushmaze.material.Screw;
import hushmaze.store.Presets;
import java.util.ArrayList;
import java.util.List;

/** The figures of board, liner, saw and screw: those of the presets until something better is known. */
final class MaterialEntries {
    private static final String BOARD = "path.brief.construction.board";
    private static final String LINER = "path.brief.construction.liner";
    private static final String SAW = "stock.saw";
    private static final String SCREW = "stock.screw";

    private final EditModel edit;
    private final Entries make;
    private final Presets presets;

    MaterialEntries(Designer designer, Entries make) {
        this.edit = designer.edit();
        this.make = make;
        this.presets = designer.presets();
    }

    /** What is known of the board, folded. */
    Entry board() {
        List<Entry> rows = new ArrayList<>();
        rows.add(make.text(BOARD + ".name"));
        for (String figure : List.of("density", "youngModulus", "lossFactor")) {
            rows.add(figure(BOARD, figure));
        }
        rows.add(make.yesNo(BOARD + ".grain"));
        rows.add(make.longText(BOARD + ".source"));
        return new FoldGroup("board", () -> Texts.of("summary.board", shown(BOARD + ".density")), rows);
    }

    /** What is known of the liner, folded. */
    Entry liner() {
        LinerFigures figures = new LinerFigures(edit, Field.of(LINER));
        String likely = LINER + ".flowResistivity";
        String label = Texts.of("entry." + likely);
        List<Entry> rows = new ArrayList<>();
        rows.add(make.text(LINER + ".name"));
        rows.add(figure(LINER, "thickness"));
        rows.add(make.typed(likely, text -> figures.enterResistivity(Field.of(likely), label, text)));
        for (String figure : List.of("flowResistivityLow", "flowResistivityHigh", "density", "roughness")) {
            rows.add(figure(LINER, figure));
        }
        rows.add(make.longText(LINER + ".source"));
        return new FoldGroup(
                "liner", () -> Texts.of("summary.liner", shown(LINER + ".thickness"), shown(likely)), rows);
    }

    /** Saw and screws, with their figures, folded. */
    Entry tools() {
        return new FoldGroup(
                "tools",
                () -> Texts.of("summary.tools", shown(SAW + ".name"), shown(SCREW + ".name")),
                List.of(
                        make.chosen(SAW, true, presets.saws(), Saw::name),
                        make.text(SAW + ".name"),
                        figure(SAW, "kerf"),
                        figure(SAW, "trim"),
                        make.longText(SAW + ".source"),
                        make.chosen(SCREW, true, presets.screws(), Screw::name),
                        make.text(SCREW + ".name"),
                        figure(SCREW, "diameter"),
                        figure(SCREW, "length"),
                        figure(SCREW, "pilot"),
                        make.longText(SCREW + ".source")));
    }

    private Entry figure(String material, String figure) {
        String name = material + "." + figure;
        return make.figure(name, material + ".source", name, Size.BESIDE, Texts.of("source.figure"));
    }

    private String shown(String name) {
        Field field = Field.of(name);
        return field.isThere(edit.project(), edit.path()) ? edit.shown(field) : "";
    }
}
