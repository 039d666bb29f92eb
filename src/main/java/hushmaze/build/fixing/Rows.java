package hushmaze.build.fixing;

import hushmaze.project.Brief;
import hushmaze.project.Mounting;
import hushmaze.project.Opening;
import hushmaze.solid.Axis;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How a box lies on its surface, and where its cleats with the two rows of screws go. Places are the solid's own, m.
 *
 * @param away direction of the box that points away from the surface
 * @param along direction of the rows
 * @param between direction from one row to the other
 * @param centre distance of the centre of mass from the face at the surface, m
 * @param cleats the two cleats; none for a box that stands or is not fixed to studs
 */
public record Rows(Axis away, Axis along, Axis between, double centre, List<Cleat> cleats) {
    /**
     * A cleat with a row of screws in its middle.
     *
     * @param from where it begins along the row
     * @param to where it ends
     * @param at place of the row from one cleat to the other
     * @param width across the row, at least, m
     * @param thickness that holds the box off its surface, m
     * @param screws places of the screws along the row if the opening is in the middle between two studs; spread evenly over the
     *     cleat where their spacing is not known. Where two share a stud the place is there twice
     */
    public record Cleat(double from, double to, double at, double width, double thickness, List<Double> screws) {
        public Cleat {
            screws = List.copyOf(screws);
        }
    }

    public Rows {
        cleats = List.copyOf(cleats);
    }

    /**
     * The box over its opening.
     *
     * @param level the side of the box that is level on a wall; of no matter elsewhere
     */
    public static Rows of(Solid solid, Brief brief, Axis level) {
        Opening.Surface surface = brief.opening().surface();
        Lie lie = Lie.of(solid, surface, level);
        Mounting mounting = brief.construction().mounting();
        List<Cleat> cleats = new ArrayList<>();
        boolean hangs = surface != Opening.Surface.FLOOR;
        if (hangs && mounting != null && mounting.intoOrStuds() == Mounting.Into.STUDS) {
            double middle = solid.outer().centre(lie.between());
            cleats.add(cleat(lie, mounting, middle - mounting.rowDistance() / 2));
            cleats.add(cleat(lie, mounting, middle + mounting.rowDistance() / 2));
        }
        return new Rows(lie.away(), lie.along(), lie.between(), lie.arm(), cleats);
    }

    private static Cleat cleat(Lie lie, Mounting mounting, double at) {
        double side = lie.side(lie.along());
        double middle = lie.solid().outer().centre(lie.along());
        double length = mounting.cleatLength() == null ? side : mounting.cleatLength();
        double diameter = StudFixing.diameter(mounting.screw());
        Optional<StudRow> row =
                mounting.studSpacing() == null ? Optional.empty() : Optional.of(StudRow.of(side, mounting));
        double width = row.map(StudRow::cleatWidth).orElseGet(() -> StudRow.width(false, diameter));
        List<Double> screws = row.map(r -> inStuds(studs(r, lie, middle), mounting.screwsPerRow()))
                .orElseGet(() -> spread(length - 2 * StudRow.END * diameter, middle, mounting.screwsPerRow()));
        return new Cleat(middle - length / 2, middle + length / 2, at, width, mounting.cleat(), screws);
    }

    /** One screw in every stud, or two in each from the first on where there are more screws than studs. */
    private static List<Double> inStuds(List<Double> studs, int screws) {
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < Math.min(screws, StudRow.PER_STUD * studs.size()); i++) {
            places.add(studs.get(i % studs.size()));
        }
        return places;
    }

    /** Studs the cleat crosses when the opening is in the middle between two of them, nearest the middle of the box first. */
    private static List<Double> studs(StudRow row, Lie lie, double middle) {
        double port = lie.solid().openingPort().hole().centre(lie.along());
        double reach = row.cleat() / 2 - StudRow.END * row.diameter();
        double first = port + row.spacing() / 2;
        double lowest = first - Math.floor((first - (middle - reach)) / row.spacing()) * row.spacing();
        List<Double> studs = new ArrayList<>();
        for (double at = lowest; at <= middle + reach; at += row.spacing()) {
            studs.add(at);
        }
        studs.sort(Comparator.comparingDouble(at -> Math.abs(at - middle)));
        return studs;
    }

    private static List<Double> spread(double length, double middle, int screws) {
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < screws; i++) {
            places.add(screws == 1 ? middle : middle + length * ((double) i / (screws - 1) - 0.5));
        }
        return places;
    }
}
