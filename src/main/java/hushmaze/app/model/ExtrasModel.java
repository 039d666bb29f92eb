package hushmaze.app.model;

import hushmaze.project.DuctRun;
import hushmaze.project.Envelope;
import hushmaze.project.EnvelopeElement;
import hushmaze.project.Outgoing;
import hushmaze.project.Project;
import hushmaze.project.Target;
import hushmaze.sound.criterion.TargetCurve;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Switches for what a project may leave out, and choices that need more than one field changed in one step. */
public final class ExtrasModel {
    private static final Field ELEMENTS = Field.of("room.envelope.elements");
    private static final Field RUN = Field.of("path.brief.sharedDuct.run");
    private static final Field OUTGOING = Field.of("path.brief.outgoing");

    private final EditModel edit;
    private final Assumed assumed;

    /** @param elements of envelopes to choose from */
    public ExtrasModel(EditModel edit, List<EnvelopeElement> elements) {
        this.edit = edit;
        this.assumed = new Assumed(elements);
    }

    public boolean isOn(Extra extra) {
        return extra.isIn(edit.project(), edit.path());
    }

    /** Fills in assumed values, or takes the values away; gives back why not, if so. */
    public Optional<String> turn(Extra extra, boolean on) {
        if (on == isOn(extra)) {
            return Optional.empty();
        }
        int path = edit.path();
        return change(
                extra.field(),
                Texts.of("entry." + extra.fieldName()),
                p -> on ? extra.addedTo(p, path, assumed) : extra.takenFrom(p, path));
    }

    /** Whether any of the values is one that the program filled in. */
    public boolean isAssumed(Extra extra) {
        return Summaries.isGuessed(extra.field().get(edit.project(), edit.path()));
    }

    /** What there is, in one line. */
    public String summary(Extra extra) {
        return new Summaries(edit.project().units()).of(extra.field().get(edit.project(), edit.path()));
    }

    /**
     * Another kind of target. The number stays where the new kind takes it; limits per band begin as the octave values of
     * the target there was.
     */
    public Optional<String> setTargetKind(Field target, String label, Target.Kind kind) {
        Target old = (Target) target.get(edit.project(), edit.path());
        return change(target, label, p -> target.with(p, edit.path(), ofKind(old, kind)));
    }

    private static Target ofKind(Target old, Target.Kind kind) {
        String source = Texts.of("source.kindChosen");
        if (kind == Target.Kind.SPECTRUM) {
            var curve = old.spectrum() == null ? TargetCurve.of(old).octaves() : old.spectrum();
            return new Target(kind, old.number(), curve, source);
        }
        double number = old.number() == null ? DEFAULT_NUMBER : old.number();
        double least = kind == Target.Kind.NC ? LEAST_NC : kind == Target.Kind.DBA ? LEAST_DBA : 0;
        double most = kind == Target.Kind.DBA ? MOST_DBA : MOST_CURVE;
        return new Target(kind, Math.max(least, Math.min(most, number)), old.spectrum(), source);
    }

    private static final double DEFAULT_NUMBER = 25;
    private static final double LEAST_NC = 15;
    private static final double LEAST_DBA = 10;
    private static final double MOST_DBA = 90;
    private static final double MOST_CURVE = 70;

    /** Another kind of duct: a round one has neither height nor liner, the others need a height. */
    public Optional<String> setDuctKind(String label, DuctRun.Kind kind) {
        DuctRun old = (DuctRun) RUN.get(edit.project(), edit.path());
        boolean round = kind == DuctRun.Kind.ROUND_SHEET;
        Double height = round || old.height() != null ? old.height() : Double.valueOf(old.width());
        return change(
                RUN,
                label,
                p -> RUN.with(
                        p,
                        edit.path(),
                        new DuctRun(
                                kind,
                                old.length(),
                                old.width(),
                                height,
                                round ? null : old.linerThickness(),
                                old.branchShares())));
    }

    /** Who hears it: a room needs absorption areas, which begin as those of a furnished one. */
    public Optional<String> setReceiver(String label, Outgoing.Receiver receiver) {
        Outgoing old = (Outgoing) OUTGOING.get(edit.project(), edit.path());
        List<Double> areas = old.absorptionArea() == null && receiver == Outgoing.Receiver.ROOM
                ? assumed.furnished()
                : old.absorptionArea();
        return change(
                OUTGOING,
                label,
                p -> OUTGOING.with(
                        p,
                        edit.path(),
                        new Outgoing(
                                old.levelInRoom(),
                                receiver,
                                old.position(),
                                areas,
                                old.distance(),
                                old.limit(),
                                old.source())));
    }

    /** The elements of the envelope; none if nothing is said of it. */
    public List<EnvelopeElement> elements() {
        Envelope envelope = edit.project().room().envelope();
        return envelope == null ? List.of() : envelope.elements();
    }

    /** Puts one more element at the end. */
    public Optional<String> addElement(EnvelopeElement element) {
        List<EnvelopeElement> all = new ArrayList<>(elements());
        all.add(element);
        return change(ELEMENTS, Texts.of("edit.element.add", element.name()), p -> ELEMENTS.with(p, 0, all));
    }

    /** Takes one element out. */
    public Optional<String> removeElement(int number) {
        List<EnvelopeElement> all = new ArrayList<>(elements());
        EnvelopeElement gone = all.remove(number);
        return change(ELEMENTS, Texts.of("edit.element.remove", gone.name()), p -> ELEMENTS.with(p, 0, all));
    }

    private Optional<String> change(Field field, String label, UnaryOperator<Project> change) {
        return edit.change(field, label, label, change);
    }
}
