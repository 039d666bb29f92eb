package hushmaze.drawing.page;

import hushmaze.drawing.Labels;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.draft.Scale;
import hushmaze.solid.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The general arrangement: the plan at the largest scale the page allows, and what goes beside it; the other views on
 * one or two more pages, at a smaller scale if need be. Where the page is too small for the plan with its words below, they stand
 * beside it.
 */
final class ArrangementPages {
    /** At a scale with more than this below the line a view of a usual box has figures as high as its boards are apart. */
    private static final double SMALL = 10;

    private final Job job;
    private final BoxViews box;
    private final Shelves shelves;

    private ArrangementPages(Job job) {
        this.job = job;
        this.box = new BoxViews(job);
        this.shelves = new Shelves(job.drawingSheet().content(), job.measure());
    }

    static List<Draft> of(Job job) {
        return new ArrangementPages(job).pages();
    }

    private List<Draft> pages() {
        List<Function<Scale, Sketch>> views = new ArrayList<>(List.of(box::plan));
        Optional<Scale> alone = shelves.scale(views, Scale.SERIES.get(0));
        if (alone.isEmpty()) {
            views = new ArrayList<>(List.of(box::planWithoutWords, box::wordsOfPlan));
        }
        int beside = views.size();
        Scale first = alone.isPresent() ? alone.get() : scale(List.copyOf(views), Scale.SERIES.get(0));
        views.add(box::crossSection);
        for (Role face : box.facesWithPorts()) {
            views.add(scale -> box.elevation(face, scale));
        }
        while (beside < views.size() && shelves.pages(Shelves.at(views.subList(0, beside + 1), first)) == 1) {
            beside++;
        }
        List<Draft> pages = new ArrayList<>(pages("arrangement.title", views.subList(0, beside), first));
        if (beside < views.size()) {
            pages.addAll(others(views.subList(beside, views.size()), first));
        }
        return pages;
    }

    /** Together on a page; on two if that makes larger what would come out small. */
    private List<Draft> others(List<Function<Scale, Sketch>> views, Scale first) {
        Scale together = scale(views, first);
        Scale shared =
                together.denominator() > SMALL ? shelves.scale(views, first, 2).orElse(together) : together;
        return pages("arrangement.more", views, shared);
    }

    private List<Draft> pages(String title, List<Function<Scale, Sketch>> views, Scale scale) {
        return shelves.set(Shelves.at(views, scale)).stream()
                .map(content ->
                        new Draft(Labels.of(title), Labels.of("type.arrangement"), scale, job.drawingSheet(), content))
                .toList();
    }

    /** The largest scale, no larger than a given one, at which the views go on one page. */
    private Scale scale(List<Function<Scale, Sketch>> views, Scale atMost) {
        return shelves.scale(views, atMost)
                .orElseThrow(() -> new IllegalArgumentException("the box is too big to be drawn on " + job.paper()));
    }
}
