package hushmaze.assess;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.material.Saw;
import hushmaze.material.Screw;
import hushmaze.material.Sheet;
import hushmaze.project.Brief;
import hushmaze.project.Construction;
import hushmaze.project.Noise;
import hushmaze.project.Opening;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Room;
import hushmaze.project.Space;
import hushmaze.project.Stock;
import hushmaze.project.Target;
import hushmaze.project.TitleBlock;
import hushmaze.project.VentPath;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.UnitSystem;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;

/** Small invented projects with round numbers, for tests. */
public final class TestRooms {
    private static final String SOURCE = "invented for a test";

    private TestRooms() {}

    /** A project of the given paths, with a target and the room's own noise (null for none). */
    public static Project project(Target target, Spectrum ownNoise, VentPath... paths) {
        Room room = new Room(
                "booth", 30, 2, 0.0052e-3, 420e-6, 200, Collections.nCopies(8, 5.0), 1.5, 20, 0, ownNoise, target);
        Stock stock = new Stock(
                List.of(new Sheet("2440 × 1220", 2.44, 1.22, null, null, SOURCE)),
                List.of(new Sheet("1200 × 600", 1.2, 0.6, null, null, SOURCE)),
                new Saw("saw", 0.0032, 0.005, SOURCE),
                new Screw("screw", 0.004, 0.05, 0.003, SOURCE));
        TitleBlock title = new TitleBlock("owner", "T-1", LocalDate.of(2026, 11, 25), "tester", null);
        return new Project(1, "test", title, UnitSystem.METRIC, room, stock, List.of(paths));
    }

    /** A target NC. */
    public static Target nc(double number) {
        return new Target(Target.Kind.NC, number, null, SOURCE);
    }

    /** A path with the same noise level in every octave at the microphone. */
    public static VentPath path(String name, Purpose purpose, double level, Double share) {
        return new VentPath(
                name, purpose, brief(level, share, new Space(0.9, 0.7, 0.35), Opening.Beyond.INDOORS), null);
    }

    /** A brief for 15 L/s through a wall opening of 200 × 100 mm. */
    public static Brief brief(double level, Double share, Space space, Opening.Beyond beyond) {
        Board mdf = new Board("MDF 18", 0.018, 750, 3.5e9, 0.02, false, SOURCE);
        Liner liner = new Liner("liner 25", 0.025, 48, 20000, 10000, 30000, 0.0009, SOURCE);
        Construction construction = new Construction(mdf, 1, 1, liner, false, PortFace.BACK, PortFace.FRONT, null);
        Opening opening = new Opening(Opening.Kind.WALL_OPENING, Opening.Surface.WALL, beyond, 0.2, 0.1);
        Noise noise = new Noise(Spectrum.flat(BandSet.OCTAVE, level), Noise.Place.AT_MICROPHONE, null, SOURCE);
        return new Brief(opening, 0.015, 30, 2.5, 1.3, noise, share, space, construction);
    }
}
