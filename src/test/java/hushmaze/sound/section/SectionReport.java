package hushmaze.sound.section;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.BandSet;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.porous.MikiLiner;
import hushmaze.sound.wave.WaveAccuracy;
import hushmaze.sound.wave.WaveBands;
import hushmaze.sound.wave.WaveSolver;
import hushmaze.sound.wave.WaveSpace;
import hushmaze.work.Progress;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Prints for twelve seeded boxes of usual sizes what the flat section and the solution in three directions give per third octave,
 * 63 to 800 Hz, and how far they are apart. Boxes 7 to 10 have lined broad faces and ports through them, 11 and 12 have
 * lined broad faces only.
 *
 * <p>With the argument "high" it does so for ten boxes of one pass with ports through bare broad faces, 1 to 1.6 kHz, all on
 * both processors: what the flat section is worth where it stands in for them.
 */
public final class SectionReport {
    private static final int BOXES = 12;
    private static final int HIGH_BOXES = 10;
    private static final int BROAD_PORTS_FROM = 6;
    private static final int BROAD_PORTS_TO = 10;
    private static final int FIRST_BAND = 1;
    private static final int LAST_BAND = 12;
    private static final int SAMPLES = 3;
    private static final double SOUND_SPEED = 343.2;

    private SectionReport() {}

    /** Prints the table. */
    public static void main(String[] args) {
        boolean high = args.length > 0 && args[0].equals("high");
        int first = high ? LAST_BAND + 1 : FIRST_BAND;
        int last = high ? LAST_BAND + 3 : LAST_BAND;
        Random random = new Random(4);
        StringBuilder head = new StringBuilder(String.format(Locale.ROOT, "%-34s%-6s", "box", ""));
        for (int band = first; band <= last; band++) {
            head.append(String.format(
                    Locale.ROOT, "%7s", BandSet.THIRD_OCTAVE.bands().get(band).label()));
        }
        System.out.println(head);
        for (int i = 0; i < (high ? HIGH_BOXES : BOXES); i++) {
            boolean broad = i >= BROAD_PORTS_FROM && i < BROAD_PORTS_TO;
            Solid solid = SolidBuilder.build(
                    high
                            ? box(random, 1, false, true)
                            : box(random, 2 + random.nextInt(3), i >= BROAD_PORTS_FROM, broad));
            MikiLiner liner = new MikiLiner(solid.box().liner().flowResistivity());
            double[] flat = losses(SolidSpace.flat(solid, liner, SOUND_SPEED), WaveAccuracy.STANDARD, first, last);
            double[] full = losses(SolidSpace.full(solid, liner, SOUND_SPEED), PathWave.FULL_ACCURACY, first, last);
            print(i + 1 + " " + name(solid.box()), "flat", flat);
            print(ports(solid.box()), "full", full);
            double[] apart = new double[flat.length];
            for (int band = 0; band < flat.length; band++) {
                apart[band] = flat[band] - full[band];
            }
            print("", "diff", apart);
        }
    }

    private static void print(String name, String what, double[] values) {
        StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%-34s%-6s", name, what));
        for (double value : values) {
            line.append(String.format(Locale.ROOT, "%7.1f", value));
        }
        System.out.println(line);
    }

    private static double[] losses(WaveSpace space, WaveAccuracy accuracy, int first, int last) {
        return WaveBands.of(
                        new WaveSolver(space, accuracy),
                        BandSet.THIRD_OCTAVE.bands().subList(first, last + 1),
                        SAMPLES,
                        Progress.NONE)
                .losses()
                .stream()
                .mapToDouble(loss -> loss)
                .toArray();
    }

    private static String name(Box box) {
        return String.format(
                Locale.ROOT,
                "%d x %.0fx%.0fx%.0f gap %.0f liner %.0f",
                box.passes(),
                1000 * box.clearWidth(),
                1000 * box.clearHeight(),
                1000 * box.clearLength(),
                1000 * box.turnGap(),
                1000 * box.liner().thickness());
    }

    private static String ports(Box box) {
        return "  " + port(box.openingPort()) + ", " + port(box.roomPort())
                + (box.linedFaces().broad() > 0 ? ", all lined" : "");
    }

    private static String port(Port port) {
        return String.format(Locale.ROOT, "%s %.0fx%.0f", port.face(), 1000 * port.width(), 1000 * port.height());
    }

    private static Box box(Random random, int passes, boolean allLined, boolean broad) {
        double width = tens(random, 80, 150);
        double height = tens(random, 150, 350);
        double length = tens(random, 400, 900);
        Board board = new Board("board", 0.018, 750, 3.5e9, 0.02, false, "invented for a report");
        double thickness = random.nextBoolean() ? 0.025 : 0.05;
        Liner liner = new Liner("liner", thickness, 48, 20_000, 10_000, 30_000, 0.0009, "invented for a report");
        Port opening = broad ? broadPort(random, PortFace.BACK, width, length) : port(random, width, height, length);
        Port room = broad ? broadPort(random, PortFace.FRONT, width, length) : port(random, width, height, length);
        return new Box(
                Box.Form.MAZE,
                passes,
                width,
                height,
                length,
                width,
                List.of(board),
                board,
                1,
                liner,
                allLined ? LinedFaces.ALL : LinedFaces.FOLD_PLANE,
                opening,
                room);
    }

    private static Port broadPort(Random random, PortFace face, double width, double length) {
        return new Port(face, Math.min(tens(random, 150, 300), length), width, 0);
    }

    private static Port port(Random random, double width, double height, double length) {
        if (random.nextBoolean()) {
            return new Port(PortFace.END, width, tens(random, 100, 1000 * height), 0);
        }
        return new Port(PortFace.SIDE, Math.min(width, length), tens(random, 100, 1000 * height), 0);
    }

    /** A size in whole centimetres, m. */
    private static double tens(Random random, double lowMm, double highMm) {
        return Math.round(lowMm / 10 + random.nextDouble() * (highMm - lowMm) / 10) / 100.0;
    }
}
