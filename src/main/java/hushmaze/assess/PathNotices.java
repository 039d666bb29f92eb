package hushmaze.assess;

import hushmaze.build.joint.CollarPlan;
import hushmaze.project.Brief;
import hushmaze.project.Fitting;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import hushmaze.solid.PortPlace;
import hushmaze.sound.PathMethods;
import java.util.ArrayList;
import java.util.List;

/** What a path's verdicts and its surroundings give reason to say. */
final class PathNotices {
    private final PathResult result;
    private final Brief brief;
    private final List<Notice> notices = new ArrayList<>();

    private PathNotices(PathResult result) {
        this.result = result;
        this.brief = result.path().brief();
    }

    static List<Notice> of(PathResult result, Project project, boolean proved) {
        PathNotices all = new PathNotices(result);
        all.sound();
        all.notices.addAll(PathAirNotices.of(result, project.room().target()));
        all.space();
        all.notices.addAll(BuildNotices.of(result, project, proved));
        all.notices.addAll(FixingNotices.of(result.solid(), result.path().brief(), result.level()));
        all.collars(project);
        all.surroundings();
        all.methods();
        all.others();
        all.notices.addAll(result.pathAir().notices());
        return all.notices;
    }

    private void sound() {
        if (!result.quiet().ok()) {
            add(
                    NoticeKind.NOT_QUIET_ENOUGH,
                    Severity.STOP,
                    governing(),
                    result.quiet().margin(),
                    0,
                    Unit.DECIBEL);
        }
        if (result.quiet().wallsGovern()) {
            add(NoticeKind.WALLS_GOVERN, Severity.NOTE, governing());
        }
        int governing = BandSet.OCTAVE.bands().indexOf(result.quiet().governing());
        SoundRoute.Kind loudest = result.sound().loudestInOctave(governing);
        if (loudest == SoundRoute.Kind.FLOW) {
            add(NoticeKind.FLOW_NOISE_GOVERNS, result.quiet().ok() ? Severity.NOTE : Severity.WARNING, governing());
        }
        if (result.octaves().stream().anyMatch(b -> b.allowed() == Double.NEGATIVE_INFINITY)) {
            add(NoticeKind.OWN_NOISE_ABOVE_TARGET, Severity.STOP, firstOwnNoiseBand());
        }
        if (brief.noise().levels().bands() == BandSet.OCTAVE) {
            add(NoticeKind.OCTAVES_INTERPOLATED, Severity.NOTE, "");
        }
    }

    private String governing() {
        return result.quiet().governing().label() + " Hz";
    }

    private String firstOwnNoiseBand() {
        return result.octaves().stream()
                .filter(b -> b.allowed() == Double.NEGATIVE_INFINITY)
                .map(b -> b.band().label() + " Hz")
                .findFirst()
                .orElse("");
    }

    private void space() {
        PathResult.Fits fits = result.fits();
        if (!fits.ok()) {
            tooBig("width", fits.width(), brief.space().width());
            tooBig("height", fits.height(), brief.space().height());
            tooBig("depth", fits.depth() + fits.standOff(), brief.space().depth());
        }
        Port port = result.path().box().openingPort();
        Opening opening = brief.opening();
        boolean covers = port.width() >= opening.width() - 1e-6 && port.height() >= opening.height() - 1e-6
                || port.width() >= opening.height() - 1e-6 && port.height() >= opening.width() - 1e-6;
        if (!covers) {
            add(
                    NoticeKind.PORT_SMALLER_THAN_OPENING,
                    Severity.WARNING,
                    PortPlace.AT_OPENING,
                    port.area(),
                    opening.area(),
                    Unit.SQUARE_CENTIMETRE);
        }
    }

    private void tooBig(String side, double size, double room) {
        if (size > room + 1e-6) {
            add(NoticeKind.DOES_NOT_FIT, Severity.STOP, side, size, room, Unit.MILLIMETRE);
        }
    }

    private void collars(Project project) {
        for (CollarPlan collar : result.collars(project)) {
            if (collar.overhang() > 0) {
                String part = collar.end() == Fitting.End.AT_OPENING ? PortPlace.AT_OPENING : PortPlace.IN_ROOM;
                add(NoticeKind.COLLAR_OVERHANGS, Severity.STOP, part, collar.overhang(), 0, Unit.MILLIMETRE);
            }
        }
    }

    private void surroundings() {
        VentPath path = result.path();
        switch (path.brief().opening().beyond()) {
            case GARAGE -> add(NoticeKind.AIR_FROM_GARAGE, Severity.STOP, "");
            case OUTDOORS -> add(NoticeKind.OUTDOOR_OPENING, Severity.WARNING, "");
            case DUCTWORK -> add(NoticeKind.DUCTWORK_CAUTION, Severity.WARNING, "");
            case INDOORS -> {
                // Nothing to warn of.
            }
        }
    }

    /** What the methods themselves have to say. */
    private void methods() {
        SoundDetail sound = result.sound();
        PathMethods methods = sound.loss().methods();
        notices.addAll(methods.estimate().notices());
        if (methods.quick() == null) {
            add(NoticeKind.METHOD_NOT_RUN, Severity.NOTE, "quick wave");
        } else {
            notices.addAll(methods.quick().notices());
        }
        notices.addAll(sound.notices());
        if (methods.wave() == null) {
            add(NoticeKind.METHOD_NOT_RUN, Severity.NOTE, "wave solution");
        } else {
            notices.addAll(methods.wave().notices());
            if (methods.wave().computed() < BandSet.THIRD_OCTAVE.size()) {
                Band last = BandSet.THIRD_OCTAVE.bands().get(methods.wave().computed() - 1);
                add(NoticeKind.METHOD_NOT_RUN, Severity.NOTE, "wave solution above " + last.label() + " Hz");
            }
        }
    }

    /** What others hear of the room. */
    private void others() {
        for (Heard heard : result.sound().heard()) {
            if (!heard.received().ok()) {
                add(
                        NoticeKind.OTHERS_HEAR_TOO_MUCH,
                        Severity.STOP,
                        heard.received().margin().governing().label() + " Hz",
                        heard.received().margin().margin(),
                        0,
                        Unit.DECIBEL);
            }
        }
    }

    private void add(NoticeKind kind, Severity severity, String part) {
        notices.add(Notice.of(kind, severity, part));
    }

    private void add(NoticeKind kind, Severity severity, String part, double value, double limit, Unit unit) {
        notices.add(Notice.of(kind, severity, part, value, limit, unit));
    }
}
