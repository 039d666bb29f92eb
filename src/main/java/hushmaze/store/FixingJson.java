package hushmaze.store;

import static hushmaze.store.AssessmentJson.number;

import com.fasterxml.jackson.databind.node.ObjectNode;
import hushmaze.build.fixing.Fixing;
import hushmaze.build.fixing.Hanging;
import hushmaze.build.fixing.Lifting;
import hushmaze.build.fixing.Standing;
import hushmaze.build.fixing.StudRow;
import hushmaze.build.fixing.Tipping;

/** How a box is lifted, and how it hangs or stands, as parts of the JSON of an assessment. */
final class FixingJson {
    private FixingJson() {}

    /** What is known of it, into the node of what can be built. */
    static void put(ObjectNode node, Fixing fixing) {
        lifting(node.putObject("lifting"), fixing.lifting());
        fixing.hanging().ifPresent(h -> {
            ObjectNode hanging = node.putObject("hanging");
            hanging(hanging, h);
            fixing.enough().ifPresent(n -> hanging.put("screwsPerRowNeeded", n));
            fixing.row().ifPresent(r -> studs(hanging.putObject("studs"), r));
        });
        fixing.refused().ifPresent(into -> node.put("fixingNotComputed", into.name()));
        fixing.standing().ifPresent(s -> standing(node.putObject("standing"), s));
    }

    private static void lifting(ObjectNode node, Lifting lifting) {
        node.put("high", lifting.high());
        number(node, "onePersonKg", lifting.one());
        number(node, "twoPeopleKg", lifting.two());
        number(node, "wholeKg", lifting.whole());
        node.put("whole", lifting.hands(lifting.whole()).name());
        node.put("coverComesOff", lifting.apart());
        number(node, "heaviestPieceKg", lifting.heaviest());
        node.put("heaviestPiece", lifting.hands(lifting.heaviest()).name());
        if (lifting.apart()) {
            number(node, "carcassKg", lifting.carcass());
            node.put("carcass", lifting.hands(lifting.carcass()).name());
            number(node, "coverKg", lifting.cover());
            node.put("cover", lifting.hands(lifting.cover()).name());
        }
    }

    private static void hanging(ObjectNode node, Hanging h) {
        node.put("way", h.way().name());
        node.put("overhead", h.overhead());
        number(node, "furtherFactor", h.factor());
        number(node, "weightN", h.weight());
        number(node, "armMm", h.arm() * 1e3);
        number(node, "offAlongRowsMm", h.offAlong() * 1e3);
        number(node, "offBetweenRowsMm", h.offBetween() * 1e3);
        number(node, "pullPerScrewN", h.pull());
        number(node, "shearPerScrewN", h.shear());
        number(node, "allowedPullN", h.allowed().withdrawal());
        number(node, "allowedShearN", h.allowed().shear());
        number(node, "usedFraction", h.used());
    }

    private static void studs(ObjectNode node, StudRow row) {
        number(node, "spacingMm", row.spacing() * 1e3);
        number(node, "cleatMm", row.cleat() * 1e3);
        number(node, "cleatWidthMm", row.cleatWidth() * 1e3);
        node.put("crossedForCertain", row.sure());
        node.put("crossedAtBest", row.possible());
        node.put("screwsPerRow", row.asked());
        node.put("screwsForCertain", row.sureScrews());
        node.put("screwsAtBest", row.possibleScrews());
        number(node, "cleatNeededMm", row.cleatNeeded() * 1e3);
    }

    private static void standing(ObjectNode node, Standing s) {
        node.put("holds", s.holds());
        number(node, "weightN", s.weight());
        number(node, "liftN", s.lift());
        number(node, "weightPerMetreN", s.line());
        node.put("seals", s.seals());
        Tipping tipping = s.tipping();
        node.put("upright", tipping.stands());
        number(node, "tippingPushN", tipping.push());
        number(node, "heightMm", tipping.height() * 1e3);
        number(node, "baseMm", tipping.base() * 1e3);
    }
}
