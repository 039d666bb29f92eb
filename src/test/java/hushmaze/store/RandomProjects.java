package hushmaze.store;

import hushmaze.material.Board;
import hushmaze.material.Facing;
import hushmaze.material.Fan;
import hushmaze.material.Liner;
import hushmaze.material.Saw;
import hushmaze.material.Screw;
import hushmaze.material.Sheet;
import hushmaze.project.Activity;
import hushmaze.project.AirRule;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Choices;
import hushmaze.project.Construction;
import hushmaze.project.DoorLeak;
import hushmaze.project.Doorway;
import hushmaze.project.Drive;
import hushmaze.project.DuctRun;
import hushmaze.project.Envelope;
import hushmaze.project.EnvelopeElement;
import hushmaze.project.FanSound;
import hushmaze.project.Fitting;
import hushmaze.project.Joinery;
import hushmaze.project.JointGap;
import hushmaze.project.KeptBox;
import hushmaze.project.Leakage;
import hushmaze.project.LinedFaces;
import hushmaze.project.Mounting;
import hushmaze.project.MouthPosition;
import hushmaze.project.Noise;
import hushmaze.project.Opening;
import hushmaze.project.Outgoing;
import hushmaze.project.PathReadings;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Reading;
import hushmaze.project.Room;
import hushmaze.project.RoomReadings;
import hushmaze.project.RoomUse;
import hushmaze.project.Seam;
import hushmaze.project.Session;
import hushmaze.project.SharedDuct;
import hushmaze.project.SlitMouth;
import hushmaze.project.Space;
import hushmaze.project.Stock;
import hushmaze.project.Target;
import hushmaze.project.TitleBlock;
import hushmaze.project.VentPath;
import hushmaze.project.WallHeat;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.UnitSystem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;

/** Projects with every field at random within its limits, numbers with all their digits, from a seed. */
final class RandomProjects {
    private static final String LETTERS = "abcXYZ 0123 \"\\/<&' éßµ²→½ 漢\ud83c\udfbb";

    /** Two layers of the thickest liner go into it, m. */
    private static final double LEAST_WIDTH = 0.5;

    private final Random random;

    RandomProjects(long seed) {
        this.random = new Random(seed);
    }

    Project next() {
        Room room = room();
        return new Project(
                Project.FORMAT_VERSION,
                text(60),
                new TitleBlock(
                        text(60),
                        text(16),
                        LocalDate.ofEpochDay(random.nextInt(100_000) - 20_000),
                        text(20),
                        maybe(() -> text(20))),
                choice(UnitSystem.values()),
                room,
                new Stock(
                        list(1, 3, this::sheet),
                        list(1, 3, this::sheet),
                        new Saw(text(80), between(0, 0.012), between(0, 0.05), text(80)),
                        screw()),
                paths(room.use() != null),
                maybe(this::roomReadings));
    }

    private List<VentPath> paths(boolean flowFollows) {
        List<VentPath> paths = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            paths.add(new VentPath(
                    i + text(50),
                    choice(Purpose.values()),
                    brief(flowFollows),
                    maybe(this::box),
                    maybe(this::kept),
                    maybe(this::readings)));
        }
        return paths;
    }

    private PathReadings readings() {
        List<Reading> readings = new ArrayList<>();
        boolean fullScale = random.nextBoolean();
        for (int i = 0; i < random.nextInt(4); i++) {
            readings.add(new Reading(
                    i + text(60),
                    choice(Reading.Round.values()),
                    fullScale
                            ? Reading.Scale.FULL_SCALE
                            : choice(new Reading.Scale[] {Reading.Scale.AS_GIVEN, Reading.Scale.CALIBRATED}),
                    bandLevels(),
                    text(400)));
        }
        return new PathReadings(maybe(() -> readings), maybe(() -> between(0, 10)), maybe(() -> text(400)));
    }

    private BandLevels bandLevels() {
        BandSet bands = random.nextBoolean() ? BandSet.OCTAVE : BandSet.THIRD_OCTAVE;
        double[] levels = new double[bands.size()];
        boolean[] covered = new boolean[bands.size()];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = between(-150, 150);
            covered[i] = i == 0 || random.nextInt(4) > 0;
        }
        return new BandLevels(bands, levels, covered);
    }

    private RoomReadings roomReadings() {
        Double co2 = maybe(() -> between(400e-6, 30_000e-6));
        return new RoomReadings(
                maybe(() -> between(-500, 500)),
                co2,
                co2 == null ? maybe(() -> 60) : Integer.valueOf(1 + random.nextInt(1440)),
                co2 == null ? maybe(() -> 3) : Integer.valueOf(random.nextInt(500)),
                maybe(() -> between(400e-6, 30_000e-6)),
                maybe(() -> text(400)));
    }

    private List<KeptBox> kept() {
        List<KeptBox> kept = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            kept.add(new KeptBox(i + text(30), box()));
        }
        return kept;
    }

    private Room room() {
        RoomUse use = maybe(this::use);
        double outdoor = use == null ? between(0, 0.005) : Math.min(0.005, use.co2Limit() * between(0, 0.9));
        return new Room(
                text(80),
                between(1, 5000),
                random.nextInt(500),
                use == null ? Double.valueOf(between(0, 1e-4)) : maybe(() -> between(0, 1e-4)),
                outdoor,
                use == null ? Double.valueOf(between(0, 1e5)) : maybe(() -> between(0, 1e5)),
                list(8, 8, () -> between(0.05, 5000)),
                between(0.1, 20),
                between(-30, 60),
                between(-400, 4000),
                maybe(this::levels),
                target(),
                maybe(this::envelope),
                maybe(this::door),
                use,
                maybe(() -> new Leakage(between(1e-6, 10), between(1, 100), between(0.5, 1), text(400))),
                maybe(() -> between(-50, 50)));
    }

    private DoorLeak door() {
        boolean undercut = random.nextBoolean();
        return new DoorLeak(
                between(0.01, 50),
                between(1e-5, 0.1),
                maybe(() -> between(0.001, 0.5)),
                undercut ? Double.valueOf(between(0.1, 5)) : null,
                undercut ? Double.valueOf(between(0.0005, 0.1)) : null,
                text(400));
    }

    private RoomUse use() {
        double supply = between(-40, 60);
        return new RoomUse(
                choice(Activity.values()),
                choice(AirRule.values()),
                between(0.5, 2000),
                between(0.0005, 0.01),
                between(0, 1e5),
                between(0, 1e5),
                between(0, 1e5),
                supply,
                between(supply + 1, 90),
                maybe(() -> new WallHeat(between(0.001, 1e5), between(-60, 80))),
                maybe(() -> between(0, 0.05)),
                list(0, 3, () -> new Session(1 + random.nextInt(10_000), random.nextInt(500), random.nextBoolean())),
                text(400));
    }

    private Drive drive() {
        Drive.Kind kind = choice(Drive.Kind.values());
        boolean pressure = kind == Drive.Kind.GIVEN_PRESSURE || random.nextBoolean();
        boolean fan = kind == Drive.Kind.FAN_CURVE || random.nextBoolean();
        return new Drive(
                kind,
                pressure ? Double.valueOf(between(0.1, 5000)) : null,
                fan ? fan() : null,
                maybe(() -> between(0.1, 2)),
                text(400));
    }

    private Fan fan() {
        List<Fan.Point> points = new ArrayList<>();
        double flow = 0;
        double pressure = between(1e3, 1e4);
        for (int i = 0; i < 2 + random.nextInt(5); i++) {
            points.add(new Fan.Point(flow, pressure));
            flow += between(0.001, 0.1);
            pressure *= between(0.1, 0.9);
        }
        return new Fan(text(80), points, text(400));
    }

    private Fitting fitting(Fitting.Kind kind) {
        boolean face = kind == Fitting.Kind.GRILLE || kind == Fitting.Kind.WEATHER_LOUVRE;
        boolean known = kind == Fitting.Kind.FILTER || kind == Fitting.Kind.KNOWN_LOSS;
        boolean duct = kind == Fitting.Kind.FLEXIBLE_DUCT;
        return new Fitting(
                kind,
                choice(Fitting.End.values()),
                orMaybe(face, 0.03, 3),
                orMaybe(face, 0.03, 3),
                orMaybe(kind == Fitting.Kind.GRILLE, 0.05, 1),
                orMaybe(kind.connects(), 0.05, 0.6),
                orMaybe(duct, 0.01, 30),
                orMaybe(duct, 0, 0.3),
                maybe(() -> between(0, 0.3)),
                orMaybe(known, 0, 1000),
                orMaybe(known, 1e-4, 5),
                text(400));
    }

    private Double orMaybe(boolean needed, double least, double most) {
        return needed || random.nextBoolean() ? Double.valueOf(between(least, most)) : null;
    }

    private Envelope envelope() {
        List<EnvelopeElement> elements = new ArrayList<>();
        elements.add(element(EnvelopeElement.Kind.SURFACE));
        elements.addAll(list(0, 3, () -> element(choice(EnvelopeElement.Kind.values()))));
        Spectrum outside = maybe(this::levels);
        return new Envelope(elements, outside, outside == null ? maybe(() -> text(400)) : text(400));
    }

    private EnvelopeElement element(EnvelopeElement.Kind kind) {
        boolean surface = kind == EnvelopeElement.Kind.SURFACE;
        boolean gap = kind == EnvelopeElement.Kind.GAP;
        Spectrum loss = maybe(() -> Spectrum.of(choice(BandSet.values()), i -> between(-10, 120)));
        return new EnvelopeElement(
                text(80),
                kind,
                1 + random.nextInt(1000),
                surface ? Double.valueOf(between(1e-4, 1000)) : null,
                loss,
                !gap && loss == null ? Double.valueOf(between(0, 120)) : null,
                gap ? Double.valueOf(between(1e-6, 0.1)) : null,
                gap ? Double.valueOf(between(0.001, 200)) : null,
                gap ? Double.valueOf(between(0.001, 2)) : null,
                gap ? choice(SlitMouth.values()) : null,
                text(400));
    }

    private Target target() {
        Target.Kind kind = choice(Target.Kind.values());
        boolean own = kind == Target.Kind.SPECTRUM;
        return new Target(
                kind,
                own && random.nextBoolean() ? null : Double.valueOf(between(15, 70)),
                own || random.nextBoolean() ? levels() : null,
                text(400));
    }

    private Spectrum levels() {
        return Spectrum.of(choice(BandSet.values()), i -> between(-30, 160));
    }

    private Brief brief(boolean flowFollows) {
        return new Brief(
                new Opening(
                        choice(Opening.Kind.values()),
                        choice(Opening.Surface.values()),
                        choice(Opening.Beyond.values()),
                        between(0.03, 2),
                        between(0.03, 2)),
                flowFollows ? maybe(() -> between(1e-4, 5)) : Double.valueOf(between(1e-4, 5)),
                between(0.1, 2000),
                between(0.1, 20),
                between(0.1, 20),
                noise(),
                maybe(() -> between(0.001, 1)),
                new Space(between(0.05, 10), between(0.05, 10), between(0.05, 10)),
                new Construction(
                        board(),
                        1 + random.nextInt(3),
                        1 + random.nextInt(2),
                        liner(),
                        random.nextBoolean(),
                        choice(PortFace.values()),
                        choice(PortFace.values()),
                        maybe(() -> between(1, 2000)),
                        maybe(this::mounting),
                        maybe(this::joinery),
                        maybe(() -> new Doorway(between(0.2, 5), between(0.2, 5)))),
                maybe(() -> choice(MouthPosition.values())),
                maybe(() -> new FanSound(text(80), choice(FanSound.Side.values()), levels(), text(400))),
                maybe(this::outgoing),
                maybe(this::sharedDuct),
                maybe(this::drive),
                fittings(),
                maybe(this::choices));
    }

    private Choices choices() {
        return new Choices(
                list(0, 3, this::board),
                list(0, 3, this::liner),
                maybe(() -> 1 + random.nextInt(3)),
                maybe(() -> 1 + random.nextInt(2)),
                list(0, 4, () -> choice(PortFace.values())),
                list(0, 4, () -> choice(PortFace.values())));
    }

    /** Any number that stand side by side, and one that connects. */
    private List<Fitting> fittings() {
        List<Fitting> fittings = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            fittings.add(fitting(random.nextBoolean() ? Fitting.Kind.GRILLE : Fitting.Kind.FILTER));
        }
        if (random.nextBoolean()) {
            fittings.add(fitting(choice(Fitting.Kind.values())));
        }
        return fittings;
    }

    private Joinery joinery() {
        double clearance = between(0, 0.003);
        return new Joinery(
                clearance,
                between(0, 0.01),
                random.nextBoolean() ? 0 : between(clearance * 1.01 + 1e-6, 0.015),
                maybe(() -> between(1, 30)),
                maybe(this::jointGap));
    }

    private JointGap jointGap() {
        double likely = between(0, 0.01);
        return new JointGap(between(0, likely), likely, between(likely, 0.01), text(400));
    }

    private Mounting mounting() {
        return new Mounting(
                maybe(() -> choice(Mounting.Into.values())),
                choice(Mounting.Timber.values()),
                choice(Mounting.StudScrew.values()),
                between(0.01, 0.15),
                1 + random.nextInt(12),
                between(0.05, 3),
                between(0.009, 0.1),
                maybe(() -> between(0.1, 2)),
                maybe(() -> between(0.05, 6)),
                maybe(random::nextBoolean),
                text(400));
    }

    private Outgoing outgoing() {
        Outgoing.Receiver receiver = choice(Outgoing.Receiver.values());
        boolean room = receiver == Outgoing.Receiver.ROOM;
        return new Outgoing(
                levels(),
                receiver,
                choice(MouthPosition.values()),
                room ? list(8, 8, () -> between(0.05, 5000)) : null,
                between(0.1, 1000),
                target(),
                text(400));
    }

    private DuctRun ductRun() {
        DuctRun.Kind kind = choice(DuctRun.Kind.values());
        boolean round = kind == DuctRun.Kind.ROUND_SHEET;
        return new DuctRun(
                kind,
                between(0, 200),
                between(0.03, 3),
                round && random.nextBoolean() ? null : Double.valueOf(between(0.03, 3)),
                round ? null : maybe(() -> between(0.003, 0.2)),
                list(0, 3, () -> between(0.001, 1)));
    }

    private SharedDuct sharedDuct() {
        return new SharedDuct(
                text(80),
                levels(),
                maybe(this::levels),
                between(0.0009, 9),
                choice(MouthPosition.values()),
                list(8, 8, () -> between(0.05, 5000)),
                between(0.1, 100),
                ductRun(),
                target(),
                text(400));
    }

    private Noise noise() {
        Noise.Place place = choice(Noise.Place.values());
        boolean needed = place == Noise.Place.AT_DISTANCE;
        return new Noise(
                levels(), place, needed || random.nextBoolean() ? Double.valueOf(between(0.1, 20)) : null, text(400));
    }

    private Box box() {
        Box.Form form = choice(Box.Form.values());
        double length = between(0.3, 5);
        boolean lined = random.nextBoolean();
        List<Board> shell = list(1, 3, this::board);
        Joinery joined = maybe(this::joinery);
        if (joined != null && joined.groove() > shell.get(0).thickness() / 2) {
            joined = new Joinery(joined.fitClearance(), joined.gasket(), 0, joined.pinsAbove(), joined.coverGap());
        }
        return new Box(
                form,
                form == Box.Form.MAZE ? 1 + random.nextInt(Box.MAX_PASSES) : 1,
                between(LEAST_WIDTH, 3),
                between(0.25, 3),
                length,
                between(0.001, length - Box.MIN_BAFFLE),
                shell,
                board(),
                1 + random.nextInt(2),
                lined ? liner() : maybe(this::liner),
                lined
                        ? new LinedFaces(random.nextInt(3), random.nextInt(3), random.nextInt(3), random.nextInt(3))
                        : LinedFaces.NONE,
                port(),
                port(),
                joined,
                maybe(this::seams));
    }

    private List<Seam> seams() {
        List<Seam> seams = new ArrayList<>();
        double at = 0;
        for (int i = random.nextInt(4); i > 0; i--) {
            at += between(0.26, 1);
            seams.add(new Seam(choice(Seam.Kind.values()), at));
        }
        return seams;
    }

    private Port port() {
        return new Port(choice(PortFace.values()), between(0.02, 0.2), between(0.02, 0.2), between(0, 0.04));
    }

    private Board board() {
        return new Board(
                text(80),
                between(0.003, 0.1),
                between(100, 9000),
                between(1e7, 3e11),
                between(0.0001, 1),
                random.nextBoolean(),
                text(400));
    }

    private Liner liner() {
        double resistivity = between(500, 500_000);
        return new Liner(
                text(80),
                between(0.003, 0.2),
                between(3, 400),
                resistivity,
                between(500, resistivity),
                between(resistivity, 500_000),
                between(0, 0.01),
                text(400),
                maybe(() -> new Facing(text(80), between(0.005, 2), maybe(() -> between(1, 10_000)), text(400))));
    }

    private Sheet sheet() {
        return new Sheet(
                text(80),
                between(0.05, 10),
                between(0.05, 10),
                maybe(() -> between(0, 1e6)),
                maybe(() -> random.nextInt(100_000)),
                maybe(() -> text(80)),
                text(400));
    }

    private Screw screw() {
        double diameter = between(0.002, 0.02);
        return new Screw(text(80), diameter, between(0.01, 0.3), between(0.001, diameter), text(400));
    }

    private double between(double low, double high) {
        double value = random.nextInt(8) == 0 ? low : low + random.nextDouble() * (high - low);
        return Math.min(value, high);
    }

    private <T> T choice(T[] values) {
        return values[random.nextInt(values.length)];
    }

    private <T> T maybe(Supplier<T> supplier) {
        return random.nextBoolean() ? supplier.get() : null;
    }

    private <T> List<T> list(int least, int most, Supplier<T> supplier) {
        List<T> list = new ArrayList<>();
        int size = least + random.nextInt(most - least + 1);
        for (int i = 0; i < size; i++) {
            list.add(supplier.get());
        }
        return list;
    }

    private String text(int longest) {
        int[] letters = LETTERS.codePoints().toArray();
        StringBuilder text = new StringBuilder("t");
        int length = random.nextInt(Math.min(longest, 30) / 2);
        for (int i = 0; i < length; i++) {
            text.appendCodePoint(letters[random.nextInt(letters.length)]);
        }
        return text.toString();
    }
}
