package hushmaze.app.model;

import hushmaze.assess.PathResult;
import hushmaze.quantity.InvalidValue;
import hushmaze.size.ResizedBox;
import hushmaze.size.Steps;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Pass;
import hushmaze.solid.Solid;
import hushmaze.solid.Turn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sizes of the box that can be changed on its plan by taking hold of a wall or a baffle. Holes that fill their pass follow. */
public final class PlanSizes {
    /** What is taken hold of. */
    public enum Grip {
        /** The far end: clear length of the passes. */
        END("clearLength", ResizedBox.Size.LENGTH, true),
        /** The far side of the first pass: clear width of every pass. */
        SIDE("clearWidth", ResizedBox.Size.WIDTH, false),
        /** The tip of the first baffle: gap at the turns. */
        TIP("turnGap", ResizedBox.Size.GAP, true);

        private final String name;
        private final ResizedBox.Size size;
        private final boolean along;

        Grip(String name, ResizedBox.Size size, boolean along) {
            this.name = name;
            this.size = size;
            this.along = along;
        }

        /** Whether it moves along the passes; across them otherwise. */
        public boolean isAlong() {
            return along;
        }

        Field field() {
            return Field.of("path.box." + name);
        }
    }

    /**
     * Where a grip is on the box.
     *
     * @param x along the passes, m
     * @param y across them, m
     */
    public record Place(Grip grip, double x, double y) {}

    /** Share of the pass at which no words stand. */
    private static final double BESIDE_WORDS = 0.72;

    private final EditModel edit;
    private final ResultModel results;

    PlanSizes(EditModel edit, ResultModel results) {
        this.edit = edit;
        this.results = results;
    }

    /** Grips of the box that is drawn. */
    public List<Place> places() {
        Optional<PathResult> shown = results.pathResult();
        if (shown.isEmpty()) {
            return List.of();
        }
        Solid solid = shown.get().solid();
        Cuboid first = solid.passes().get(0).clear();
        Cuboid last = solid.passes().get(solid.passes().size() - 1).clear();
        List<Place> places = new ArrayList<>();
        places.add(new Place(Grip.END, first.x1(), (first.y0() + last.y1()) / 2));
        places.add(new Place(Grip.SIDE, first.x0() + BESIDE_WORDS * (first.x1() - first.x0()), first.y1()));
        if (!solid.turns().isEmpty()) {
            Turn turn = solid.turns().get(0);
            Cuboid beyond = turn.clear();
            places.add(
                    new Place(Grip.TIP, turn.atFarEnd() ? beyond.x0() : beyond.x1(), (beyond.y0() + beyond.y1()) / 2));
        }
        return places;
    }

    /** Size of the box that is drawn, m. */
    public double now(Grip grip) {
        return (Double) grip.field().get(edit.project(), edit.path());
    }

    /** Least step of a builder's rule, m. */
    public double step() {
        return steps().size();
    }

    private Steps steps() {
        return new Steps(edit.project().units());
    }

    /**
     * The size a grip stands for when it is moved to a place, on a step of the rule.
     *
     * @param at along the passes or across them, as the grip moves, m
     */
    public double sizeAt(Grip grip, double at) {
        Solid solid = results.pathResult().orElseThrow().solid();
        Pass first = solid.passes().get(0);
        double size = switch (grip) {
            case END -> at - first.clear().x0();
            case SIDE -> at - first.clear().y0();
            case TIP -> {
                Turn turn = solid.turns().get(0);
                yield turn.atFarEnd()
                        ? turn.clear().x1() - at
                        : at - turn.clear().x0();
            }
        };
        return Math.max(step(), steps().nearest(size));
    }

    /** Where a grip stands for a size; along the passes or across them, m. */
    public double placeOf(Grip grip, double size) {
        Solid solid = results.pathResult().orElseThrow().solid();
        Pass first = solid.passes().get(0);
        return switch (grip) {
            case END -> first.clear().x0() + size;
            case SIDE -> first.clear().y0() + size;
            case TIP -> {
                Turn turn = solid.turns().get(0);
                yield turn.atFarEnd() ? turn.clear().x1() - size : turn.clear().x0() + size;
            }
        };
    }

    /** A size in words: "Clear length 820 mm". */
    public String words(Grip grip, double size) {
        Field field = grip.field();
        return Texts.of(
                "plan.size",
                label(grip),
                EntryText.show(size, field.unit(), edit.project().units()));
    }

    /** A size as it is typed. */
    public String typed(Grip grip) {
        return edit.shown(grip.field());
    }

    private static String label(Grip grip) {
        return Texts.of("entry.path.box." + grip.name);
    }

    /** Takes a size; one step to undo. Gives back why not, if so. */
    public Optional<String> set(Grip grip, double size) {
        int path = edit.path();
        return edit.change(grip.field(), label(grip), label(grip), p -> Swept.resized(p, path, grip.size, size));
    }

    /** Takes what was typed, in any unit. */
    public Optional<String> enter(Grip grip, String text) {
        try {
            return set(grip, (Double) edit.value(grip.field(), text));
        } catch (InvalidValue e) {
            return Optional.of(Refusal.sentence(e, grip.field(), label(grip)));
        }
    }
}
