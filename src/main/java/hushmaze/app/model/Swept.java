package hushmaze.app.model;

import hushmaze.assess.AskedFlows;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Noise;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.ResizedBox;
import hushmaze.size.SweepRange;
import java.math.BigDecimal;

/** A number of a path that is tried at other values, all else as it is. Holes that fill their pass go on filling it. */
public enum Swept {
    FLOW("path.brief.flow"),
    CLEAR_WIDTH("path.box.clearWidth"),
    CLEAR_HEIGHT("path.box.clearHeight"),
    CLEAR_LENGTH("path.box.clearLength"),
    TURN_GAP("path.box.turnGap"),
    PASSES("path.box.passes"),
    LINER("path.box.liner.thickness"),
    /** The noise, louder or quieter by so much than it is. */
    NOISE("path.brief.noise");

    /** Values between half and twice the present one, about. */
    private static final int VALUES = 24;
    /** Most passes fewer or more than there are. */
    private static final int PASSES_AWAY = 3;
    /** Decibels quieter and louder. */
    private static final int NOISE_AWAY = 15;

    private static final int NOISE_VALUES = 13;
    private static final double MILLIMETRES_AN_INCH = 25.4;

    private final Field field;

    Swept(String name) {
        this.field = Field.of(name);
    }

    Field field() {
        return field;
    }

    /** Unit of its values. */
    public Unit unit() {
        return this == NOISE ? Unit.DECIBEL : field.unit();
    }

    /** Whether a path has it: one without a box has none of them. */
    public boolean isIn(Project project, int path) {
        Box box = project.paths().get(path).box();
        if (box == null) {
            return false;
        }
        return switch (this) {
            case TURN_GAP -> box.passes() > 1;
            case PASSES -> box.form() == Box.Form.MAZE;
            case LINER -> box.liner() != null && !box.linedFaces().equals(LinedFaces.NONE);
            default -> true;
        };
    }

    /** Its present value. */
    public double now(Project project, int path) {
        if (this == NOISE) {
            return 0;
        }
        Project whole = this == FLOW ? AskedFlows.settled(project) : project;
        double si = ((Number) field.get(whole, path)).doubleValue();
        return unit().decimalFromSi(si).doubleValue();
    }

    /** The values tried, in steps that are even in the units shown; the present one is among them. */
    SweepRange range(double now, UnitSystem units) {
        if (this == NOISE) {
            return new SweepRange(-NOISE_AWAY, NOISE_AWAY, NOISE_VALUES);
        }
        if (this == PASSES) {
            int from = (int) Math.max(1, now - PASSES_AWAY);
            int to = (int) Math.min(Box.MAX_PASSES, now + PASSES_AWAY);
            return new SweepRange(from, to, to - from + 1);
        }
        double step = step(1.5 * now / VALUES, units);
        int below = Math.max(1, (int) Math.floor(now / 2 / step));
        int above = Math.max(1, (int) Math.floor(now / step));
        BigDecimal by = BigDecimal.valueOf(step);
        BigDecimal middle = BigDecimal.valueOf(now);
        return new SweepRange(
                middle.subtract(by.multiply(BigDecimal.valueOf(below))).doubleValue(),
                middle.add(by.multiply(BigDecimal.valueOf(above))).doubleValue(),
                below + above + 1);
    }

    private double step(double least, UnitSystem units) {
        if (units == UnitSystem.INCH && unit() == Unit.MILLIMETRE) {
            double inches = least / MILLIMETRES_AN_INCH;
            return MILLIMETRES_AN_INCH * Math.pow(2, Math.ceil(Math.log(inches) / Math.log(2)));
        }
        return even(least);
    }

    /** 1, 2 or 5 times a power of ten, no less than asked for. */
    public static double even(double least) {
        double ten = Math.pow(10, Math.floor(Math.log10(least)));
        for (int times : new int[] {1, 2, 5}) {
            if (times * ten >= least * (1 - 1e-9)) {
                return times * ten;
            }
        }
        return 10 * ten;
    }

    /**
     * The project with another value.
     *
     * @throws hushmaze.quantity.InvalidValue if it may not have it
     */
    Project in(Project project, int path, double value) {
        VentPath vent = project.paths().get(path);
        double si = unit().toSi(BigDecimal.valueOf(value));
        return switch (this) {
            case FLOW, LINER -> field.with(project, path, si);
            case NOISE -> field.with(project, path, louder(vent.brief().noise(), value));
            case CLEAR_WIDTH -> resized(project, path, ResizedBox.Size.WIDTH, si);
            case CLEAR_HEIGHT -> resized(project, path, ResizedBox.Size.HEIGHT, si);
            case CLEAR_LENGTH -> resized(project, path, ResizedBox.Size.LENGTH, si);
            case TURN_GAP -> resized(project, path, ResizedBox.Size.GAP, si);
            case PASSES -> project.withPath(path, vent.withBox(new ResizedBox(vent.box()).ofPasses((int) si)));
        };
    }

    /** The project with another clear size of the box in a path, m; holes that fill their pass go on filling it. */
    static Project resized(Project project, int path, ResizedBox.Size size, double to) {
        VentPath vent = project.paths().get(path);
        return project.withPath(path, vent.withBox(new ResizedBox(vent.box()).with(size, to)));
    }

    private static Noise louder(Noise noise, double by) {
        Spectrum levels = noise.levels();
        return new Noise(levels.plus(by), noise.place(), noise.distance(), noise.source());
    }
}
