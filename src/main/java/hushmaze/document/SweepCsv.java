package hushmaze.document;

import hushmaze.assess.PathResult;
import hushmaze.assess.RoomResult;
import hushmaze.project.Box;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.Unit;
import hushmaze.size.NoBox;
import hushmaze.size.SweepRow;
import hushmaze.wording.NoBoxWording;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The rows of a sweep as comma-separated values, one line each: the step, the value, each path's verdicts and figures, the
 * room, and why a value was refused. What is not known is an empty cell.
 */
public final class SweepCsv {
    private static final String ROOM = "room";
    private static final List<String> OF_PATH = List.of(
            "laidOut",
            "quietOk",
            "marginDb",
            "governingBandHz",
            "nc",
            "dbA",
            "airOk",
            "flowLps",
            "pressureDropPa",
            "pressureDropHighPa",
            "fitsOk",
            "widthMm",
            "heightMm",
            "depthMm",
            "passes",
            "clearWidthMm",
            "clearHeightMm",
            "clearLengthMm",
            "buildableOk",
            "massKg",
            "panels",
            "sheets");
    private static final List<String> OF_ROOM =
            List.of("ok", "nc", "dbA", "pressurePa", "flowLps", "co2SteadyPpm", "temperatureRiseK");

    private final Project project;
    private final String field;
    private final boolean whole;

    /**
     * @param project that is swept
     * @param field full name of its number
     * @param whole whether that takes whole numbers only
     */
    public SweepCsv(Project project, String field, boolean whole) {
        this.project = project;
        this.field = field;
        this.whole = whole;
    }

    /** The first line. A path that is called like the room's columns gets its number added. */
    public String head() {
        List<String> names = new ArrayList<>(List.of("step", field));
        for (int i = 0; i < project.paths().size(); i++) {
            VentPath path = project.paths().get(i);
            String prefix = path.name().equals(ROOM) ? path.name() + "[" + i + "]" : path.name();
            OF_PATH.forEach(name -> names.add(prefix + "." + name));
        }
        OF_ROOM.forEach(name -> names.add(ROOM + "." + name));
        names.add("error");
        return Csv.line(names);
    }

    /** What the line of a row starts with, up to and with the comma after its value. */
    public String start(int step, double value) {
        return step + "," + number(value) + ",";
    }

    /** The line of a row. */
    public String line(SweepRow row) {
        List<String> cells = new ArrayList<>();
        if (row.assessment() == null) {
            int empty = project.paths().size() * OF_PATH.size() + OF_ROOM.size();
            cells.addAll(Collections.nCopies(empty, ""));
            cells.add(reason(row.refusal()));
        } else {
            for (int i = 0; i < row.laidOut().size(); i++) {
                cells.add(row.laidOut().get(i).toString());
                cells.addAll(path(row.assessment().paths().get(i)));
            }
            cells.addAll(room(row.assessment().roomOk(), row.assessment().room()));
            cells.add("");
        }
        return start(row.step(), row.value()) + Csv.line(cells);
    }

    private String number(double value) {
        return whole ? String.valueOf((long) value) : Csv.number(value);
    }

    private static List<String> path(PathResult result) {
        Box box = result.path().box();
        return List.of(
                String.valueOf(result.quiet().ok()),
                Csv.number(result.quiet().margin()),
                Csv.number(result.quiet().governing().nominalHz()),
                number(result.quiet().rating().nc().number()),
                Csv.number(result.quiet().rating().dbA()),
                String.valueOf(result.air().ok()),
                Csv.number(Unit.LITRE_PER_SECOND.fromSi(result.pathAir().flow())),
                Csv.number(result.pathAir().pressure()),
                Csv.number(result.pathAir().pressureHigh()),
                String.valueOf(result.fits().ok()),
                Csv.millimetres(result.fits().width()),
                Csv.millimetres(result.fits().height()),
                Csv.millimetres(result.fits().depth()),
                String.valueOf(box.passes()),
                Csv.millimetres(box.clearWidth()),
                Csv.millimetres(box.clearHeight()),
                Csv.millimetres(box.clearLength()),
                String.valueOf(result.buildable().ok()),
                Csv.number(result.buildable().mass()),
                String.valueOf(result.buildable().panels()),
                String.valueOf(result.buildable().sheets()));
    }

    private static List<String> room(boolean ok, RoomResult room) {
        return List.of(
                String.valueOf(ok),
                number(room.rating().nc().number()),
                Csv.number(room.rating().dbA()),
                Csv.number(room.pressure()),
                Csv.number(Unit.LITRE_PER_SECOND.fromSi(room.flow())),
                Csv.number(Unit.PARTS_PER_MILLION.fromSi(room.co2Steady())),
                Csv.number(room.temperatureRise()));
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? Csv.number(value.getAsDouble()) : "";
    }

    /** On one line, so that a line of the file is a row. */
    private static String reason(RuntimeException refusal) {
        String text = refusal instanceof NoBox none
                ? String.join(" ", NoBoxWording.lines(none))
                : String.valueOf(refusal.getMessage());
        return text.replaceAll("[\\r\\n]+", " ");
    }
}
