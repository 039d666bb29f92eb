package hushmaze.build.fixing;

import hushmaze.build.fixing.Rows.Cleat;
import hushmaze.build.fixing.Rows.Kind;
import hushmaze.project.Mounting;
import hushmaze.solid.Cuboid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The pieces of timber between a hanging box and its surface, and where their screws go. */
final class Timbers {
    private final Lie lie;
    private final Mounting mounting;
    private final double side;
    private final double middle;
    private final double diameter;
    private final Optional<StudRow> row;

    Timbers(Lie lie, Mounting mounting) {
        this.lie = lie;
        this.mounting = mounting;
        this.side = lie.side(lie.along());
        this.middle = lie.solid().outer().centre(lie.along());
        this.diameter = StudFixing.diameter(mounting.screw());
        this.row = mounting.studSpacing() == null ? Optional.empty() : Optional.of(StudRow.of(side, mounting));
    }

    /** The lowest first. */
    List<Cleat> all(Way way) {
        if (way != Way.HOOKED) {
            double centre = lie.solid().outer().centre(lie.between());
            double half = mounting.rowDistance() / 2;
            return List.of(
                    around(Kind.CLEAT, length(), centre - half, screws()),
                    around(Kind.CLEAT, length(), centre + half, screws()));
        }
        double lower = spacer();
        double upper = lower + mounting.rowDistance();
        Hook hook = Hook.of(mounting, row.map(StudRow::paired).orElse(false));
        double inner = Math.min(side, length());
        return List.of(
                around(Kind.SPACER, inner, lower, List.of()),
                piece(Kind.WALL_HOOK, length(), upper - hook.below(), upper + hook.tip(), upper, screws()),
                piece(Kind.BOX_HOOK, inner, upper + hook.foot(), upper + hook.reach(), upper, List.of()));
    }

    /** Middle of the spacer: along the lower edge of the box, or above the port where that leaves no room below. */
    private double spacer() {
        double low = lie.solid().outer().low(lie.between());
        Cuboid hole = lie.solid().openingPort().hole();
        boolean room = hole.low(lie.between()) - low >= width();
        return width() / 2 + (room ? low : hole.high(lie.between()) + PortFrame.LEAST);
    }

    private double width() {
        return row.map(StudRow::cleatWidth).orElseGet(() -> StudRow.width(false, diameter));
    }

    private double length() {
        return mounting.cleatLength() == null ? side : mounting.cleatLength();
    }

    private Cleat around(Kind kind, double length, double at, List<Double> screws) {
        double half = width() / 2;
        return piece(kind, length, at - half, at + half, at, screws);
    }

    private Cleat piece(Kind kind, double length, double low, double high, double at, List<Double> screws) {
        return new Cleat(
                kind,
                middle - length / 2,
                middle + length / 2,
                low,
                high,
                at,
                mounting.cleat(),
                diameter,
                row.map(StudRow::paired).orElse(false),
                screws);
    }

    private List<Double> screws() {
        return row.map(r -> inStuds(studs(r), mounting.screwsPerRow()))
                .orElseGet(() -> spread(length() - 2 * StudRow.END * diameter, mounting.screwsPerRow()));
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
    private List<Double> studs(StudRow r) {
        double port = lie.solid().openingPort().hole().centre(lie.along());
        double reach = r.cleat() / 2 - StudRow.END * r.diameter();
        double first = port + r.spacing() / 2;
        double lowest = first - Math.floor((first - (middle - reach)) / r.spacing()) * r.spacing();
        List<Double> studs = new ArrayList<>();
        for (double at = lowest; at <= middle + reach; at += r.spacing()) {
            studs.add(at);
        }
        studs.sort(Comparator.comparingDouble(at -> Math.abs(at - middle)));
        return studs;
    }

    private List<Double> spread(double length, int screws) {
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < screws; i++) {
            places.add(screws == 1 ? middle : middle + length * ((double) i / (screws - 1) - 0.5));
        }
        return places;
    }
}
