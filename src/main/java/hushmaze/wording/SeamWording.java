package hushmaze.wording;

import hushmaze.build.split.Obstacle;
import hushmaze.build.split.SeamPlan;
import hushmaze.quantity.Notice;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Seams in words: where they would do, and what they cannot mend. */
public final class SeamWording {
    private final Wording wording;

    public SeamWording(Wording wording) {
        this.wording = wording;
    }

    /** "A glued joint at 1240 mm from the near end would do." */
    String wouldDo(List<Notice.Place> places) {
        long apart = places.stream().filter(Notice.Place::comesApart).count();
        if (apart > 0 && apart < places.size()) {
            List<String> named = places.stream()
                    .map(p -> wording.text(
                            p.comesApart() ? "seams.mixed.parting" : "seams.mixed.glued",
                            wording.amounts().length(p.position())))
                    .toList();
            return wording.text("seams.mixed", listed(named));
        }
        List<String> lengths =
                places.stream().map(p -> wording.amounts().length(p.position())).toList();
        String key = apart > 0 ? "seams.parting" : "seams.glued";
        return wording.text(key + (places.size() == 1 ? ".one" : ".many"), listed(lengths));
    }

    /** A whole plan, in sentences: the seams, and what they cannot mend. */
    public String plan(SeamPlan plan) {
        if (plan.seams().isEmpty() && plan.obstacles().isEmpty()) {
            return wording.text("seams.none");
        }
        Stream<String> seams =
                plan.seams().isEmpty() ? Stream.empty() : Stream.of(wouldDo(SeamPlan.places(plan.seams())));
        return Stream.concat(plan.obstacles().stream().map(this::obstacle), seams)
                .collect(Collectors.joining(" "));
    }

    /** What seams cannot mend, which dimension is in the way, and its limit. */
    public String obstacle(Obstacle obstacle) {
        return wording.text(
                "obstacle." + obstacle.kind(),
                obstacle.role() == null ? "" : wording.text("role." + obstacle.role()),
                wording.amounts().of(obstacle.value(), obstacle.unit()),
                wording.amounts().of(obstacle.limit(), obstacle.unit()));
    }

    private String listed(List<String> items) {
        return items.stream().reduce((a, b) -> wording.text("seams.and", a, b)).orElse("");
    }
}
