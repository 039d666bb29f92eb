package hushmaze.store;

import hushmaze.material.Board;
import hushmaze.material.Facing;
import hushmaze.material.Fan;
import hushmaze.material.Liner;
import hushmaze.material.Saw;
import hushmaze.material.Screw;
import hushmaze.material.Sheet;
import hushmaze.project.EnvelopeElement;
import hushmaze.quantity.InvalidValue;
import java.util.List;
import java.util.function.Function;

/**
 * What comes with the program to choose from. A project keeps copies, so that a change of a preset never changes a
 * project.
 *
 * @param boards sheet materials for panels
 * @param liners porous linings
 * @param boardSheets sizes boards are sold in
 * @param linerSheets sizes linings are sold in
 * @param saws kerfs and trims
 * @param screws with their pilot holes
 * @param targets how quiet a room may have to be
 * @param noises typical noises through a bare opening
 * @param fans to choose from
 * @param facings cloths and films to lay over a lining
 * @param elements what a room's envelope may have besides its vents
 */
public record Presets(
        List<Board> boards,
        List<Liner> liners,
        List<Sheet> boardSheets,
        List<Sheet> linerSheets,
        List<Saw> saws,
        List<Screw> screws,
        List<TargetPreset> targets,
        List<NoisePreset> noises,
        List<Fan> fans,
        List<Facing> facings,
        List<EnvelopeElement> elements) {
    record BoardsFile(List<Board> boards) {}

    record LinersFile(List<Liner> liners) {}

    record SheetsFile(List<Sheet> boardSheets, List<Sheet> linerSheets) {}

    record SawsFile(List<Saw> saws) {}

    record ScrewsFile(List<Screw> screws) {}

    record TargetsFile(List<TargetPreset> targets) {}

    record NoisesFile(List<NoisePreset> noises) {}

    record FansFile(List<Fan> fans) {}

    record FacingsFile(List<Facing> facings) {}

    record ElementsFile(List<EnvelopeElement> elements) {}

    public Presets {
        boards = List.copyOf(boards);
        liners = List.copyOf(liners);
        boardSheets = List.copyOf(boardSheets);
        linerSheets = List.copyOf(linerSheets);
        saws = List.copyOf(saws);
        screws = List.copyOf(screws);
        targets = List.copyOf(targets);
        noises = List.copyOf(noises);
        fans = List.copyOf(fans);
        facings = List.copyOf(facings);
        elements = List.copyOf(elements);
    }

    /** Reads the presets of the program from the class path. */
    public static Presets load() {
        SheetsFile sheets = BundledFile.read("presets/sheets.json", SheetsFile.class);
        return new Presets(
                BundledFile.read("presets/boards.json", BoardsFile.class).boards(),
                BundledFile.read("presets/liners.json", LinersFile.class).liners(),
                sheets.boardSheets(),
                sheets.linerSheets(),
                BundledFile.read("presets/saws.json", SawsFile.class).saws(),
                BundledFile.read("presets/screws.json", ScrewsFile.class).screws(),
                BundledFile.read("presets/targets.json", TargetsFile.class).targets(),
                BundledFile.read("presets/noises.json", NoisesFile.class).noises(),
                BundledFile.read("presets/fans.json", FansFile.class).fans(),
                BundledFile.read("presets/facings.json", FacingsFile.class).facings(),
                BundledFile.read("presets/elements.json", ElementsFile.class).elements());
    }

    public Board board(String name) {
        return find("board", boards, Board::name, name);
    }

    public Liner liner(String name) {
        return find("liner", liners, Liner::name, name);
    }

    public Sheet boardSheet(String name) {
        return find("board sheet", boardSheets, Sheet::name, name);
    }

    public Sheet linerSheet(String name) {
        return find("liner sheet", linerSheets, Sheet::name, name);
    }

    public Saw saw(String name) {
        return find("saw", saws, Saw::name, name);
    }

    public Screw screw(String name) {
        return find("screw", screws, Screw::name, name);
    }

    public TargetPreset target(String name) {
        return find("target", targets, TargetPreset::name, name);
    }

    public NoisePreset noise(String name) {
        return find("noise", noises, NoisePreset::name, name);
    }

    public Facing facing(String name) {
        return find("facing", facings, Facing::name, name);
    }

    public Fan fan(String name) {
        return find("fan", fans, Fan::name, name);
    }

    public EnvelopeElement element(String name) {
        return find("element", elements, EnvelopeElement::name, name);
    }

    private static <T> T find(String kind, List<T> list, Function<T, String> naming, String name) {
        return list.stream()
                .filter(item -> naming.apply(item).equals(name))
                .findFirst()
                .orElseThrow(() -> new InvalidValue(
                        kind,
                        "\"" + name + "\"",
                        "one of " + String.join(", ", list.stream().map(naming).toList()),
                        ""));
    }
}
