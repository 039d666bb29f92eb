package hushmaze.app.model;

import hushmaze.material.Fan;
import hushmaze.project.Project;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The points of a fan's curve in one entry: flow and pressure of each in the project's units, a semicolon between points.
 * Any unit may be typed after a number. Points that are left as they were shown keep all their digits.
 */
public final class PointsText {
    private static final String NUMBER = "[-+]?[0-9.,]+(?:[eE][-+]?[0-9]+)?";
    private static final String AMOUNT = "(" + NUMBER + "(?:\\s*[^\\s0-9.,+-]\\S*)?)";
    private static final Pattern PAIR = Pattern.compile(AMOUNT + "\\s+" + AMOUNT);

    private final EditModel edit;
    private final Field points;
    private final Field source;

    /**
     * @param points of a fan
     * @param source where they are from
     */
    public PointsText(EditModel edit, Field points, Field source) {
        this.edit = edit;
        this.points = points;
        this.source = source;
    }

    /** The points; nothing if there is no fan. */
    public String shown() {
        return now().stream().map(this::shown).collect(Collectors.joining("; "));
    }

    /** Symbol of the unit of flows. */
    public String flowUnit() {
        return unit(Unit.LITRE_PER_SECOND).symbol();
    }

    /** Symbol of the unit of pressures. */
    public String pressureUnit() {
        return unit(Unit.PASCAL).symbol();
    }

    /** Takes what was typed; gives back why not, if so. */
    public Optional<String> enter(String label, String text) {
        try {
            List<Fan.Point> all = new ArrayList<>();
            for (String part : text.split("[;\\n]")) {
                if (!part.isBlank()) {
                    all.add(point(part.strip(), all.size() + 1));
                }
            }
            if (!all.equals(now())) {
                edit.edit(label, p -> with(p, all));
            }
            return Optional.empty();
        } catch (InvalidValue e) {
            return Optional.of(Refusal.sentence(e, points, label));
        }
    }

    private Project with(Project project, List<Fan.Point> all) {
        int path = edit.path();
        Project changed = points.with(project, path, all);
        boolean invented = source.get(project, path) instanceof String from && from.startsWith(Summaries.INVENTED);
        return invented ? source.with(changed, path, Texts.of("source.pointsTyped")) : changed;
    }

    private List<Fan.Point> now() {
        return points.get(edit.project(), edit.path()) instanceof List<?> all
                ? all.stream().map(Fan.Point.class::cast).toList()
                : List.of();
    }

    private Fan.Point point(String part, int number) {
        for (Fan.Point before : now()) {
            if (shown(before).equals(part)) {
                return before;
            }
        }
        Matcher pair = PAIR.matcher(part);
        if (!pair.matches()) {
            throw refused("\"" + part + "\"", number, Texts.of("points.pair"));
        }
        try {
            return new Fan.Point(parse(pair.group(1), Unit.LITRE_PER_SECOND), parse(pair.group(2), Unit.PASCAL));
        } catch (InvalidValue e) {
            String unit = e.unit().isEmpty() ? "" : " " + e.unit();
            throw refused(e.given() + unit, number, e.limit() + unit);
        }
    }

    private InvalidValue refused(String given, int number, String limit) {
        return new InvalidValue(points.name(), Texts.of("points.one", given, String.valueOf(number)), limit, "");
    }

    private double parse(String amount, Unit metric) {
        return EntryText.parse(points.name(), amount, metric, edit.project().units());
    }

    private String shown(Fan.Point point) {
        return EntryText.brief(unit(Unit.LITRE_PER_SECOND).fromSi(point.flow())) + " "
                + EntryText.brief(unit(Unit.PASCAL).fromSi(point.pressure()));
    }

    private Unit unit(Unit metric) {
        return EntryText.unit(metric, edit.project().units());
    }
}
