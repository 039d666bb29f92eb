package hushmaze.document;

import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.build.CutItem;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetPlan;
import hushmaze.drawing.Drawing;
import hushmaze.drawing.Paper;
import hushmaze.drawing.page.PathDrawing;
import hushmaze.drawing.page.TrueSize;
import hushmaze.quantity.UnitSystem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * All documents of a project: the project itself, and for each path a PDF with the summary and every drawing, the cut list, the
 * cuts, the bands and what was measured of them as CSV, the box as a model in three dimensions, and each part and each sheet as SVG in true size.
 */
public final class DocumentSet {
    private final FontMeasure measure = new FontMeasure();
    private final Assessment assessment;
    private final Paper paper;
    private final UnitSystem units;
    private final List<String> bases = new ArrayList<>();

    private final String project;

    private DocumentSet(Assessment assessment, String project, Paper paper, UnitSystem units) {
        this.assessment = assessment;
        this.project = project;
        this.paper = paper;
        this.units = units;
    }

    /**
     * Writes everything. Each file appears only when it is complete.
     *
     * @param project text of the project's file, which whoever opens it makes the same documents from
     * @param folder made if it is not there
     * @param units of the figures in the PDF; CSV and SVG are in millimetres always
     * @param overwrite whether other files of the same names may be replaced; pictures of parts and sheets that an earlier
     *     run made of the same path and this one did not make again are then removed
     * @return the files, in the order written; those that were there already, the very same, too
     * @throws ExportFailure if the folder or a file cannot be written, or another file is there that must not be replaced;
     *     in that last case nothing is written at all
     */
    public static List<Path> write(
            Assessment assessment, String project, Path folder, Paper paper, UnitSystem units, boolean overwrite) {
        DocumentSet set = new DocumentSet(assessment.in(units), project, paper, units);
        Map<String, Outbox.Content> files = set.files();
        Outbox outbox = new Outbox(folder);
        Set<String> there = new HashSet<>();
        if (!overwrite) {
            files.forEach((name, content) -> {
                if (outbox.hasOrRequireFree(name, content)) {
                    there.add(name);
                }
            });
        }
        List<Path> written = new ArrayList<>();
        files.forEach((name, content) ->
                written.add(there.contains(name) ? folder.resolve(name) : outbox.write(name, content)));
        if (overwrite) {
            set.bases.forEach(base -> outbox.removeStale(pictureOf(base), files.keySet()));
        }
        return List.copyOf(written);
    }

    private Map<String, Outbox.Content> files() {
        Map<String, Outbox.Content> files = new LinkedHashMap<>();
        files.put(FileNames.safe(assessment.project().name()) + "_project.json", text(project));
        FileNames names = new FileNames();
        // Drawing takes most of the time, so the paths are drawn at once; each drawing depends on its path alone.
        List<Drawing> drawings = assessment.paths().parallelStream()
                .map(result -> new PathDrawing(assessment, result, paper, units, measure).draw())
                .toList();
        for (int i = 0; i < drawings.size(); i++) {
            PathResult result = assessment.paths().get(i);
            Drawing drawing = drawings.get(i);
            String base = FileNames.safe(assessment.project().name())
                    + "_"
                    + names.unique(result.path().name());
            bases.add(base);
            files.put(base + "_drawings.pdf", out -> new PdfWriter(measure).write(drawing, out));
            files.put(base + "_cut-list.csv", text(CutListCsv.of(result)));
            files.put(base + "_cut-sequence.csv", text(CutSequenceCsv.of(result)));
            files.put(base + "_bands.csv", text(BandsCsv.of(result)));
            MeasuredCsv.of(assessment.project(), result).ifPresent(csv -> files.put(base + "_measured.csv", text(csv)));
            byte[] model = ModelWriter.write(drawing.title(), result);
            files.put(base + "_model.glb", out -> out.write(model));
            pictures(files, base, result);
        }
        return files;
    }

    private void pictures(Map<String, Outbox.Content> files, String base, PathResult result) {
        TrueSize trueSize = new TrueSize(measure, assessment.project().stock().screw());
        SvgWriter svg = new SvgWriter(measure);
        for (CutItem item : result.cutList().items().toList()) {
            files.put(base + "_part-" + FileNames.safe(item.mark()) + ".svg", text(svg.write(trueSize.part(item))));
        }
        int number = 1;
        for (SheetLayout layout : result.layouts()) {
            for (SheetPlan plan : layout.sheets()) {
                String name = base + "_sheet-" + number++ + "-" + FileNames.safe(layout.material()) + ".svg";
                files.put(name, text(svg.write(trueSize.sheet(layout.material(), plan, result.cutList()))));
            }
        }
    }

    /** Names of the pictures of one path. */
    private static Pattern pictureOf(String base) {
        return Pattern.compile(Pattern.quote(base) + "_(part-[BL]\\d+|sheet-\\d+-.+)\\.svg");
    }

    private static Outbox.Content text(String text) {
        return out -> out.write(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
}
