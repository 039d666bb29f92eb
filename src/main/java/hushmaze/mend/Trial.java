package hushmaze.mend;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.project.Project;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.work.Progress;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Judges changed projects beside the unchanged one, both by the same methods. */
final class Trial {
    private record Sign(NoticeKind kind, String part) {}

    private final Project project;
    private final int path;
    private final Notice notice;
    private final Methods methods;
    private final Progress progress;
    private final Assessment before;

    Trial(Project project, int path, Notice notice, Methods methods, Progress progress) {
        this.project = project;
        this.path = path;
        this.notice = notice;
        this.methods = methods;
        this.progress = progress;
        this.before = Assessor.assess(project, methods, progress);
    }

    /** Whether these methods see what the notice is about. */
    boolean sees() {
        return signs(before).anyMatch(new Sign(notice.kind(), notice.part())::equals);
    }

    /** Margin to the target of the path, as it is, dB. */
    double margin() {
        return before.paths().get(path).quiet().margin();
    }

    /** What a change does; nothing if it cannot be made, or spoils something that was good. */
    private Assessment judged(UnaryOperator<Project> change) {
        progress.check(0, "");
        try {
            Assessment after = Assessor.assess(change.apply(project), methods, progress);
            return spoils(after) ? null : after;
        } catch (InvalidValue e) {
            return null;
        }
    }

    /** Whether the notice is gone with a change that spoils nothing. */
    boolean mends(UnaryOperator<Project> change) {
        Assessment after = judged(change);
        return after != null && signs(after).noneMatch(new Sign(notice.kind(), notice.part())::equals);
    }

    /** By how much a change that spoils nothing raises the margin of the path, dB. */
    OptionalDouble gain(UnaryOperator<Project> change) {
        Assessment after = judged(change);
        return after == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(after.paths().get(path).quiet().margin() - margin());
    }

    private boolean spoils(Assessment after) {
        Set<Sign> stops = new HashSet<>(stops(before).toList());
        if (stops(after).anyMatch(s -> !stops.contains(s))) {
            return true;
        }
        for (int i = 0; i < before.paths().size(); i++) {
            PathResult old = before.paths().get(i);
            PathResult now = after.paths().get(i);
            boolean worse = old.quiet().ok() && !now.quiet().ok()
                    || old.air().ok() && !now.air().ok()
                    || old.fits().ok() && !now.fits().ok()
                    || old.buildable().ok() && !now.buildable().ok()
                    || old.holds() && !now.holds();
            if (worse) {
                return true;
            }
        }
        return before.roomOk() && !after.roomOk();
    }

    private Stream<Sign> stops(Assessment all) {
        return notices(all).filter(n -> n.severity() == Severity.STOP).map(n -> new Sign(n.kind(), n.part()));
    }

    private Stream<Sign> signs(Assessment all) {
        return notices(all).map(n -> new Sign(n.kind(), n.part()));
    }

    private Stream<Notice> notices(Assessment all) {
        return Stream.of(all.paths().get(path).notices(), all.notices()).flatMap(List::stream);
    }
}
