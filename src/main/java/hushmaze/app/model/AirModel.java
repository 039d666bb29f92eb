package hushmaze.app.model;

import hushmaze.material.Fan;
import hushmaze.project.Brief;
import hushmaze.project.DoorLeak;
import hushmaze.project.Drive;
import hushmaze.project.Fitting;
import hushmaze.project.Leakage;
import hushmaze.project.Room;
import hushmaze.project.RoomUse;
import hushmaze.project.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What moves the air, what is fitted to the ends of a path, and the times of a timetable: changes of more than one field. */
public final class AirModel {
    private static final Field DRIVE = Field.of("path.brief.drive");
    private static final Field FITTINGS = Field.of("path.brief.fittings");
    private static final Field TIMETABLE = Field.of("room.use.timetable");

    private final EditModel edit;
    private final List<Fan> fans;

    /** @param fans to choose from; at least one */
    public AirModel(EditModel edit, List<Fan> fans) {
        this.edit = edit;
        this.fans = List.copyOf(fans);
    }

    private Brief brief() {
        return edit.project().paths().get(edit.path()).brief();
    }

    /** Another kind of drive; what it needs begins as what it was when last chosen, or as an assumed value. */
    public Optional<String> setDriveKind(String label, Drive.Kind kind) {
        Drive old = brief().drive();
        boolean byPressure = kind == Drive.Kind.GIVEN_PRESSURE;
        boolean byFan = kind == Drive.Kind.FAN_CURVE;
        Double pressure =
                byPressure && old.pressure() == null ? Double.valueOf(AssumedAir.DUCT_PRESSURE) : old.pressure();
        boolean assumed = byPressure && pressure == AssumedAir.DUCT_PRESSURE;
        Fan fan = byFan && old.fan() == null ? fans.get(0) : old.fan();
        String source = assumed ? Assumed.source("drive.pressure") : Texts.of("source.kindChosen");
        return edit.change(
                DRIVE,
                label,
                label,
                p -> DRIVE.with(p, edit.path(), new Drive(kind, pressure, fan, old.speed(), source)));
    }

    /** What moves the air, in one line. */
    public String driveSummary() {
        Drive drive = brief().drive();
        return drive == null
                ? Texts.of("summary.drive.usual", Texts.word(brief().driveOrUsual()))
                : summaries().of(drive);
    }

    /** The fittings of the path looked at. */
    public List<Fitting> fittings() {
        return brief().fittings();
    }

    /** Kinds of fittings there are, in one line. */
    public String fittingsSummary() {
        return summaries().fittings(fittings());
    }

    /** Puts one more fitting at the end of the list; what connects goes to an end that is free. */
    public Optional<String> addFitting(Fitting.Kind kind) {
        Fitting.End end = Fitting.End.AT_OPENING;
        if (kind.connects() && isTaken(end, fittings().size())) {
            end = Fitting.End.IN_ROOM;
            if (isTaken(end, fittings().size())) {
                return Optional.of(Texts.of("fitting.bothTaken"));
            }
        }
        List<Fitting> all = new ArrayList<>(fittings());
        all.add(AssumedAir.fitting(kind, end, edit.project(), edit.path()));
        return setFittings(Texts.of("edit.element.add", Texts.word(kind)), all);
    }

    /** Takes one fitting out. */
    public Optional<String> removeFitting(int number) {
        List<Fitting> all = new ArrayList<>(fittings());
        Fitting gone = all.remove(number);
        return setFittings(Texts.of("edit.element.remove", Texts.word(gone.kind())), all);
    }

    /** Puts a fitting at an end. */
    public Optional<String> setEnd(int number, String label, Fitting.End end) {
        if (fittings().get(number).kind().connects() && isTaken(end, number)) {
            return Optional.of(Texts.of("fitting.endTaken"));
        }
        return edit.set(Field.of("path.brief.fittings." + number + ".end"), label, end);
    }

    private Optional<String> setFittings(String what, List<Fitting> all) {
        return edit.change(FITTINGS, Texts.of("fold.fittings"), what, p -> FITTINGS.with(p, edit.path(), all));
    }

    /** Whether another fitting than this one connects a duct there. */
    private boolean isTaken(Fitting.End end, int number) {
        for (int i = 0; i < fittings().size(); i++) {
            Fitting other = fittings().get(i);
            if (i != number && other.end() == end && other.kind().connects()) {
                return true;
            }
        }
        return false;
    }

    /** The times of the room's use; none if nothing is said of it. */
    public List<Session> timetable() {
        RoomUse use = edit.project().room().use();
        return use == null ? List.of() : use.timetable();
    }

    /** Puts one more time at the end: an hour with everybody in the room and the air on. */
    public Optional<String> addSession() {
        List<Session> all = new ArrayList<>(timetable());
        all.add(AssumedAir.session(edit.project().room()));
        return setTimetable("edit.session.add", all);
    }

    /** Takes one time out. */
    public Optional<String> removeSession(int number) {
        List<Session> all = new ArrayList<>(timetable());
        all.remove(number);
        return setTimetable("edit.session.remove", all);
    }

    private Optional<String> setTimetable(String what, List<Session> all) {
        return edit.change(TIMETABLE, Texts.of("use.timetable"), Texts.of(what), p -> TIMETABLE.with(p, 0, all));
    }

    /** What leaks, in one line. */
    public String leaksSummary() {
        Room room = edit.project().room();
        DoorLeak door = room.door();
        Leakage rest = room.leakage();
        if (door == null || rest == null) {
            return summaries().of(door == null ? rest : door);
        }
        String both =
                Texts.of("summary.leaks", summaries().words(door), summaries().words(rest));
        return Summaries.marked(both, Summaries.isGuessed(door) || Summaries.isGuessed(rest));
    }

    private Summaries summaries() {
        return new Summaries(edit.project().units());
    }
}
