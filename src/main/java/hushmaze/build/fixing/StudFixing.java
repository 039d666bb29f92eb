package hushmaze.build.fixing;

import hushmaze.project.Mounting;

/**
 * What one screw of a mounting may take for a load that stays.
 *
 * <p>Withdrawal as {@link Withdrawal}, shear as {@link YieldLimit} through a cleat of the same timber with the load across the
 * grain, both times 0.9 for a permanent load; wood screws less deep than ten diameters count in proportion. Both together at
 * an angle α to the face of the timber: Z' W' / (W' cos² α + Z' sin² α).
 *
 * <p>Source: National Design Specification for Wood Construction, 12.2 to 12.4; load duration, penetration and the combined
 * formula from memory, and so are specific gravities, root diameters and bending strengths. Range: dry stud timber, holes
 * drilled before, edge and end distances kept. Accuracy: screening; the printed tables of wood side pieces were not seen.
 *
 * @param withdrawal allowable pull, N
 * @param shear allowable shear, N
 * @param deepEnough whether the thread is at least as deep as the rules ask: four diameters of a lag screw, six of a wood screw
 */
public record StudFixing(double withdrawal, double shear, boolean deepEnough) {
    /** Factor for a load that stays for the life of the building. */
    public static final double PERMANENT = 0.9;

    private static final double ACROSS = 1.25;

    private record Size(boolean lag, double diameter, double root, double bending) {}

    /** One screw of a mounting through a whole cleat. */
    public static StudFixing of(Mounting mounting) {
        return of(mounting, mounting.cleat());
    }

    /**
     * One screw of a mounting through a cleat into which its head is let.
     *
     * @param way by which the box hangs: its head must not stand out of a batten on the wall
     */
    static StudFixing of(Mounting mounting, Way way) {
        return of(mounting, way == Way.HOOKED ? mounting.cleat() - recess(mounting.screw()) : mounting.cleat());
    }

    private static StudFixing of(Mounting mounting, double cleat) {
        double gravity = gravity(mounting.timber());
        Size size = size(mounting.screw());
        double diameter = size.diameter() * Pounds.INCH;
        double pull = size.lag()
                ? Withdrawal.lag(gravity, diameter, mounting.thread())
                : Withdrawal.woodScrew(gravity, diameter, mounting.thread());
        double bearing = size.lag() ? YieldLimit.acrossGrain(gravity, diameter) : YieldLimit.smallScrews(gravity);
        double shear = new YieldLimit(
                        size.root() * Pounds.INCH,
                        size.lag() ? ACROSS : 1,
                        mounting.thread(),
                        cleat,
                        bearing,
                        bearing,
                        size.bending() * Pounds.PSI)
                .shear();
        double depth = mounting.thread() / diameter;
        double full = size.lag() ? 1 : Math.min(1, depth / 10);
        return new StudFixing(PERMANENT * pull, PERMANENT * shear * full, depth >= (size.lag() ? 4 : 6));
    }

    /**
     * Share of the allowable load that pull and shear together use, 1 for all of it.
     *
     * @param pull along the screw, N
     * @param across on the screw, N
     */
    public double used(double pull, double across) {
        double load = Math.hypot(pull, across);
        if (load == 0) {
            return 0;
        }
        double sine = pull / load;
        double cosine = across / load;
        double allowed = withdrawal * shear / (withdrawal * cosine * cosine + shear * sine * sine);
        return load / allowed;
    }

    /** Specific gravity by which the specification takes a group of timber; from memory. */
    static double gravity(Mounting.Timber timber) {
        return switch (timber) {
            case SPRUCE_PINE_FIR -> 0.42;
            case SPRUCE_PINE_FIR_SOUTH -> 0.36;
            case HEM_FIR -> 0.43;
            case DOUGLAS_FIR_LARCH -> 0.50;
            case SOUTHERN_PINE -> 0.55;
        };
    }

    /**
     * How deep the head of a screw has to be let into its cleat to be flush, m: the head of a lag screw with its washer is about
     * as high as the screw is thick, the sunk head of a wood screw takes no more (common practice, no source).
     */
    static double recess(Mounting.StudScrew screw) {
        return size(screw).lag() ? diameter(screw) : 0;
    }

    /** Nominal diameter, m. */
    static double diameter(Mounting.StudScrew screw) {
        return size(screw).diameter() * Pounds.INCH;
    }

    /** Nominal and root diameter in inches, bending strength in psi; root diameters and strengths from memory. */
    private static Size size(Mounting.StudScrew screw) {
        return switch (screw) {
            case LAG_QUARTER -> new Size(true, 0.25, 0.173, 70_000);
            case LAG_FIVE_SIXTEENTHS -> new Size(true, 0.3125, 0.227, 60_000);
            case LAG_THREE_EIGHTHS -> new Size(true, 0.375, 0.265, 45_000);
            case WOOD_10 -> new Size(false, 0.190, 0.152, 80_000);
            case WOOD_12 -> new Size(false, 0.216, 0.171, 80_000);
        };
    }
}
