package hushmaze.solid;

import hushmaze.project.Seam;
import java.util.ArrayList;
import java.util.List;

/**
 * A part of a box that is carried in one piece.
 *
 * @param number counted from the near end, from 0
 * @param bounds block it fills
 * @param mass of its boards and liner, kg
 */
public record Module(int number, Cuboid bounds, double mass) {
    /** The modules of a solid, from the near end. */
    static List<Module> of(Solid solid) {
        List<Double> planes = new ArrayList<>();
        planes.add(solid.outer().x0());
        for (Seam seam : solid.box().seams()) {
            if (seam.comesApart()) {
                planes.add(solid.outer().x0() + seam.position());
            }
        }
        planes.add(solid.outer().x1());
        List<Module> modules = new ArrayList<>();
        for (int i = 0; i < planes.size() - 1; i++) {
            double from = planes.get(i);
            double to = planes.get(i + 1);
            double mass = solid.parts()
                    .filter(p -> p.bounds().centre(Axis.X) >= from && p.bounds().centre(Axis.X) < to)
                    .mapToDouble(Part::mass)
                    .sum();
            modules.add(new Module(i, solid.outer().with(Axis.X, from, to), mass));
        }
        return modules;
    }
}
