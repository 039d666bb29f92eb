package hushmaze.assess;

import hushmaze.build.fixing.Fixing;
import hushmaze.build.fixing.Hanging;
import hushmaze.build.fixing.Lifting;
import hushmaze.build.fixing.PortFrame;
import hushmaze.build.fixing.RowPlaces;
import hushmaze.build.fixing.Rows;
import hushmaze.build.fixing.Standing;
import hushmaze.build.fixing.StudRow;
import hushmaze.build.fixing.Tipping;
import hushmaze.build.fixing.Way;
import hushmaze.project.Brief;
import hushmaze.project.Mounting;
import hushmaze.project.Opening;
import hushmaze.project.Space;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Module;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;

/** What lifting, hanging and standing of a box give reason to say. */
final class FixingNotices {
    /** Boxes heavier than this are beyond the method, kg; our judgement. */
    private static final double CARPENTER = 80;

    /** Less than this does not count, m. */
    private static final double SHOWN = 5e-4;

    private final Fixing fixing;
    private final double mass;
    private final Solid solid;
    private final Space space;
    private final Rows rows;
    private final List<Notice> notices = new ArrayList<>();

    private FixingNotices(Solid solid, Brief brief, Axis level) {
        this.fixing = Fixing.of(solid, brief, level);
        this.solid = solid;
        this.mass = solid.mass();
        this.space = brief.space();
        this.rows = Rows.of(solid, brief, level);
    }

    /** @param level the direction of the box that is level on a wall */
    static List<Notice> of(Solid solid, Brief brief, Axis level) {
        FixingNotices all = new FixingNotices(solid, brief, level);
        all.lifting(brief.opening().surface() == Opening.Surface.CEILING);
        all.fixing.hanging().ifPresent(all::hanging);
        all.fixing.row().ifPresent(all::studs);
        all.cleats();
        boolean stands = brief.opening().surface() == Opening.Surface.FLOOR;
        if (!stands && brief.construction().mounting() == null) {
            all.add(NoticeKind.FIXING_NOT_CHECKED, Severity.NOTE, all.mass, 0, Unit.KILOGRAM);
        }
        all.fixing.refused().ifPresent(all::refused);
        all.fixing.standing().ifPresent(all::standing);
        return all.notices;
    }

    /** A cleat that runs across the port would shut it; one beyond the box holds nothing; a screw beside a board cannot be driven. */
    private void cleats() {
        Cuboid hole = solid.openingPort().hole();
        boolean across = rows.cleats().stream()
                .anyMatch(c -> c.high() + room(c, 0) > hole.low(rows.between())
                        && c.low() - room(c, c.lift()) < hole.high(rows.between())
                        && c.to() > hole.low(rows.along())
                        && c.from() < hole.high(rows.along()));
        if (across) {
            notices.add(Notice.of(NoticeKind.CLEAT_ACROSS_PORT, Severity.STOP, ""));
        }
        double beyond = rows.cleats().stream()
                .filter(c -> c.kind() != Rows.Kind.CLEAT)
                .mapToDouble(c -> Math.max(
                        solid.outer().low(rows.between()) - c.low(),
                        c.high() - solid.outer().high(rows.between())))
                .max()
                .orElse(0);
        if (beyond > SHOWN) {
            add(NoticeKind.CLEAT_BEYOND_BOX, Severity.STOP, beyond, 0, Unit.MILLIMETRE);
        }
        RowPlaces.nearest(solid, rows)
                .filter(near -> near.distance() < near.least())
                .ifPresent(near -> notices.add(Notice.of(
                        NoticeKind.ROW_AT_BOARD,
                        Severity.STOP,
                        near.board().name(),
                        Math.max(0, near.distance()),
                        near.least(),
                        Unit.MILLIMETRE)));
    }

    /** What there has to be between port and timber: the frame must not sit on the wall's batten, nor meet it when the box is lifted. */
    private static double room(Rows.Cleat cleat, double lift) {
        return cleat.kind() == Rows.Kind.WALL_HOOK ? PortFrame.LEAST + lift : 0;
    }

    private void lifting(boolean overhead) {
        Lifting lifting = fixing.lifting();
        boolean inOne = solid.modules().size() == 1;
        Module heaviest = solid.heaviestModule();
        String part = inOne ? "" : String.valueOf(heaviest.number() + 1);
        Lifting.Hands hands = lifting.hands(heaviest.mass());
        if (hands == Lifting.Hands.TWO) {
            NoticeKind kind = inOne ? NoticeKind.LIFT_WITH_TWO : NoticeKind.PART_LIFT_WITH_TWO;
            notices.add(Notice.of(kind, Severity.WARNING, part, heaviest.mass(), lifting.one(), Unit.KILOGRAM));
        } else if (hands == Lifting.Hands.AID) {
            NoticeKind kind = inOne ? NoticeKind.LIFT_WITH_AID : NoticeKind.PART_LIFT_WITH_AID;
            notices.add(Notice.of(kind, Severity.WARNING, part, heaviest.mass(), lifting.two(), Unit.KILOGRAM));
        }
        if (overhead) {
            add(NoticeKind.OVERHEAD, Severity.WARNING, mass, lifting.one(), Unit.KILOGRAM);
        }
    }

    private void hanging(Hanging hanging) {
        if (hanging.used() > 1) {
            add(NoticeKind.FIXING_OVERLOADED, Severity.STOP, hanging.used(), 1, Unit.PERCENT);
            remedy(hanging);
        }
        if (!hanging.allowed().deepEnough()) {
            notices.add(Notice.of(NoticeKind.SCREWS_SHALLOW, Severity.STOP, ""));
        }
        if (hanging.way() == Way.BY_ITS_COVER) {
            notices.add(Notice.of(NoticeKind.HANGS_BY_COVER, Severity.STOP, ""));
        } else if (hanging.way() == Way.OUT_OF_REACH) {
            notices.add(Notice.of(NoticeKind.SCREWS_OUT_OF_REACH, Severity.WARNING, ""));
        }
        if (hanging.way() == Way.HOOKED) {
            hooked(hanging);
        }
        if (hanging.tipsOut()) {
            add(NoticeKind.HOOK_TIPS, Severity.STOP, hanging.arm(), hanging.rowDistance(), Unit.MILLIMETRE);
        }
        if (hanging.rowsBeyondBox()) {
            add(NoticeKind.ROWS_BEYOND_BOX, Severity.STOP, hanging.rowDistance(), hanging.reach(), Unit.MILLIMETRE);
        }
        if (hanging.centreBeyondRows()) {
            add(
                    NoticeKind.CENTRE_BEYOND_ROWS,
                    Severity.WARNING,
                    hanging.offBetween(),
                    hanging.rowDistance() / 2,
                    Unit.MILLIMETRE);
        }
        if (hanging.factor() > 1 || mass > CARPENTER) {
            add(NoticeKind.ASK_A_CARPENTER, Severity.WARNING, mass, CARPENTER, Unit.KILOGRAM);
        }
    }

    /** Somebody has to lift it over the batten on the wall. */
    private void hooked(Hanging hanging) {
        double height = hanging.reach() + rows.cleats().get(0).lift();
        if (height > space.height() + SHOWN) {
            add(NoticeKind.HOOK_NEEDS_ROOM, Severity.STOP, height, space.height(), Unit.MILLIMETRE);
        }
    }

    /** How many screws would do, if any number that finds its studs does. */
    private void remedy(Hanging hanging) {
        if (fixing.enough().isEmpty()) {
            add(NoticeKind.NO_SCREWS_DO, Severity.WARNING, Mounting.MOST_SCREWS, hanging.used(), Unit.NUMBER);
            return;
        }
        int enough = fixing.enough().getAsInt();
        if (fixing.moreScrewsDo()) {
            add(NoticeKind.MORE_SCREWS_DO, Severity.WARNING, enough, 0, Unit.NUMBER);
        } else {
            int sure = fixing.row().orElseThrow().sureScrews();
            add(NoticeKind.SCREWS_EXCEED_STUDS, Severity.WARNING, enough, sure, Unit.NUMBER);
        }
    }

    private void studs(StudRow row) {
        if (row.asked() <= row.sureScrews()) {
            return;
        }
        if (row.asked() > row.possibleScrews()) {
            add(NoticeKind.SCREWS_MISS_STUDS, Severity.STOP, row.asked(), row.possibleScrews(), Unit.NUMBER);
        } else {
            add(NoticeKind.SCREWS_MAY_MISS_STUDS, Severity.WARNING, row.asked(), row.sureScrews(), Unit.NUMBER);
        }
        notices.add(Notice.of(
                NoticeKind.LONGER_CLEAT,
                Severity.NOTE,
                Integer.toString(StudRow.studsFor(row.asked())),
                row.cleatNeeded(),
                row.cleat(),
                Unit.MILLIMETRE));
    }

    private void refused(Mounting.Into into) {
        notices.add(Notice.of(
                NoticeKind.FIXING_BEYOND_METHOD, Severity.WARNING, into.name(), mass, CARPENTER, Unit.KILOGRAM));
    }

    private void standing(Standing standing) {
        if (!standing.holds()) {
            add(NoticeKind.WEIGHT_DOES_NOT_HOLD, Severity.WARNING, standing.weight(), 2 * standing.lift(), Unit.NEWTON);
        }
        Tipping tipping = standing.tipping();
        if (tipping.push() < Tipping.PUSH) {
            add(NoticeKind.STANDING_TIPS, Severity.WARNING, tipping.push(), Tipping.PUSH, Unit.NEWTON);
        }
        if (tipping.slender()) {
            add(NoticeKind.STANDING_SLENDER, Severity.WARNING, tipping.height(), tipping.base(), Unit.MILLIMETRE);
        }
    }

    private void add(NoticeKind kind, Severity severity, double value, double limit, Unit unit) {
        notices.add(Notice.of(kind, severity, "", value, limit, unit));
    }
}
