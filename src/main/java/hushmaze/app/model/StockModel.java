package hushmaze.app.model;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.material.Sheet;
import hushmaze.project.Box;
import hushmaze.project.Construction;
import hushmaze.project.Stock;
import hushmaze.project.VentPath;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The sheets and offcuts that parts are cut from: added, taken out; one of each material at least stays. */
public final class StockModel {
    /** Longest and shortest side of an offcut nobody has measured yet, m. */
    private static final double OFFCUT_LENGTH = 1.2;

    private static final double OFFCUT_WIDTH = 0.6;

    /** What sheets are of. */
    public enum Material {
        BOARD("stock.boardSheets", Stock::boardSheets),
        LINER("stock.linerSheets", Stock::linerSheets);

        private final String field;
        private final Function<Stock, List<Sheet>> list;

        Material(String field, Function<Stock, List<Sheet>> list) {
            this.field = field;
            this.list = list;
        }

        /** Name of the list in a project. */
        public String field() {
            return field;
        }
    }

    private final EditModel edit;

    StockModel(EditModel edit) {
        this.edit = edit;
    }

    /** The sheets there are. */
    public List<Sheet> sheets(Material of) {
        return of.list.apply(edit.project().stock());
    }

    /** Those of some sheets that are not there. */
    public List<Sheet> more(Material of, List<Sheet> presets) {
        List<Sheet> there = sheets(of);
        return presets.stream().filter(sheet -> !there.contains(sheet)).toList();
    }

    /** Puts one more at the end; gives back why not, if so. */
    public Optional<String> add(Material of, Sheet sheet) {
        List<Sheet> all = new ArrayList<>(sheets(of));
        all.add(sheet);
        return set(of, Texts.of("edit.element.add", sheet.name()), all);
    }

    /** One piece of a size of the user's own, to be measured. */
    public Sheet offcut(Material of) {
        List<String> names = sheets(of).stream().map(Sheet::name).toList();
        String name = IntStream.iterate(1, i -> i + 1)
                .mapToObj(i -> Texts.of("stock.offcut", String.valueOf(i)))
                .filter(free -> !names.contains(free))
                .findFirst()
                .orElseThrow();
        Construction made = edit.project().paths().get(edit.path()).brief().construction();
        String material =
                of == Material.BOARD ? made.board().name() : made.liner().name();
        return new Sheet(name, OFFCUT_LENGTH, OFFCUT_WIDTH, null, 1, material, Assumed.source("offcut"));
    }

    /** Takes one out by its number; gives back why not, if so. */
    public Optional<String> remove(Material of, int number) {
        List<Sheet> all = new ArrayList<>(sheets(of));
        Sheet gone = all.remove(number);
        return all.isEmpty()
                ? Optional.of(Texts.of("stock.last"))
                : set(of, Texts.of("edit.element.remove", gone.name()), all);
    }

    /** Any, then every board or liner by name that the project's paths and boxes are made of or may be. */
    public List<Optional<String>> materials(Material of) {
        Stream<String> names =
                edit.project().paths().stream().flatMap(path -> of == Material.BOARD ? boards(path) : liners(path));
        return Stream.concat(
                        Stream.of(Optional.<String>empty()), names.distinct().map(Optional::of))
                .toList();
    }

    private static Stream<String> boards(VentPath path) {
        Stream<Board> all = Stream.concat(
                Stream.of(path.brief().construction().board()), path.brief().choicesOrFree().boards().stream());
        Box box = path.box();
        Stream<Board> ofBox =
                box == null ? Stream.of() : Stream.concat(box.shell().stream(), Stream.of(box.baffleBoard()));
        return Stream.concat(all, ofBox).map(Board::name);
    }

    private static Stream<String> liners(VentPath path) {
        Stream<Liner> all = Stream.concat(
                Stream.of(path.brief().construction().liner()), path.brief().choicesOrFree().liners().stream());
        Stream<Liner> ofBox =
                path.box() == null ? Stream.of() : Stream.ofNullable(path.box().liner());
        return Stream.concat(all, ofBox).map(Liner::name);
    }

    /** What there is, in one line. */
    public String summary() {
        return Texts.of("summary.stock", summary(Material.BOARD), summary(Material.LINER));
    }

    private String summary(Material of) {
        List<Sheet> all = sheets(of);
        String kind = Texts.of("stock." + of);
        return all.size() == 1
                ? Texts.of("summary.stock.one", kind, all.get(0).name())
                : Texts.of("summary.stock.many", kind, String.valueOf(all.size()));
    }

    private Optional<String> set(Material of, String what, List<Sheet> all) {
        Field field = Field.of(of.field());
        return edit.change(field, Texts.of("stock." + of), what, p -> field.with(p, 0, all));
    }
}
