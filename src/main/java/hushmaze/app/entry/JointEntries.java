package hushmaze.app.entry;

import hushmaze.app.entry.TypedEntry.Size;
import hushmaze.app.model.Designer;
import hushmaze.app.model.Extra;
import hushmaze.app.model.ExtrasModel;
import hushmaze.app.model.SeamsModel;
import hushmaze.app.model.Texts;
import hushmaze.project.Seam;
import java.util.Arrays;
import java.util.List;

/** How boards are joined, through which door the box goes, and where it is made of more than one piece. */
final class JointEntries {
    private final ExtrasModel extras;
    private final SeamsModel seams;
    private final Entries make;
    private final Switches switches;

    JointEntries(Designer designer, Entries make) {
        this.extras = designer.extras();
        this.seams = designer.seams();
        this.make = make;
        this.switches = new Switches(extras);
    }

    /** How the boards are joined. */
    Entry joinery() {
        String of = Extra.JOINERY.fieldName() + ".";
        return group(
                "joinery",
                Extra.JOINERY,
                List.of(
                        make.typed(of + "fitClearance"),
                        make.typed(of + "gasket"),
                        make.typed(of + "groove"),
                        make.typed(of + "pinsAbove")));
    }

    /** The narrowest place on the way. */
    Entry doorway() {
        String of = Extra.DOORWAY.fieldName() + ".";
        return group("doorway", Extra.DOORWAY, List.of(make.typed(of + "width"), make.typed(of + "height")));
    }

    private Entry group(String key, Extra extra, List<Entry> entries) {
        return new FoldGroup(
                key, () -> extras.summary(extra), List.of(switches.turn(extra), switches.when(extra, entries)));
    }

    private Entry seam(int number, Runnable remove) {
        String name = "path.box.seams." + number + ".";
        return EntryCard.of(
                make.choice(name + "kind", "seam.kind"),
                AwayButton.of("seam", number, remove),
                List.of(make.typed(name + "position", "seam.position", Size.BESIDE)));
    }

    /** The joints across the passes, what is proposed, and a button to take it. */
    List<Entry> seams() {
        CardList<Seam, Boolean> list = new CardList<>(
                "seam", seams::seams, seam -> true, (number, same, remove) -> seam(number, remove), seams::remove);
        list.with(AddChoice.of(
                "seam", Arrays.asList(Seam.Kind.values()), Texts::word, kind -> list.say(seams.add(kind))));
        return List.of(
                Words.quiet("seam.words"),
                list,
                Words.quiet(seams::advice),
                new PressEntry("seam-propose", "seam.propose", () -> list.say(seams.propose()), seams::mayPropose));
    }
}
