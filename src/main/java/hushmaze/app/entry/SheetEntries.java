package hushmaze.app.entry;

import hushmaze.app.entry.TypedEntry.Size;
import hushmaze.app.model.Designer;
import hushmaze.app.model.EditModel;
import hushmaze.app.model.Field;
import hushmaze.app.model.StockModel;
import hushmaze.app.model.StockModel.Material;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Tip;
import hushmaze.material.Sheet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;

/** The sheets and offcuts parts are cut from, as cards. */
final class SheetEntries {
    private final StockModel stock;
    private final Designer designer;
    private final Entries make;

    SheetEntries(Designer designer, Entries make) {
        this.designer = designer;
        this.stock = designer.stock();
        this.make = make;
    }

    /** All of them, folded. */
    Entry sheets() {
        return new FoldGroup(
                "sheets",
                stock::summary,
                List.of(
                        Words.quiet("stock.words"),
                        Words.heading("stock.boards"),
                        cards(Material.BOARD, () -> designer.presets().boardSheets()),
                        Words.heading("stock.liners"),
                        cards(Material.LINER, () -> designer.presets().linerSheets())));
    }

    private Entry cards(Material of, Supplier<List<Sheet>> presets) {
        String key = "sheet-" + of.name().toLowerCase(Locale.ROOT);
        // every sheet has the same entries
        CardList<Sheet, Boolean> list = new CardList<>(
                key,
                () -> stock.sheets(of),
                sheet -> true,
                (number, same, remove) -> card(of, key, number, remove),
                number -> stock.remove(of, number));
        Button own = new Button(Texts.of("sheet.own"));
        own.setId(key + "-own");
        Tip.on(own, Texts.of("sheet.own.tip"));
        own.setMaxWidth(Double.MAX_VALUE);
        own.setOnAction(e -> list.say(stock.add(of, stock.offcut(of))));
        VBox more = new VBox(
                AddChoice.of(
                        key, () -> stock.more(of, presets.get()), Sheet::name, sheet -> list.say(stock.add(of, sheet))),
                own);
        more.getStyleClass().add("entry-part");
        return list.with(more);
    }

    private Entry card(Material of, String key, int number, Runnable remove) {
        String sheet = of.field() + "." + number + ".";
        return EntryCard.of(
                make.typed(sheet + "name", "sheet.name", Size.LONG),
                AwayButton.of(key, number, remove),
                List.of(
                        new PairEntry(size(sheet, "length"), size(sheet, "width")),
                        new PairEntry(
                                make.typed(sheet + "stock", "sheet.stock", Size.WIDE),
                                make.typed(sheet + "price", "sheet.price", Size.WIDE)),
                        material(of, sheet + "material"),
                        make.typed(sheet + "source", "sheet.source", Size.LONG)));
    }

    /** The one board or liner it is of, or any. */
    private Entry material(Material of, String name) {
        Field field = Field.of(name);
        String key = "sheet.material." + of;
        String label = Texts.of("entry." + key);
        EditModel edit = designer.edit();
        ComboBox<Optional<String>> box = new ComboBox<>();
        return new ChoiceEntry<>(
                new EntryRow(key, name, box, true),
                box,
                () -> stock.materials(of),
                material -> material.orElse(Texts.of("sheet.any." + of)),
                () -> Optional.ofNullable((String) field.get(edit.project(), edit.path())),
                () -> field.isThere(edit.project(), edit.path()),
                material -> edit.set(field, label, material.orElse(null)));
    }

    private Entry size(String sheet, String name) {
        return make.figure(sheet + name, sheet + "source", "sheet." + name, Size.WIDE, Texts.of("source.size"));
    }
}
