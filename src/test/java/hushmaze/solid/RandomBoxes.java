package hushmaze.solid;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.InvalidValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Seeded random boxes of every form, for property tests. */
public final class RandomBoxes {
    private static final String INVENTED = "invented for a test";

    private final Random random;

    public RandomBoxes(long seed) {
        random = new Random(seed);
    }

    /** The next box whose ports do not overlap. */
    public Box next() {
        while (true) {
            Box box = candidate();
            try {
                SolidBuilder.build(box);
                return box;
            } catch (InvalidValue overlappingPorts) {
                // Only possible when both ports are in one broad face of a single pass: draw again.
                if (!overlappingPorts.field().equals("roomPort")) {
                    throw overlappingPorts;
                }
            }
        }
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
                : new LinedFaces(
                        random.nextInt(5) > 0, random.nextInt(5) > 0, random.nextInt(5) > 0, random.nextBoolean());
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

    private Liner liner(double thickest) {
        double thickness =
                random.nextBoolean() ? Math.min(thickest, pick(0.025, 0.05)) : between(0.01, Math.max(0.011, thickest));
        return new Liner(
                "liner " + Math.round(thickness * 1e4),
                Math.min(thickness, thickest),
                48,
                20000,
                10000,
                30000,
                0.0009,
                INVENTED);
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

    private double pick(double... values) {
        return values[random.nextInt(values.length)];
    }
}
