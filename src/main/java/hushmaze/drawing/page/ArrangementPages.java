package hushmaze.drawing.page;

import hushmaze.drawing.Labels;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.draft.Scale;
import hushmaze.solid.Role;
import java.util.ArrayList;
import java.util.List;

/** The general arrangement: plan, cross section and the faces with ports, all at the largest scale the page allows. */
final class ArrangementPages {
    private ArrangementPages() {}

    static List<Draft> of(Job job) {
        Shelves shelves = new Shelves(job.drawingSheet().content(), job.measure());
        Scale scale = Scale.largest(s -> views(job, s).stream().allMatch(shelves::fits))
                .orElseThrow(() -> new IllegalArgumentException("the box is too big to be drawn on " + job.paper()));
        List<Draft> pages = new ArrayList<>();
        for (Sketch page : shelves.set(views(job, scale))) {
            String title = Labels.of(pages.isEmpty() ? "arrangement.title" : "arrangement.more");
            pages.add(new Draft(title, Labels.of("type.arrangement"), scale, job.drawingSheet(), page));
        }
        return pages;
    }

    private static List<Sketch> views(Job job, Scale scale) {
        BoxViews box = new BoxViews(job);
        List<Sketch> views = new ArrayList<>();
        views.add(box.plan(scale));
        views.add(box.crossSection(scale));
        for (Role face : box.facesWithPorts()) {
            views.add(box.elevation(face, scale));
        }
        return views;
    }
}
