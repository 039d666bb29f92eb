package hushmaze.app.model;

import hushmaze.project.DoorLeak;
import hushmaze.project.Doorway;
import hushmaze.project.Drive;
import hushmaze.project.Envelope;
import hushmaze.project.EnvelopeElement;
import hushmaze.project.FanSound;
import hushmaze.project.Fitting;
import hushmaze.project.Joinery;
import hushmaze.project.Leakage;
import hushmaze.project.Mounting;
import hushmaze.project.Outgoing;
import hushmaze.project.RoomUse;
import hushmaze.project.SharedDuct;
import hushmaze.project.Target;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import java.util.List;
import java.util.stream.Collectors;

/** Records in one line each, and whether the program guessed their values. */
final class Summaries {
    /** How the source of a fan begins that stands for its kind and for no maker's. */
    static final String INVENTED = "Invented";

    private final UnitSystem units;

    Summaries(UnitSystem units) {
        this.units = units;
    }

    /** Whether any of the values is one that the program filled in. */
    static boolean isGuessed(Object value) {
        if (value instanceof Drive drive && drive.kind() == Drive.Kind.FAN_CURVE) {
            return isAssumed(drive.source()) || drive.fan().source().startsWith(INVENTED);
        }
        return isAssumed(source(value));
    }

    static boolean isAssumed(String source) {
        return source.startsWith(Octaves.ASSUMED);
    }

    private static String source(Object value) {
        String source = null;
        if (value instanceof FanSound fan) {
            source = fan.source();
        } else if (value instanceof Outgoing out) {
            source = out.source();
        } else if (value instanceof SharedDuct duct) {
            source = duct.source();
        } else if (value instanceof Envelope envelope) {
            source = envelope.outsideSource();
        } else if (value instanceof Drive drive) {
            source = drive.source();
        } else if (value instanceof Fitting fitting) {
            source = fitting.source();
        } else if (value instanceof RoomUse use) {
            source = use.source();
        } else if (value instanceof DoorLeak door) {
            source = door.source();
        } else if (value instanceof Leakage leakage) {
            source = leakage.source();
        } else if (value instanceof Mounting mounting) {
            source = mounting.source();
        }
        return source == null ? "" : source;
    }

    /** What there is, with a word if it is guessed. */
    String of(Object value) {
        return marked(words(value), isGuessed(value));
    }

    static String marked(String words, boolean guessed) {
        return guessed ? Texts.of("summary.assumed", words) : words;
    }

    String words(Object value) {
        if (value instanceof FanSound fan) {
            return Texts.of("summary.fan", fan.name(), decibels(fan.power().total()));
        } else if (value instanceof Outgoing out) {
            return Texts.of("summary.outgoing", Texts.word(out.receiver()), limit(out.limit()));
        } else if (value instanceof SharedDuct duct) {
            return Texts.of("summary.sharedDuct", duct.room(), shown(duct.run().length(), Unit.METRE));
        } else if (value instanceof Envelope envelope) {
            return envelope(envelope);
        }
        return wordsOfAir(value);
    }

    private String wordsOfAir(Object value) {
        if (value instanceof Drive drive) {
            return drive(drive);
        } else if (value instanceof RoomUse use) {
            String doing =
                    Texts.of("summary.use", Texts.word(use.activity()), shown(use.floorArea(), Unit.SQUARE_METRE));
            int times = use.timetable().size();
            return times == 0 ? doing : Texts.of("summary.use.times", doing, String.valueOf(times));
        } else if (value instanceof DoorLeak door) {
            return Texts.of("summary.door", shown(door.length(), Unit.METRE), shown(door.width(), Unit.MILLIMETRE));
        } else if (value instanceof Leakage leakage) {
            return Texts.of("summary.leakage", shown(leakage.flow(), Unit.LITRE_PER_SECOND));
        } else if (value instanceof Mounting mounting) {
            return mounting.intoOrStuds() != Mounting.Into.STUDS
                    ? Texts.of("summary.mounting.refused", Texts.word(mounting.intoOrStuds()))
                    : Texts.of(
                            "summary.mounting",
                            String.valueOf(2 * mounting.screwsPerRow()),
                            Texts.word(mounting.screw()));
        }
        return wordsOfJoints(value);
    }

    private String wordsOfJoints(Object value) {
        if (value instanceof Joinery joinery) {
            return Texts.of(
                    "summary.joinery",
                    shown(joinery.fitClearance(), Unit.MILLIMETRE),
                    shown(joinery.gasket(), Unit.MILLIMETRE));
        } else if (value instanceof Doorway door) {
            return Texts.of(
                    "summary.doorway", shown(door.width(), Unit.MILLIMETRE), shown(door.height(), Unit.MILLIMETRE));
        }
        return Texts.of("summary.none");
    }

    private String drive(Drive drive) {
        return switch (drive.kind()) {
            case GIVEN_PRESSURE -> Texts.of("summary.drive.pressure", shown(drive.pressure(), Unit.PASCAL));
            case FAN_CURVE -> drive.fan().name();
            case NOTHING, GIVEN_FLOW -> Texts.word(drive.kind());
        };
    }

    /** Kinds of fittings, in their order. */
    String fittings(List<Fitting> fittings) {
        if (fittings.isEmpty()) {
            return Texts.of("summary.none");
        }
        String kinds = fittings.stream().map(f -> Texts.word(f.kind())).collect(Collectors.joining(", "));
        int count = fittings.size();
        String words = count == 1 ? kinds : Texts.of("summary.fittings", String.valueOf(count), kinds);
        return marked(words, fittings.stream().anyMatch(Summaries::isGuessed));
    }

    private String envelope(Envelope envelope) {
        double area = 0;
        for (EnvelopeElement element : envelope.elements()) {
            if (element.kind() == EnvelopeElement.Kind.SURFACE) {
                area += element.count() * element.area();
            }
        }
        int count = envelope.elements().size();
        return Texts.of(
                count == 1 ? "summary.envelope.one" : "summary.envelope",
                String.valueOf(count),
                shown(area, Unit.SQUARE_METRE));
    }

    private String shown(double si, Unit unit) {
        return EntryText.show(si, unit, units);
    }

    private static String decibels(double level) {
        return Math.round(level) + " dB";
    }

    private static String limit(Target limit) {
        return limit.number() == null || limit.kind() == Target.Kind.SPECTRUM
                ? Texts.word(limit.kind())
                : Texts.of("limit." + limit.kind(), EntryText.brief(limit.number()));
    }
}
