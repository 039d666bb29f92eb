package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * One room with its vent paths: everything the program needs to know, and nothing it can compute.
 *
 * @param formatVersion of the file; see {@link #FORMAT_VERSION}
 * @param name of the project, also used in file names
 * @param titleBlock what is written on the drawings
 * @param units in which sizes are shown and printed
 * @param room the quiet room
 * @param stock what can be bought
 * @param paths one or more
 * @param readings what was measured of the air of the room; absent if nothing was
 */
public record Project(
        int formatVersion,
        String name,
        TitleBlock titleBlock,
        UnitSystem units,
        Room room,
        Stock stock,
        List<VentPath> paths,
        @MayBeAbsent RoomReadings readings) {
    /** The format this program writes; it reads this one and older ones. */
    public static final int FORMAT_VERSION = 1;
    /** Most vent paths a project may have. */
    public static final int MAX_PATHS = 12;

    public Project {
        InvalidValue.within("formatVersion", formatVersion, 1, FORMAT_VERSION);
        InvalidValue.text("name", name, 60);
        InvalidValue.present("titleBlock", titleBlock);
        InvalidValue.present("units", units);
        InvalidValue.present("room", room);
        InvalidValue.present("stock", stock);
        paths = List.copyOf(InvalidValue.present("paths", paths));
        if (paths.isEmpty() || paths.size() > MAX_PATHS) {
            throw new InvalidValue("paths", paths.size() + " vent paths", "1 to " + MAX_PATHS + " vent paths", "");
        }
        if (paths.stream().map(VentPath::name).distinct().count() != paths.size()) {
            throw new InvalidValue("paths", "two paths of the same name", "differently named paths", "");
        }
        readings = readings == null || readings.empty() ? null : readings;
        for (int i = 0; i < paths.size(); i++) {
            if (room.use() == null && paths.get(i).brief().flow() == null) {
                throw new InvalidValue(
                        "paths[" + i + "].brief.flow", "nothing", "given, or room.use that it follows from", "");
            }
        }
    }

    /** A project of whose room nothing was measured. */
    public Project(
            int formatVersion,
            String name,
            TitleBlock titleBlock,
            UnitSystem units,
            Room room,
            Stock stock,
            List<VentPath> paths) {
        this(formatVersion, name, titleBlock, units, room, stock, paths, null);
    }

    /** The same project with another path in a place. */
    public Project withPath(int index, VentPath other) {
        List<VentPath> others = new ArrayList<>(paths);
        others.set(index, other);
        return withPaths(others);
    }

    /** The same project with other paths. */
    public Project withPaths(List<VentPath> others) {
        return new Project(formatVersion, name, titleBlock, units, room, stock, others, readings);
    }

    /** The same project with other sheets, saw or screw. */
    public Project withStock(Stock other) {
        return new Project(formatVersion, name, titleBlock, units, room, other, paths, readings);
    }

    /** The same project shown and printed in some units. */
    public Project in(UnitSystem other) {
        return new Project(formatVersion, name, titleBlock, other, room, stock, paths, readings);
    }

    /** The same project of which nothing was measured; what is predicted for it is the same. */
    public Project unmeasured() {
        List<VentPath> others = paths.stream().map(p -> p.measured(null)).toList();
        return withPaths(others).measured(null);
    }

    /** The same project with the readings of another one that has as many paths. */
    public Project measuredLike(Project other) {
        List<VentPath> others = new ArrayList<>();
        for (int i = 0; i < paths.size(); i++) {
            others.add(paths.get(i).measured(other.paths().get(i).readings()));
        }
        return withPaths(others).measured(other.readings());
    }

    /** What was measured of the air of the room, which may be nothing. */
    public RoomReadings readingsOrNone() {
        return readings == null ? RoomReadings.NONE : readings;
    }

    /** The same project with other readings of its room's air. */
    public Project measured(RoomReadings other) {
        return new Project(formatVersion, name, titleBlock, units, room, stock, paths, other);
    }
}
