package hushmaze.app.model;

import hushmaze.project.DoorLeak;
import hushmaze.project.Project;
import java.util.List;

/** A project as if nothing but the plain figures were known of its air, so that tests do not depend on what a sample says. */
public final class PlainAir {
    private PlainAir() {}

    /** 28 L/s in every path, 0.0048 L/s of carbon dioxide a person, 320 W, and a door with 5 m of gaps 2 mm wide. */
    public static Project of(Project project) {
        Project plain = project;
        for (int i = 0; i < project.paths().size(); i++) {
            plain = Field.of("path.brief.flow").with(plain, i, 0.028);
            plain = Field.of("path.brief.drive").with(plain, i, null);
            plain = Field.of("path.brief.fittings").with(plain, i, List.of());
        }
        plain = Field.of("room.co2PerPerson").with(plain, 0, 4.8e-6);
        plain = Field.of("room.heatGain").with(plain, 0, 320.0);
        plain = Field.of("room.door").with(plain, 0, new DoorLeak(5, 0.002, "Made up"));
        plain = Field.of("room.leakage").with(plain, 0, null);
        return Field.of("room.use").with(plain, 0, null);
    }
}
