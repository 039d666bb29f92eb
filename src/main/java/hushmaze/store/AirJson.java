package hushmaze.store;

import static hushmaze.store.AssessmentJson.number;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hushmaze.air.Loss;
import hushmaze.air.PathAir;
import hushmaze.air.need.Co2Course;
import hushmaze.air.need.NamedFlow;
import hushmaze.assess.AirJudge;
import hushmaze.assess.DraughtAtPerson;
import hushmaze.assess.PathFlow;
import hushmaze.assess.PathResult;
import hushmaze.assess.Remedy;
import hushmaze.assess.RoomResult;
import java.util.OptionalDouble;

/** What the program says about the air, as parts of the JSON of an assessment. */
final class AirJson {
    private static final double LITRES = 1e3;
    private static final double PPM = 1e6;
    private static final double SQUARE_CENTIMETRES = 1e4;
    private static final double MINUTE = 60;
    /** Points of each part of the course of carbon dioxide. */
    private static final int COURSE_PARTS = 24;

    private final ObjectMapper mapper;

    AirJson(ObjectMapper mapper) {
        this.mapper = mapper;
    }

    /** The air of the room, into its node. */
    void room(ObjectNode node, RoomResult room) {
        number(node, "pressurePa", room.pressure());
        number(node, "pressureLikelyPa", room.air().likely());
        node.put("pressureState", room.air().state().name());
        ArrayNode flows = node.putArray("pathFlowsLps");
        room.air().flows().forEach(f -> flows.add(f.least() * LITRES));
        number(node, "flowLps", room.flow() * LITRES);
        node.put("flowKnown", room.air().fresh() != null);
        number(node, "missingOpeningCm2", room.air().missing() * SQUARE_CENTIMETRES);
        ArrayNode remedies = node.putArray("enlargeOpenings");
        for (Remedy remedy : room.air().remedies()) {
            ObjectNode row = remedies.addObject();
            row.put("kind", remedy.kind().name()).put("path", remedy.name());
            number(row, "areaCm2", remedy.area() * SQUARE_CENTIMETRES);
            number(row, "neededCm2", remedy.needed() * SQUARE_CENTIMETRES);
        }
        number(node, "co2SteadyPpm", room.co2Steady() * PPM);
        number(node, "temperatureRiseK", room.temperatureRise());
        number(node, "supplyLps", room.supply() * LITRES);
        number(node, "extractLps", room.extract() * LITRES);
        minutes(node, "minutesTo1000PpmAirOff", room.sealed().firstReaches(RoomResult.NOTICED_CO2));
        minutes(node, "minutesTo1500PpmAirOff", room.sealed().firstReaches(RoomResult.STALE_CO2));
        course(node.putObject("co2Course"), room.course());
        node.set("need", need(room));
        ArrayNode draughts = node.putArray("draughts");
        room.draughts().forEach(d -> draught(draughts.addObject(), d));
    }

    private void course(ObjectNode node, Co2Course course) {
        minutes(node, "minutesTo1000Ppm", course.firstReaches(RoomResult.NOTICED_CO2));
        minutes(node, "minutesTo1500Ppm", course.firstReaches(RoomResult.STALE_CO2));
        number(node, "highestPpm", course.highest() * PPM);
        ArrayNode points = node.putArray("points");
        course.curve(COURSE_PARTS).forEach(p -> {
            ObjectNode point = points.addObject();
            number(point, "minutes", p.time() / MINUTE);
            number(point, "ppm", p.level() * PPM);
        });
    }

    private ObjectNode need(RoomResult room) {
        if (room.need() == null) {
            return null;
        }
        ObjectNode node = mapper.createObjectNode();
        NamedFlow governing = room.need().governing();
        node.put("governing", governing.key());
        number(node, "flowLps", governing.flow() * LITRES);
        ArrayNode grounds = node.putArray("grounds");
        for (NamedFlow flow : room.need().flows()) {
            ObjectNode row = grounds.addObject().put("key", flow.key());
            number(row, "flowLps", flow.flow() * LITRES);
            row.put("source", flow.source());
        }
        return node;
    }

    private static void draught(ObjectNode node, DraughtAtPerson draught) {
        node.put("path", draught.path());
        number(node, "distanceM", draught.distance());
        number(node, "velocityLowMps", draught.velocity().low());
        number(node, "velocityMps", draught.velocity().likely());
        number(node, "velocityHighMps", draught.velocity().high());
        number(node, "ratePercent", draught.rate());
        number(node, "rateHighPercent", draught.rateHigh());
        node.put("inRange", draught.inRange());
    }

    /** The air of one path. */
    ObjectNode path(PathResult path) {
        PathAir air = path.pathAir();
        ObjectNode node = mapper.createObjectNode();
        node.put("ok", path.air().ok());
        node.put("pressureOk", path.air().pressureOk());
        node.put("velocityOk", path.air().velocityOk());
        node.put("flowOk", path.air().flowOk());
        number(node, "flowLps", air.flow() * LITRES);
        number(node, "pressureDropPa", air.pressure());
        number(node, "pressureDropLowPa", air.pressureLow());
        number(node, "pressureDropHighPa", air.pressureHigh());
        number(node, "limitPa", AirJudge.allowed(path.path().brief()));
        ArrayNode losses = node.putArray("losses");
        for (Loss loss : air.losses()) {
            ObjectNode row = losses.addObject();
            row.put("name", loss.key());
            row.put("part", loss.part());
            number(row, "zeta", loss.zeta());
            number(row, "zetaLow", loss.zetaLow());
            number(row, "zetaHigh", loss.zetaHigh());
            number(row, "velocityMps", loss.velocity());
            number(row, "pressurePa", loss.pressure());
            row.put("source", loss.source());
        }
        ArrayNode velocities = node.putArray("velocities");
        for (PathAir.PlaceVelocity place : air.velocities()) {
            ObjectNode row = velocities.addObject().put("part", place.part());
            number(row, "velocityMps", place.velocity());
            number(row, "limitMps", AirJudge.limit(path.path().brief(), place));
        }
        node.set("drive", drive(path));
        return node;
    }

    private ObjectNode drive(PathResult path) {
        ObjectNode node = mapper.createObjectNode();
        node.put("kind", path.path().brief().driveOrUsual().name());
        PathFlow carried = path.carried();
        number(node, "flowLeastLps", carried == null ? null : carried.least() * LITRES);
        number(node, "flowLikelyLps", carried == null ? null : carried.likely() * LITRES);
        number(node, "flowMostLps", carried == null ? null : carried.most() * LITRES);
        if (carried == null || !carried.answers()) {
            return node;
        }
        node.put("fanState", carried.fan() == null ? null : carried.fan().name());
        number(node, "speedForFlow", carried.speed());
        ArrayNode curve = node.putArray("curve");
        for (PathFlow.DrivePoint point : carried.curve()) {
            ObjectNode row = curve.addObject();
            number(row, "flowLps", point.flow() * LITRES);
            number(row, "drivePa", point.drive());
            number(row, "pathLowPa", point.low());
            number(row, "pathPa", point.likely());
            number(row, "pathHighPa", point.high());
        }
        return node;
    }

    private static void minutes(ObjectNode node, String name, OptionalDouble seconds) {
        number(node, name, seconds.isPresent() ? seconds.getAsDouble() / MINUTE : null);
    }
}
