package hushmaze.build.fixing;

import hushmaze.project.Brief;
import hushmaze.project.Drive;
import hushmaze.project.Mounting;
import hushmaze.project.Opening;
import hushmaze.solid.Axis;
import hushmaze.solid.Solid;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How a box gets to its place and stays there.
 *
 * @param lifting who lifts it
 * @param hanging what it asks of its screws; empty if it stands, if nothing is said of its mounting or if that is refused
 * @param row whether the screws find studs; empty as well when the spacing of the studs is not known
 * @param enough least number of screws in each row that takes the box; empty as well when no number does
 * @param refused what the screws go into, if that cannot be computed
 * @param standing how it stands; empty if it hangs
 */
public record Fixing(
        Lifting lifting,
        Optional<Hanging> hanging,
        Optional<StudRow> row,
        OptionalInt enough,
        Optional<Mounting.Into> refused,
        Optional<Standing> standing) {
    /**
     * The box over its opening.
     *
     * @param level the side of the box that is level on a wall; of no matter elsewhere
     */
    public static Fixing of(Solid solid, Brief brief, Axis level) {
        Opening.Surface surface = brief.opening().surface();
        Mounting mounting = brief.construction().mounting();
        if (surface == Opening.Surface.FLOOR) {
            return without(
                    Lifting.of(solid, false),
                    Optional.empty(),
                    Optional.of(Standing.of(solid, brief.opening(), pressure(brief))));
        }
        boolean high = surface == Opening.Surface.CEILING || mounting != null && mounting.isAbovePeople();
        Lifting lifting = Lifting.of(solid, high);
        if (mounting == null || mounting.intoOrStuds() != Mounting.Into.STUDS) {
            return without(lifting, Optional.ofNullable(mounting).map(Mounting::intoOrStuds), Optional.empty());
        }
        Hanging hanging = Hanging.of(solid, surface, level, mounting);
        Optional<StudRow> row =
                mounting.studSpacing() == null ? Optional.empty() : Optional.of(StudRow.of(hanging.side(), mounting));
        OptionalInt enough = Hanging.enough(solid, surface, level, mounting);
        return new Fixing(lifting, Optional.of(hanging), row, enough, Optional.empty(), Optional.empty());
    }

    private static Fixing without(Lifting lifting, Optional<Mounting.Into> refused, Optional<Standing> standing) {
        return new Fixing(lifting, Optional.empty(), Optional.empty(), OptionalInt.empty(), refused, standing);
    }

    /** Largest pressure there may be below a box that stands: of its drive, or the brief's limit. */
    private static double pressure(Brief brief) {
        boolean given = brief.driveOrUsual() == Drive.Kind.GIVEN_PRESSURE;
        return given ? brief.drive().pressure() : brief.maxPressureDrop();
    }

    /** Whether it hangs in a way. */
    public boolean hangs(Way way) {
        return hanging.filter(h -> h.way() == way).isPresent();
    }

    /** Whether more screws in each row are all that is missing, and those find studs for certain as far as is known. */
    public boolean moreScrewsDo() {
        return enough.isPresent()
                && (row.isEmpty() || enough.getAsInt() <= row.get().sureScrews());
    }
}
