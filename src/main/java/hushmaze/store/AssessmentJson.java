package hushmaze.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hushmaze.assess.Assessment;
import hushmaze.assess.BandResult;
import hushmaze.assess.PathResult;
import hushmaze.assess.Rating;
import hushmaze.assess.RoomResult;
import hushmaze.build.Quantities;
import hushmaze.project.Project;
import hushmaze.project.Seam;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Spectrum;
import hushmaze.size.Sensitivity;
import hushmaze.solid.Axis;
import hushmaze.solid.Module;
import hushmaze.solid.Solid;
import hushmaze.sound.LossTerm;
import hushmaze.sound.TermInput;
import hushmaze.sound.room.RoomSum;
import hushmaze.wording.Wording;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * An assessment as JSON, format version 1, for programs. Units are in the names; a figure that was not computed, or is not
 * finite, is null.
 */
public final class AssessmentJson {
    private static final int FORMAT_VERSION = 1;

    private final ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private final Wording wording;
    private final SoundJson sound;
    private final AirJson air;

    private final boolean changes;

    private AssessmentJson(Wording wording, boolean changes) {
        this.wording = wording;
        this.changes = changes;
        this.sound = new SoundJson(mapper, wording);
        this.air = new AirJson(mapper);
    }

    /** The whole assessment as one JSON text. */
    public static String of(Assessment assessment, Wording wording) {
        return of(assessment, wording, false);
    }

    /**
     * The whole assessment as one JSON text.
     *
     * @param changes whether each path also says what small errors and changes would do, which takes a second or so
     */
    public static String of(Assessment assessment, Wording wording, boolean changes) {
        AssessmentJson writer = new AssessmentJson(wording, changes);
        try {
            return writer.mapper.writeValueAsString(writer.assessment(assessment));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an assessment cannot be written as JSON", e);
        }
    }

    private ObjectNode assessment(Assessment assessment) {
        ObjectNode node = mapper.createObjectNode();
        node.put("formatVersion", FORMAT_VERSION);
        node.put("project", assessment.project().name());
        ObjectNode room = room(assessment.room());
        room.put("ok", assessment.roomOk());
        node.set("room", room);
        ArrayNode paths = node.putArray("paths");
        for (int i = 0; i < assessment.paths().size(); i++) {
            ObjectNode path = path(assessment.paths().get(i), assessment.project());
            if (changes) {
                SensitivityJson.put(path, Sensitivity.of(assessment, i));
            }
            paths.add(path);
        }
        ArrayNode notices = node.putArray("notices");
        assessment.notices().forEach(n -> notices.add(notice(n, null)));
        for (PathResult path : assessment.paths()) {
            path.notices().forEach(n -> notices.add(notice(n, path.path().name())));
        }
        return node;
    }

    private ObjectNode room(RoomResult room) {
        ObjectNode node = mapper.createObjectNode();
        air.room(node, room);
        rating(node, room.rating());
        values(node.putArray("levelOctavesDb"), room.level().levelsInOctaves());
        values(node.putArray("levelThirdsDb"), room.level());
        ArrayNode heard = node.putArray("heard");
        for (RoomSum.Part part : room.noise().sum().parts()) {
            ObjectNode row = heard.addObject().put("name", part.name());
            values(row.putArray("octavesDb"), part.level().levelsInOctaves());
            values(row.putArray("thirdsDb"), part.level());
        }
        if (room.noise().envelope() != null) {
            node.set("envelope", sound.envelope(room.noise().envelope()));
        }
        return node;
    }

    private ObjectNode path(PathResult path, Project project) {
        ObjectNode node = mapper.createObjectNode();
        node.put("name", path.path().name());
        node.put("purpose", lower(path.path().purpose().name()));
        node.set("quiet", quiet(path.quiet()));
        node.set("air", air.path(path));
        ObjectNode fits = node.putObject("fits");
        fits.put("ok", path.fits().ok());
        number(fits, "widthMm", path.fits().width() * 1e3);
        number(fits, "heightMm", path.fits().height() * 1e3);
        number(fits, "depthMm", path.fits().depth() * 1e3);
        number(fits, "standOffMm", path.fits().standOff() * 1e3);
        node.set("buildable", buildable(path, project));
        ArrayNode bands = node.putArray("bands");
        Stream.concat(path.octaves().stream(), path.thirds().stream()).forEach(b -> bands.add(band(b)));
        ArrayNode terms = node.putArray("terms");
        path.terms().forEach(t -> terms.add(term(t)));
        node.set("sound", sound.detail(path.sound()));
        return node;
    }

    private ObjectNode quiet(PathResult.Quiet quiet) {
        ObjectNode node = mapper.createObjectNode();
        node.put("ok", quiet.ok());
        number(node, "marginDb", quiet.margin());
        number(node, "governingBandHz", quiet.governing().nominalHz());
        node.put("wallsGovern", quiet.wallsGovern());
        rating(node, quiet.rating());
        return node;
    }

    private void rating(ObjectNode node, Rating rating) {
        number(
                node,
                "nc",
                rating.nc().number().isPresent() ? rating.nc().number().getAsDouble() : null);
        node.put("ncText", wording.nc(rating));
        number(
                node,
                "nr",
                rating.nr().number().isPresent() ? rating.nr().number().getAsDouble() : null);
        number(
                node,
                "rc",
                rating.rc().number().isPresent() ? rating.rc().number().getAsDouble() : null);
        node.put("rcRumble", rating.rc().rumble());
        node.put("rcHiss", rating.rc().hiss());
        number(node, "dbA", rating.dbA());
    }

    private ObjectNode buildable(PathResult path, Project project) {
        PathResult.Buildable buildable = path.buildable();
        ObjectNode node = mapper.createObjectNode();
        node.put("ok", buildable.ok());
        number(node, "massKg", buildable.mass());
        node.put("panels", buildable.panels());
        node.put("linerPieces", buildable.linerPieces());
        node.put("sheets", buildable.sheets());
        node.put("offcutsOfOtherBoxes", buildable.keptOffcuts());
        number(node, "wasteFraction", buildable.waste());
        joints(node, path.solid());
        Quantities quantities = path.quantities();
        ObjectNode small = node.putObject("quantities");
        number(small, "glueAreaM2", quantities.glueArea());
        number(small, "glueLitres", quantities.glue() * 1e3);
        number(small, "sealantM", quantities.sealant());
        number(small, "gasketM", quantities.gasket());
        number(small, "linerAdhesiveM2", quantities.linerAdhesive());
        number(small, "facingM2", quantities.facing());
        number(small, "linerEdgesM", quantities.linerEdges());
        number(small, "paintM2", quantities.paint());
        ArrayNode fasteners = small.putArray("fasteners");
        path.fasteners(project).forEach(counted -> {
            ObjectNode fastener = fasteners.addObject();
            fastener.put("kind", counted.fastener().kind().name());
            fastener.put("use", counted.use().name());
            number(fastener, "diameterMm", counted.fastener().diameter() * 1e3);
            number(fastener, "lengthMm", counted.fastener().length() * 1e3);
            fastener.put("count", counted.count());
        });
        ArrayNode collars = node.putArray("collars");
        path.collars(project).forEach(c -> {
            ObjectNode collar = collars.addObject();
            collar.put("end", lower(c.end().name()));
            number(collar, "diameterMm", c.diameter() == null ? null : c.diameter() * 1e3);
            number(collar, "widthMm", c.width() * 1e3);
            number(collar, "heightMm", c.height() * 1e3);
            collar.put("screws", c.screws());
            number(collar, "screwLengthMm", c.screwLength() * 1e3);
            number(collar, "overhangMm", c.overhang() * 1e3);
        });
        FixingJson.put(node, path.fixing());
        return node;
    }

    private static void joints(ObjectNode node, Solid solid) {
        ArrayNode modules = node.putArray("modules");
        for (Module module : solid.modules()) {
            ObjectNode row = modules.addObject().put("number", module.number() + 1);
            number(row, "massKg", module.mass());
            number(row, "lengthMm", module.bounds().size(Axis.X) * 1e3);
            number(row, "widthMm", module.bounds().size(Axis.Y) * 1e3);
            number(row, "heightMm", module.bounds().size(Axis.Z) * 1e3);
        }
        ArrayNode seams = node.putArray("seams");
        for (Seam seam : solid.box().seams()) {
            ObjectNode row = seams.addObject().put("kind", lower(seam.kind().name()));
            number(row, "positionMm", seam.position() * 1e3);
        }
    }

    private ObjectNode band(BandResult band) {
        ObjectNode node = mapper.createObjectNode();
        number(node, "centreHz", band.band().centreHz());
        node.put("fraction", band.band().fraction());
        number(node, "noiseDb", band.noise());
        number(node, "allowedDb", band.allowed());
        number(node, "neededDb", band.needed());
        number(node, "estimateDb", band.estimate());
        number(node, "quickDb", band.quick());
        number(node, "waveDb", band.wave());
        number(node, "pathDb", band.path());
        number(node, "wallsDb", band.walls());
        number(node, "lowDb", band.low());
        number(node, "likelyDb", band.likely());
        number(node, "highDb", band.high());
        number(node, "levelDb", band.level());
        return node;
    }

    private ObjectNode term(LossTerm term) {
        ObjectNode node = mapper.createObjectNode();
        node.put("name", term.key());
        node.put("part", term.part());
        node.put("source", term.source());
        ArrayNode inputs = node.putArray("inputs");
        for (TermInput input : term.inputs()) {
            ObjectNode row = inputs.addObject().put("name", input.key());
            number(row, "value", input.unit().fromSi(input.value()));
            row.put("unit", input.unit().symbol());
        }
        values(node.putArray("octavesDb"), term.octaves());
        values(node.putArray("thirdsDb"), term.thirds());
        return node;
    }

    static void values(ArrayNode node, Spectrum spectrum) {
        for (double value : spectrum.values()) {
            if (Double.isFinite(value)) {
                node.add(value);
            } else {
                node.addNull();
            }
        }
    }

    private ObjectNode notice(Notice notice, String path) {
        ObjectNode node = mapper.createObjectNode();
        node.put("kind", notice.kind().name());
        node.put("severity", lower(notice.severity().name()));
        node.put("path", path);
        node.put("part", notice.part());
        number(node, "value", notice.value() == null ? null : notice.unit().fromSi(notice.value()));
        number(node, "limit", notice.limit() == null ? null : notice.unit().fromSi(notice.limit()));
        node.put("unit", notice.unit().symbol());
        if (!notice.places().isEmpty()) {
            ArrayNode places = node.putArray("places");
            for (Notice.Place place : notice.places()) {
                ObjectNode row = places.addObject().put("kind", place.comesApart() ? "parting" : "glued");
                number(row, "positionMm", place.position() * 1e3);
            }
        }
        node.put("text", wording.notice(notice));
        return node;
    }

    static void number(ObjectNode node, String name, Double value) {
        if (value == null || !Double.isFinite(value)) {
            node.putNull(name);
        } else {
            node.put(name, value);
        }
    }

    static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
