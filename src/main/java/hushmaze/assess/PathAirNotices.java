package hushmaze.assess;

import hushmaze.air.Loss;
import hushmaze.air.PathAir;
import hushmaze.air.need.DuctVelocity;
import hushmaze.air.need.OpeningVelocity;
import hushmaze.project.Brief;
import hushmaze.project.Drive;
import hushmaze.project.Opening;
import hushmaze.project.Purpose;
import hushmaze.project.Target;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import hushmaze.solid.PortPlace;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What the air of one path gives reason to say. */
final class PathAirNotices {
    /** A drive that brings more than this many times the flow asked for is worth saying. */
    private static final double TOO_MUCH = 1.1;
    /** Fastest air on the whole face of a louvre, half of it free, ft/min. */
    private static final double LOUVRE_IN = 250;

    private static final double LOUVRE_OUT = 350;
    /** Rough guidelines are not held against a limit that is this little above them. */
    private static final double ROUGHLY = 1.05;

    private final PathResult result;
    private final Brief brief;
    private final List<Notice> notices = new ArrayList<>();

    private PathAirNotices(PathResult result) {
        this.result = result;
        this.brief = result.path().brief();
    }

    static List<Notice> of(PathResult result, Target target) {
        PathAirNotices air = new PathAirNotices(result);
        air.pressure();
        air.velocities();
        air.limitForTarget(target);
        air.louvres();
        air.drive();
        if (air.brief.fittings().isEmpty()) {
            air.notices.add(Notice.of(NoticeKind.FITTINGS_NOT_COUNTED, Severity.NOTE, ""));
        }
        return air.notices;
    }

    private void pressure() {
        double high = result.pathAir().pressureHigh();
        if (!result.air().pressureOk()) {
            double allowed = AirJudge.allowed(brief);
            boolean drive = allowed < brief.maxPressureDrop();
            NoticeKind kind = drive ? NoticeKind.PRESSURE_ABOVE_DRIVE : NoticeKind.PRESSURE_ABOVE_LIMIT;
            add(kind, Severity.STOP, "", high, allowed, Unit.PASCAL);
        }
        boolean passive =
                brief.opening().kind() == Opening.Kind.WALL_OPENING && brief.driveOrUsual() == Drive.Kind.NOTHING;
        // where the room is solved its pressure speaks for all paths
        if (passive && result.carried() == null && high > RoomAir.LIMIT) {
            add(NoticeKind.PRESSURE_ABOVE_ROOM_LIMIT, Severity.WARNING, "", high, RoomAir.LIMIT, Unit.PASCAL);
        }
    }

    private void velocities() {
        for (PathAir.PlaceVelocity place : result.pathAir().velocities()) {
            if (!AirJudge.kept(brief, place)) {
                add(
                        NoticeKind.VELOCITY_ABOVE_LIMIT,
                        Severity.STOP,
                        place.part(),
                        place.velocity(),
                        AirJudge.limit(brief, place),
                        Unit.METRE_PER_SECOND);
            }
        }
    }

    /** The brief's limits against what is published for so quiet a room. */
    private void limitForTarget(Target target) {
        OptionalDouble like = target.likeNc();
        if (like.isEmpty()) {
            return;
        }
        boolean supply = result.path().purpose() == Purpose.SUPPLY;
        double number = like.getAsDouble();
        loose(PortPlace.IN_ROOM, brief.maxOpeningVelocity(), OpeningVelocity.limit(number, supply));
        loose("", brief.maxPathVelocity(), DuctVelocity.lastRun(number));
    }

    private void loose(String part, double allowed, OptionalDouble published) {
        if (published.isPresent() && allowed > ROUGHLY * published.getAsDouble()) {
            add(
                    part.isEmpty() ? NoticeKind.PATH_VELOCITY_LIMIT_LOOSE : NoticeKind.VELOCITY_LIMIT_LOOSE,
                    Severity.NOTE,
                    part,
                    allowed,
                    published.getAsDouble(),
                    Unit.METRE_PER_SECOND);
        }
    }

    /** Whether a louvre may take in rain: 250 ft/min on the whole face inwards, 350 outwards, design notes as read. */
    private void louvres() {
        for (Loss loss : result.pathAir().losses()) {
            boolean outdoors = loss.part().equals(PortPlace.AT_OPENING);
            boolean inwards = result.path().purpose() == Purpose.SUPPLY;
            double limit = Unit.FOOT_PER_MINUTE.toSi(inwards ? LOUVRE_IN : LOUVRE_OUT);
            if (loss.key().equals("louvre") && outdoors && loss.velocity() > limit) {
                add(NoticeKind.LOUVRE_FAST, Severity.WARNING, "", loss.velocity(), limit, Unit.METRE_PER_SECOND);
            }
        }
    }

    private void drive() {
        PathFlow carried = result.carried();
        if (carried == null || !carried.answers()) {
            return;
        }
        if (!result.air().flowOk()) {
            add(NoticeKind.FLOW_BELOW_ASKED, Severity.STOP, "", carried.least(), brief.flow(), Unit.LITRE_PER_SECOND);
        }
        if (carried.most() > TOO_MUCH * brief.flow()) {
            Severity severity = Severity.WARNING;
            add(NoticeKind.FLOW_ABOVE_ASKED, severity, "", carried.most(), brief.flow(), Unit.LITRE_PER_SECOND);
        }
        if (carried.fan() == null) {
            return;
        }
        switch (carried.fan()) {
            case STEADY -> {
                // as it should be
            }
            case BEFORE_SUMMIT -> notices.add(Notice.of(NoticeKind.FAN_BEFORE_SUMMIT, Severity.WARNING, ""));
            case TOO_WEAK -> notices.add(Notice.of(NoticeKind.FAN_TOO_WEAK, Severity.STOP, ""));
            case OFF_CURVE -> notices.add(Notice.of(NoticeKind.FAN_OFF_CURVE, Severity.WARNING, ""));
        }
    }

    private void add(NoticeKind kind, Severity severity, String part, double value, double limit, Unit unit) {
        notices.add(Notice.of(kind, severity, part, value, limit, unit));
    }
}
