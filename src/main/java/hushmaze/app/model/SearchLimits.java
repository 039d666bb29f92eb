package hushmaze.app.model;

import hushmaze.project.Brief;
import hushmaze.project.Construction;
import hushmaze.project.Project;
import hushmaze.wording.Amounts;
import hushmaze.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** What a search for the best boxes keeps to, line by line, so that it can be looked over before. */
public final class SearchLimits {
    /**
     * One of them.
     *
     * @param name what it is about
     * @param value as it is now
     */
    public record Line(String name, String value) {}

    private SearchLimits() {}

    /** Those of the path looked at. */
    public static List<Line> of(Designer designer) {
        Project project = designer.edit().project();
        Brief brief = project.paths().get(designer.edit().path()).brief();
        Construction made = brief.construction();
        Wording wording = new Wording(project.units());
        Amounts amounts = wording.amounts();
        Summaries summaries = new Summaries(project.units());
        List<Line> lines = new ArrayList<>();
        lines.add(line(
                "space",
                amounts.sizes(
                        brief.space().width(),
                        brief.space().height(),
                        brief.space().depth())));
        String flow = brief.flow() == null ? Texts.of("found.flowAsNeeded") : amounts.flow(brief.flow());
        lines.add(line("air", Texts.of("found.limit.air.value", flow, amounts.pressure(brief.maxPressureDrop()))));
        lines.add(line(
                "speed",
                Texts.of(
                        "found.limit.speed.value",
                        amounts.velocity(brief.maxPathVelocity()),
                        amounts.velocity(brief.maxOpeningVelocity()))));
        lines.add(line("noise", wording.target(project.room().target())));
        lines.add(line("board", made.board().name()));
        lines.add(line("liner", made.liner().name()));
        lines.add(line("sheets", designer.stock().summary()));
        lines.add(line("mass", made.maxMass() == null ? Texts.of("found.limit.none") : amounts.mass(made.maxMass())));
        lines.add(
                line("doorway", made.doorway() == null ? Texts.of("found.limit.none") : summaries.of(made.doorway())));
        lines.add(line("choices", designer.choices().summary()));
        return lines;
    }

    private static Line line(String key, String value) {
        return new Line(Texts.of("found.limit." + key), value);
    }
}
