package hushmaze.solid;

import hushmaze.material.Board;
import hushmaze.material.Facing;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.Joinery;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Seam;
import hushmaze.quantity.InvalidValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Seeded random boxes of every form, for property tests. */
public final class RandomBoxes {
    private static final String INVENTED = "invented for a test";

    private final Random random;
    /** Of its own, so that the sizes of a series do not depend on how its boxes are joined. */
    private final Random joints;
    /** Of its own for the same reason. */
    private final Random plies;
    /** And this one. */
    private final Random facings;

    public RandomBoxes(long seed) {
        random = new Random(seed);
        joints = new Random(seed + 1);
        plies = new Random(seed + 2);
        facings = new Random(seed + 3);
    }

    /** The next box whose ports do not overlap. */
    public Box next() {
        while (true) {
            Box box = candidate();
            try {
                SolidBuilder.build(box);
                return joined(box);
            } catch (InvalidValue overlappingPorts) {
                // Only possible when both ports are in one broad face of a single pass: draw again.
                if (!overlappingPorts.field().equals("roomPort")) {
                    throw overlappingPorts;
                }
            }
        }
    }

    /** The box with random joints, or plain if a port is in their way or a seam finds no place. */
    private Box joined(Box box) {
        if (joints.nextInt(4) == 0) {
            return box;
        }
        double clearance = joints.nextBoolean() ? 0.0005 * joints.nextInt(3) : joint(0, 0.002);
        double inner = box.shell().get(0).thickness();
        double groove = joints.nextBoolean() ? 0 : joint(Math.min(0.0025, inner / 2), Math.min(0.015, inner / 2));
        double gasket = joints.nextInt(3) == 0 ? 0 : 0.001 * (1 + joints.nextInt(6));
        Joinery joinery = new Joinery(groove > 0 && groove <= clearance ? 0 : clearance, gasket, groove);
        double length = box.clearLength();
        List<Seam> seams = joints.nextInt(3) > 0 || length < 0.5
                ? List.of()
                : List.of(new Seam(Seam.Kind.values()[joints.nextInt(2)], joint(0.2, length - 0.2)));
        for (Box made : List.of(box.joined(joinery, seams), box.joined(joinery, List.of()), box)) {
            try {
                SolidBuilder.build(made);
                return made;
            } catch (InvalidValue inTheWay) {
                String field = inTheWay.field();
                if (!field.startsWith("seams") && !field.startsWith("openingPort.") && !field.startsWith("roomPort.")) {
                    throw inTheWay;
                }
            }
        }
        throw new IllegalStateException("a plain box cannot be built: " + box);
    }

    /** A board of a random real thickness. */
    public Board board() {
        double thickness = random.nextBoolean() ? between(0.006, 0.03) : pick(0.012, 0.018, 0.0183, 0.019, 0.022);
        return new Board(
                "board " + Math.round(thickness * 1e4), thickness, between(500, 900), 3.5e9, 0.02, false, INVENTED);
    }

    private Box candidate() {
        boolean chamber = random.nextInt(5) == 0;
        int passes = chamber ? 1 : 1 + random.nextInt(Box.MAX_PASSES);
        double clearWidth = between(chamber ? 0.2 : 0.04, chamber ? 0.6 : 0.25);
        double clearHeight = between(0.08, 0.5);
        double clearLength = between(0.3, 1.5);
        double turnGap = passes > 1 ? between(0.03, Math.min(0.3, clearLength - Box.MIN_BAFFLE)) : 0;
        Liner liner = random.nextInt(6) == 0 ? null : liner(Math.min(0.1, clearWidth));
        LinedFaces faces = liner == null
                ? LinedFaces.NONE
                : layered(
                        new LinedFaces(
                                random.nextInt(5) > 0 ? 1 : 0,
                                random.nextInt(5) > 0 ? 1 : 0,
                                random.nextInt(5) > 0 ? 1 : 0,
                                random.nextBoolean() ? 1 : 0),
                        2 * liner.thickness() <= clearWidth);
        List<Board> shell = new ArrayList<>();
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            shell.add(board());
        }
        Box.Form form = chamber ? Box.Form.OFFSET_CHAMBER : Box.Form.MAZE;
        return new Box(
                form,
                passes,
                clearWidth,
                clearHeight,
                clearLength,
                turnGap,
                shell,
                board(),
                1 + random.nextInt(2),
                liner,
                faces,
                port(clearWidth, clearHeight, clearLength),
                port(clearWidth, clearHeight, clearLength));
    }

    /** Now and then a second layer. */
    private LinedFaces layered(LinedFaces faces, boolean sides) {
        return new LinedFaces(
                faces.walls() * (sides ? ply() : 1),
                faces.baffles() * (sides ? ply() : 1),
                faces.ends() * ply(),
                faces.broad() * ply());
    }

    private int ply() {
        return plies.nextInt(4) == 0 ? 2 : 1;
    }

    private Liner liner(double thickest) {
        double thickness =
                random.nextBoolean() ? Math.min(thickest, pick(0.025, 0.05)) : between(0.01, Math.max(0.011, thickest));
        Liner bare = new Liner(
                "liner " + Math.round(thickness * 1e4),
                Math.min(thickness, thickest),
                48,
                20000,
                10000,
                30000,
                0.0009,
                INVENTED);
        return facings.nextInt(3) > 0 ? bare : bare.faced(facing());
    }

    private Facing facing() {
        boolean film = facings.nextBoolean();
        double mass = 0.02 + 0.2 * facings.nextDouble();
        return new Facing(film ? "film" : "cloth", mass, film ? null : 50 + 400 * facings.nextDouble(), INVENTED);
    }

    private Port port(double clearWidth, double clearHeight, double clearLength) {
        PortFace face = PortFace.values()[random.nextInt(4)];
        boolean fills = random.nextInt(4) == 0;
        if (face == PortFace.END) {
            double width = fills ? clearWidth : between(0.5, 1) * clearWidth;
            return new Port(face, width, fills ? clearHeight : between(0.5, 1) * clearHeight, 0);
        }
        double width = between(0.03, clearLength / 2);
        double distance = random.nextBoolean() ? 0 : between(0, clearLength - width);
        double room = face.isBroad() ? clearWidth : clearHeight;
        return new Port(face, width, fills ? room : between(0.5, 1) * room, distance);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double joint(double low, double high) {
        return low + (high - low) * joints.nextDouble();
    }

    private double pick(double... values) {
        return values[random.nextInt(values.length)];
    }
}
