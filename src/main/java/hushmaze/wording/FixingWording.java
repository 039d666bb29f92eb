package hushmaze.wording;

import hushmaze.build.fixing.Fixing;
import hushmaze.build.fixing.Hanging;
import hushmaze.build.fixing.Lifting;
import hushmaze.build.fixing.Standing;
import hushmaze.build.fixing.StudRow;
import hushmaze.build.fixing.Tipping;
import hushmaze.build.fixing.Way;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** How a box is lifted, and how it hangs or stands, as sentences. */
final class FixingWording {
    private final Wording wording;
    private final Amounts amounts;

    FixingWording(Wording wording) {
        this.wording = wording;
        this.amounts = wording.amounts();
    }

    List<String> all(Fixing fixing) {
        List<String> sentences = new ArrayList<>();
        sentences.add(lifting(fixing.lifting()));
        fixing.hanging().ifPresent(h -> {
            sentences.add(hanging(h));
            sentences.add(wording.text(
                    "fixing.limits",
                    amounts.force(h.allowed().withdrawal()),
                    amounts.force(h.allowed().shear())));
            sentences.add(count(fixing));
        });
        fixing.refused().ifPresent(into -> sentences.add(wording.text("fixing.refused." + into)));
        fixing.standing().ifPresent(s -> {
            sentences.add(standing(s));
            sentences.add(tipping(s.tipping()));
        });
        return sentences;
    }

    String lifting(Lifting lifting) {
        String who = wording.text(
                "lifting." + lifting.hands(lifting.whole()),
                amounts.mass(lifting.whole()),
                amounts.mass(lifting.one()),
                amounts.mass(lifting.two()));
        String pieces = lifting.apart()
                ? wording.text(
                        "lifting.apart",
                        amounts.mass(lifting.carcass()),
                        wording.text("lifting.by." + lifting.hands(lifting.carcass())),
                        amounts.mass(lifting.cover()),
                        wording.text("lifting.by." + lifting.hands(lifting.cover())))
                : wording.text("lifting.whole");
        String prop = lifting.high() ? " " + wording.text("lifting.prop") : "";
        return who + " " + pieces + prop + " " + wording.text("lifting.source");
    }

    private String hanging(Hanging h) {
        String key = h.overhead()
                ? "fixing.ceiling"
                : (h.way() == Way.HOOKED ? "fixing.hooked" : "fixing.wall") + (h.factor() > 1 ? ".abovePeople" : "");
        return wording.text(
                key,
                amounts.force(h.weight()),
                amounts.length(h.arm()),
                amounts.force(h.pull()),
                amounts.force(h.shear()),
                amounts.of(h.used(), Unit.PERCENT),
                amounts.length(h.side()));
    }

    /** How many screws are needed, and whether they find studs. */
    private String count(Fixing fixing) {
        String need = fixing.enough().isPresent()
                ? wording.text(
                        "fixing.enough" + hooked(fixing),
                        Integer.toString(fixing.enough().getAsInt()))
                : wording.text("fixing.noneEnough");
        return need + " "
                + fixing.row()
                        .map(row -> studs(row, hooked(fixing)))
                        .orElseGet(() -> wording.text("fixing.studsNotSaid"));
    }

    private static String hooked(Fixing fixing) {
        return fixing.hangs(Way.HOOKED) ? ".hooked" : "";
    }

    private String studs(StudRow row, String hooked) {
        String crossed = wording.text(
                "fixing.studs" + hooked,
                amounts.length(row.spacing()),
                amounts.length(row.cleat()),
                Integer.toString(row.sure()),
                Integer.toString(row.sureScrews()),
                amounts.length(Math.ceil(1e3 * row.cleatWidth()) / 1e3),
                Integer.toString(row.asked()));
        String remedy = row.asked() <= row.sureScrews()
                ? ""
                : " " + wording.text("fixing.longerCleat", amounts.length(row.cleatNeeded()));
        return crossed + remedy;
    }

    private String standing(Standing s) {
        return wording.text(
                        "fixing.standing", amounts.force(s.weight()), amounts.force(s.lift()), amounts.force(s.line()))
                + " "
                + wording.text(s.seals() ? "fixing.seals" : "fixing.sealsNot", amounts.force(Standing.SEALS));
    }

    private String tipping(Tipping t) {
        return wording.text(
                t.stands() ? "fixing.upright" : "fixing.tie",
                amounts.force(t.push()),
                amounts.force(Tipping.PUSH),
                amounts.length(t.height()),
                amounts.length(t.base()));
    }
}
