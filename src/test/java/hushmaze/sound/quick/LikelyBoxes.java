package hushmaze.sound.quick;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.SolidBuilder;
import java.util.List;
import java.util.Random;

/**
 * Seeded random boxes as people might build them: 1 to 5 passes of 60 to 200 mm by 0.3 to 1.2 m, liner of 15 to 60 mm, gaps of
 * 0.7 to 1.5 widths, two in three lined all round the fold plane and the others in part, ports in ends and sides.
 */
final class LikelyBoxes {
    private static final String INVENTED = "invented for a test";

    private final Random random;

    LikelyBoxes(long seed) {
        random = new Random(seed);
    }

    Box next() {
        while (true) {
            try {
                Box box = candidate();
                SolidBuilder.build(box);
                return box;
            } catch (InvalidValue doesNotFit) {
                // a gap or a port longer than the pass: draw again
                if (doesNotFit.field().isEmpty()) {
                    throw doesNotFit;
                }
            }
        }
    }

    private Box candidate() {
        int passes = 1 + random.nextInt(5);
        double width = between(0.06, 0.2);
        double height = between(0.15, 0.4);
        double length = between(0.3, 1.2);
        double gap = passes > 1 ? between(0.7, 1.5) * width : 0;
        double thickness = Math.min(width, between(0.015, 0.06));
        double sigma = Math.exp(between(Math.log(8000), Math.log(40000)));
        LinedFaces faces = random.nextInt(3) > 0
                ? LinedFaces.FOLD_PLANE
                : new LinedFaces(
                        random.nextBoolean() ? 1 : 0, random.nextBoolean() ? 1 : 0, random.nextBoolean() ? 1 : 0, 0);
        Board board = new Board("board", 0.018, 750, 3.5e9, 0.02, false, INVENTED);
        Liner liner = new Liner("liner", thickness, 48, sigma, sigma, sigma, 0.0009, INVENTED);
        return new Box(
                Box.Form.MAZE,
                passes,
                width,
                height,
                length,
                gap,
                List.of(board),
                board,
                1,
                liner,
                faces,
                port(width, height, length),
                port(width, height, length));
    }

    private Port port(double width, double height, double length) {
        double high = random.nextBoolean() ? height : between(0.6, 1) * height;
        if (random.nextBoolean()) {
            return new Port(PortFace.END, random.nextBoolean() ? width : between(0.6, 1) * width, high, 0);
        }
        double along = Math.min(between(0.7, 1.5) * width, length / 3);
        return new Port(PortFace.SIDE, along, high, random.nextBoolean() ? 0 : between(0, 0.05));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
