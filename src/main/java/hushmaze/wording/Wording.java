package hushmaze.wording;

import hushmaze.air.PathAir;
import hushmaze.air.need.NamedFlow;
import hushmaze.assess.AirJudge;
import hushmaze.assess.Assessment;
import hushmaze.assess.Heard;
import hushmaze.assess.LossReason;
import hushmaze.assess.PathFlow;
import hushmaze.assess.PathResult;
import hushmaze.assess.Rating;
import hushmaze.assess.RoomAir;
import hushmaze.assess.RoomNoise;
import hushmaze.assess.RoomResult;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Target;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.Relaxation;
import hushmaze.sound.criterion.CurveRating;
import hushmaze.sound.criterion.RoomCriterion;
import hushmaze.sound.criterion.SoundTransmissionClass;
import hushmaze.sound.criterion.TargetMargin;
import hushmaze.sound.criterion.WeightedReduction;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Collectors;

/** Verdicts and notices as sentences. */
public final class Wording {
    private static final ResourceBundle TEXTS = ResourceBundle.getBundle("hushmaze.wording.texts", Locale.ROOT);

    /** Notices whose numbers say about where, not exactly. */
    private static final Set<NoticeKind> ROUGH = EnumSet.of(
            NoticeKind.LINER_MODEL_BELOW_RANGE,
            NoticeKind.LINER_MODEL_ABOVE_RANGE,
            NoticeKind.LINE_OF_SIGHT,
            NoticeKind.STEP_BELOW_CUT_ON_ONLY,
            NoticeKind.MOUTH_WITHOUT_STRAIGHT_DUCT,
            NoticeKind.CHAMBER_SMALL_TO_WAVELENGTH,
            NoticeKind.CHAMBER_REGIONS_JOINED);

    /** A smaller gain is not worth a word, dB. */
    private static final double WORTH_SAYING = 0.5;

    /** Less pressure than this is none, Pa. */
    private static final double NO_PRESSURE = 0.05;

    private final Amounts amounts;

    /** Speaks in the given units. */
    public Wording(UnitSystem system) {
        this.amounts = new Amounts(system);
    }

    /** The amounts this wording uses. */
    public Amounts amounts() {
        return amounts;
    }

    /** A notice as a sentence. */
    public String notice(Notice notice) {
        String value = notice.value() == null ? "" : amount(notice, notice.value());
        String limit = notice.limit() == null ? "" : amount(notice, notice.limit());
        String shortfall = notice.value() == null || notice.limit() == null
                ? ""
                : amounts.of(Math.abs(notice.value() - notice.limit()), notice.unit());
        String sentence = text(
                "notice." + notice.kind(),
                place(notice.part()),
                value,
                limit,
                shortfall,
                amounts.pressure(RoomAir.LIMIT));
        String noPlace = "notice." + notice.kind() + ".noJoint";
        if (notice.places().isEmpty()) {
            return TEXTS.containsKey(noPlace) ? sentence + " " + text(noPlace) : sentence;
        }
        return sentence + " " + new SeamWording(this).wouldDo(notice.places());
    }

    /** Where a formula ends is not known to a hertz. */
    private String amount(Notice notice, double value) {
        return ROUGH.contains(notice.kind()) ? amounts.about(value, notice.unit()) : amounts.of(value, notice.unit());
    }

    /** The four verdicts of a path, in the order quiet, air, fits, buildable. */
    public List<String> verdicts(PathResult result) {
        return List.of(quiet(result), air(result), fits(result), buildable(result));
    }

    /** Whether it is quiet enough, with the margin, the band that decides and the ratings. */
    public String quiet(PathResult result) {
        PathResult.Quiet quiet = result.quiet();
        String rating =
                text("rating", nc(quiet.rating()), Amounts.number(quiet.rating().dbA(), 0));
        String band = quiet.governing().label();
        if (quiet.margin() == Double.NEGATIVE_INFINITY) {
            return text("quiet.nothingLeft", band);
        }
        String margin = amounts.decibels(Math.abs(quiet.margin()));
        String key = (quiet.whole() ? "quiet.whole." : "quiet.band.") + (quiet.ok() ? "yes" : "no");
        return text(key, margin, band, rating) + " " + why(result.sound().reason());
    }

    /** Why the box reduces as much as it does and no more. */
    public String why(LossReason reason) {
        String first;
        if (reason.wallsFrom() == null) {
            first = text("why.path");
        } else if (reason.wallsFrom().equals(BandSet.OCTAVE.bands().get(0))) {
            first = text("why.wallsAlways", amounts.decibels(reason.wallsLimit()));
        } else {
            first = text("why.walls", reason.wallsFrom().label(), amounts.decibels(reason.wallsLimit()));
        }
        return reason.spreadBand() == null
                ? first
                : first + " " + text("why.spread", reason.spreadBand().label(), amounts.decibels(reason.spread()));
    }

    /** What others hear of the room through a path, one sentence each. */
    public List<String> heard(PathResult result) {
        return result.sound().heard().stream().map(this::heard).toList();
    }

    private String heard(Heard heard) {
        TargetMargin margin = heard.received().margin();
        return text(
                "heard." + heard.kind() + (heard.received().ok() ? ".yes" : ".no"),
                amounts.decibels(Math.abs(margin.margin())),
                margin.governing().label());
    }

    /** What more work on the walls would buy. */
    public String improvements(PathResult result) {
        String some = result.sound().improvements().stream()
                .filter(i -> i.gain() >= WORTH_SAYING)
                .map(i -> text("improve.each", text("improve." + i.kind()), amounts.decibels(i.gain())))
                .collect(Collectors.joining("; "));
        return some.isEmpty() ? text("improve.none") : text("improve.some", some);
    }

    /** The box as consultants rate it: element-normalized level difference and transmission class. */
    public String difference(PathResult result) {
        WeightedReduction weighted = result.sound().difference();
        return text(
                "difference",
                String.valueOf(weighted.number()),
                String.valueOf(weighted.c()),
                String.valueOf(weighted.ctr()),
                String.valueOf(result.sound().transmissionClass().number()));
    }

    /** What comes past the boxes; empty when nothing is known of it. */
    public Optional<String> envelope(RoomResult room) {
        RoomNoise.EnvelopeNoise envelope = room.noise().envelope();
        if (envelope == null) {
            return Optional.empty();
        }
        Spectrum loss = envelope.loss().loss();
        return Optional.of(text(
                "envelope.loss",
                String.valueOf(WeightedReduction.of(loss).number()),
                String.valueOf(SoundTransmissionClass.of(loss).number()),
                envelope.governing()));
    }

    /** Whether the air gets through, with pressure drop and the fastest place. */
    public String air(PathResult result) {
        Brief brief = result.path().brief();
        PathAir air = result.pathAir();
        PathAir.PlaceVelocity fastest = air.velocities().stream()
                .max(Comparator.comparingDouble(PathAir.PlaceVelocity::velocity))
                .orElseThrow();
        String drop = text(
                "air.drop",
                amounts.pressure(air.pressureLow()),
                amounts.pressure(air.pressureHigh()),
                amounts.pressure(AirJudge.allowed(brief)));
        String speed = text("air.speed", amounts.velocity(fastest.velocity()), place(fastest.part()));
        String verdict = text(airKey(result.air()), amounts.flow(air.flow()), drop, speed, brought(result));
        return drive(result).map(d -> verdict + " " + d).orElse(verdict);
    }

    private static String airKey(PathResult.Air air) {
        if (air.ok()) {
            return "air.yes";
        }
        if (!air.pressureOk()) {
            return "air.tooMuchPressure";
        }
        return air.velocityOk() ? "air.driveTooWeak" : "air.tooFast";
    }

    private String brought(PathResult result) {
        return result.carried() == null
                ? ""
                : amounts.flow(Math.max(0, result.carried().least()));
    }

    /** Whether the box goes into the space. */
    public String fits(PathResult result) {
        PathResult.Fits fits = result.fits();
        var space = result.path().brief().space();
        String sizes = amounts.sizes(fits.width(), fits.height(), fits.depth());
        return text(
                fits.ok() ? "fits.yes" : "fits.no",
                fits.standOff() > 0
                        ? text(
                                result.path().brief().onCleats() ? "fits.cleats" : "fits.gasket",
                                sizes,
                                amounts.length(fits.standOff()))
                        : text("fits.plain", sizes),
                amounts.sizes(space.width(), space.height(), space.depth()));
    }

    /** Whether it can be built, with mass, panels and sheets. */
    public String buildable(PathResult result) {
        PathResult.Buildable b = result.buildable();
        String sentence = text(
                b.ok() ? "buildable.yes" : "buildable.no",
                amounts.mass(b.mass()),
                Integer.toString(b.panels()),
                Integer.toString(b.linerPieces()),
                sheets(b.sheets(), b.keptOffcuts()),
                Amounts.number(100 * b.waste(), 0));
        int modules = result.solid().modules().size();
        double heaviest = result.solid().heaviestModule().mass();
        return modules == 1
                ? sentence
                : sentence + " " + text("buildable.parts", Integer.toString(modules), amounts.mass(heaviest));
    }

    /** Sheets of boards and offcuts of other boxes: "2 sheets and 1 offcut of the boxes before". */
    private String sheets(int sheets, int keptOffcuts) {
        if (keptOffcuts == 0) {
            return count("sheets", sheets);
        }
        String offcuts = count("sheets.kept", keptOffcuts);
        return sheets == 0 ? offcuts : text("sheets.and", count("sheets", sheets), offcuts);
    }

    /** How the box is lifted, and how it hangs or stands. */
    public List<String> fixing(PathResult result) {
        return new FixingWording(this).all(result.fixing());
    }

    /** What follows the real thickness of each of the box's boards. */
    public List<String> boards(PathResult result) {
        return new BoardWording(this).all(result);
    }

    /** Who lifts the box, whole or in pieces. */
    public String lifting(PathResult result) {
        return new FixingWording(this).lifting(result.fixing().lifting());
    }

    /** A liner, and the facing it is under. */
    public String liner(Liner liner) {
        return liner.facing() == null
                ? liner.name()
                : text("liner.faced", liner.name(), liner.facing().name());
    }

    /** The box in one line: form, passes, clear sizes, liner, walls. */
    public String box(Box box) {
        String form = box.form() == Box.Form.MAZE ? count("passes", box.passes()) : text("box.chamber");
        String liner = box.liner() == null
                ? text("box.noLiner")
                : text(
                        box.linedFaces().most() > 1 ? "box.linerLayers" : "box.liner",
                        amounts.length(box.liner().thickness()),
                        liner(box.liner()),
                        Integer.toString(box.linedFaces().most()));
        String walls = count("layers", box.shell().size());
        return text(
                "box",
                form,
                amounts.sizes(box.clearWidth(), box.clearHeight(), box.clearLength()),
                liner,
                walls,
                box.shell().get(0).name());
    }

    /** What the room as a whole gets. */
    public String room(RoomResult room, Target target) {
        if (room.isWithoutAir()) {
            return text("room.sealed", rating(room.rating(), target), target(target));
        }
        return text(
                "room",
                rating(room.rating(), target),
                target(target),
                Amounts.number(room.co2Steady() * 1e6, 0),
                amounts.warming(room.temperatureRise()));
    }

    /** Whether the room as a whole is quiet enough. */
    public String roomNoise(Assessment all) {
        Target target = all.project().room().target();
        return text(
                all.roomQuiet() ? "room.quiet.yes" : "room.quiet.no",
                rating(all.room().rating(), target),
                target(target));
    }

    /** Whether the room has air as a whole, and what becomes of it. */
    public String roomFreshAir(Assessment all) {
        RoomResult room = all.room();
        String key = all.roomAired() ? "room.fresh.yes" : "room.fresh.no";
        String steady = room.isWithoutAir()
                ? text("room.fresh.sealed")
                : text(
                        "room.fresh.steady",
                        Amounts.number(room.co2Steady() * 1e6, 0),
                        amounts.warming(room.temperatureRise()));
        return text(key, steady) + " " + roomAir(room);
    }

    /** What the room needs, the pressure with the door shut, and how long the air lasts with nothing running. */
    public String roomAir(RoomResult room) {
        RoomAir air = room.air();
        String pressure = "";
        if (air.state() == RoomAir.State.SOLVED) {
            String key = Math.abs(air.pressure()) < NO_PRESSURE
                    ? "room.pressureNone"
                    : air.pressure() > 0 ? "room.pressureAbove" : "room.pressureBelow";
            pressure = text(key, amounts.pressure(Math.abs(air.pressure()))) + " ";
        }
        OptionalDouble noticed = room.sealed().firstReaches(RoomResult.NOTICED_CO2);
        OptionalDouble stale = room.sealed().firstReaches(RoomResult.STALE_CO2);
        String need = room.need() == null ? "" : need(room) + " ";
        return need
                + pressure
                + (noticed.isPresent() && stale.isPresent()
                        ? text("room.airOff", minutes(noticed), minutes(stale))
                        : text("room.airOffLong"));
    }

    /** What the room needs, what governs, and whether it comes in; only where something is known of its use. */
    public String need(RoomResult room) {
        NamedFlow governing = room.need().governing();
        if (room.air().fresh() == null) {
            return text(
                    room.isWithoutAir() ? "need.sealed" : "need.unknown",
                    amounts.flow(governing.flow()),
                    ground(governing),
                    amounts.flow(room.flow()));
        }
        return text(
                room.isNeedMet() ? "need.yes" : "need.no",
                amounts.flow(governing.flow()),
                ground(governing),
                amounts.flow(room.flow()));
    }

    /** The ground for a flow: "to carry off the heat". */
    public String ground(NamedFlow flow) {
        return place(flow.key());
    }

    /** How the drive of a path stands; nothing where it has no curve. */
    public Optional<String> drive(PathResult result) {
        PathFlow carried = result.carried();
        if (carried == null || !carried.answers()) {
            return Optional.empty();
        }
        String flows = text(
                "drive.flows",
                amounts.flow(carried.least()),
                amounts.flow(carried.most()),
                amounts.flow(result.pathAir().flow()));
        return Optional.of(carried.fan() == null ? flows : flows + " " + speed(carried));
    }

    private String speed(PathFlow carried) {
        if (carried.speed() == null) {
            return text("drive.noSpeed");
        }
        return text(carried.speed() > 1 ? "drive.speedMore" : "drive.speed", Amounts.number(100 * carried.speed(), 0));
    }

    private static String minutes(OptionalDouble seconds) {
        return Amounts.number(seconds.getAsDouble() / 60, 0);
    }

    /** The target in a few words: "NC 20". */
    public String target(Target target) {
        return target.kind() == Target.Kind.SPECTRUM
                ? text("target.SPECTRUM")
                : text("target." + target.kind(), Amounts.number(target.number(), 1));
    }

    private String rating(Rating rating, Target target) {
        String curve = switch (target.kind()) {
            case NR -> curve(rating.nr(), "NR", 0, 130);
            case RC -> rc(rating.rc());
            case NC, DBA, SPECTRUM -> nc(rating);
        };
        return text("rating", curve, Amounts.number(rating.dbA(), 0));
    }

    private String rc(RoomCriterion.Rating rating) {
        return rating.number().isEmpty()
                ? text("curve.noRc")
                : "RC " + Amounts.number(rating.number().getAsDouble(), 0) + "(" + rating.tag() + ")";
    }

    /** A noise criterion rating in a few words: "NC 18", "below NC 15". */
    public String nc(Rating rating) {
        return curve(rating.nc(), "NC", 15, 70);
    }

    /** What would let a box be laid out. */
    public String relaxation(Relaxation relaxation) {
        return text(
                "relax." + relaxation.limit(),
                amounts.of(relaxation.to(), relaxation.unit()),
                amounts.of(relaxation.from(), relaxation.unit()));
    }

    /** A sentence or label of the bundle with its blanks filled. */
    public String text(String key, Object... values) {
        return MessageFormat.format(TEXTS.getString(key), values);
    }

    private String curve(CurveRating rating, String name, int lowest, int highest) {
        return switch (rating.place()) {
            case BELOW -> text("curve.below", name, Integer.toString(lowest));
            case ABOVE -> text("curve.above", name, Integer.toString(highest));
            case WITHIN -> name + " " + Amounts.number(rating.number().getAsDouble(), 0);
        };
    }

    /** So many of something: the text KEY.one or KEY.many. */
    String count(String key, int n) {
        return text(key + (n == 1 ? ".one" : ".many"), Integer.toString(n));
    }

    /** A part's name inside a sentence; of several, parted by commas, each. */
    private String place(String parts) {
        return Arrays.stream(parts.split(", "))
                .map(part -> TEXTS.containsKey("place." + part) ? TEXTS.getString("place." + part) : part)
                .collect(Collectors.joining(", "));
    }
}
