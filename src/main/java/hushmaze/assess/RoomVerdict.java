package hushmaze.assess;

import hushmaze.project.Target;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.criterion.TargetCurve;

/** Whether the room as a whole is as asked: everything heard in it within the target, and a way in and out for the air. */
final class RoomVerdict {
    private static final double SLACK_DB = 1e-6;

    private RoomVerdict() {}

    /** Whether the air has a way in and out, and as much comes as the room needs. */
    static boolean aired(Assessment all) {
        return all.notices().stream().noneMatch(n -> n.severity() == Severity.STOP);
    }

    /** Whether it is quiet enough, for the paths' pessimistic edges and the room's own noise together. */
    static boolean quiet(Assessment all) {
        Target target = all.project().room().target();
        if (target.kind() == Target.Kind.DBA) {
            return all.room().rating().dbA() <= target.number() + SLACK_DB;
        }
        Spectrum levels = all.room().level().levelsInOctaves();
        Spectrum limits = TargetCurve.of(target).octaves();
        for (int i = 0; i < levels.size(); i++) {
            if (levels.value(i) > limits.value(i) + SLACK_DB) {
                return false;
            }
        }
        return true;
    }
}
