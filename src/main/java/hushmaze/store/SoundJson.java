package hushmaze.store;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hushmaze.assess.Heard;
import hushmaze.assess.Improvement;
import hushmaze.assess.LossReason;
import hushmaze.assess.RoomNoise;
import hushmaze.assess.SoundDetail;
import hushmaze.assess.SoundRoute;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.BoxLoss;
import hushmaze.sound.PathMethods;
import hushmaze.sound.criterion.SoundTransmissionClass;
import hushmaze.sound.criterion.WeightedReduction;
import hushmaze.sound.flow.FlowTerm;
import hushmaze.sound.room.LevelStep;
import hushmaze.sound.section.WaveResult;
import hushmaze.sound.wall.EnvelopeLoss;
import hushmaze.sound.wall.WallRoute;
import hushmaze.wording.Wording;

/** What is behind the sound figures of an assessment, as JSON. */
final class SoundJson {
    private final ObjectMapper mapper;
    private final Wording wording;

    SoundJson(ObjectMapper mapper, Wording wording) {
        this.mapper = mapper;
        this.wording = wording;
    }

    ObjectNode detail(SoundDetail detail) {
        ObjectNode node = mapper.createObjectNode();
        node.set("methods", methods(detail.loss().methods()));
        node.set("walls", walls(detail.loss()));
        ArrayNode routes = node.putArray("routes");
        for (SoundRoute route : detail.routes()) {
            spectra(
                    routes.addObject()
                            .put("name", AssessmentJson.lower(route.kind().name())),
                    route.level());
        }
        ArrayNode flow = node.putArray("flowNoise");
        for (FlowTerm term : detail.flow().terms()) {
            ObjectNode row = flow.addObject().put("part", term.part()).put("source", term.source());
            AssessmentJson.values(row.putArray("madeOctavesDb"), term.made());
            AssessmentJson.values(row.putArray("atRoomPortOctavesDb"), term.octaves());
        }
        node.set("reason", reason(detail.reason()));
        ArrayNode improvements = node.putArray("improvements");
        for (Improvement improvement : detail.improvements()) {
            ObjectNode row = improvements
                    .addObject()
                    .put("name", AssessmentJson.lower(improvement.kind().name()));
            AssessmentJson.number(row, "marginDb", improvement.margin());
            AssessmentJson.number(row, "gainDb", improvement.gain());
        }
        node.set("elementDifference", ratings(detail.difference(), detail.transmissionClass()));
        ArrayNode heard = node.putArray("heardByOthers");
        detail.heard().forEach(h -> heard.add(heard(h)));
        return node;
    }

    private ObjectNode methods(PathMethods methods) {
        ObjectNode node = mapper.createObjectNode();
        spectra(node.putObject("estimate"), methods.estimateLoss());
        if (methods.quick() == null) {
            node.putNull("quick");
        } else {
            ObjectNode quick = node.putObject("quick");
            spectra(quick, methods.quickLoss());
            ArrayNode levels = quick.putArray("passes");
            for (Spectrum level : methods.quick().passLevels()) {
                AssessmentJson.values(levels.addObject().putArray("levelThirdsDb"), level);
            }
        }
        ArrayNode variants = node.putArray("quickVariantsThirdsDb");
        methods.variantLosses().forEach(v -> AssessmentJson.values(variants.addArray(), v));
        WaveResult wave = methods.wave();
        if (wave == null) {
            node.putNull("wave");
            return node;
        }
        ObjectNode solved = node.putObject("wave");
        ArrayNode plane = solved.putArray("transmissionLossThirdsDb");
        wave.thirds().forEach(plane::add);
        ArrayNode equal = solved.putArray("equalEnergyThirdsDb");
        wave.equalEnergyThirds().forEach(equal::add);
        solved.put("threeDimensionalThirds", wave.fullThirds());
        solved.put("worstResidual", wave.worstResidual());
        return node;
    }

    private ObjectNode walls(BoxLoss loss) {
        ObjectNode node = mapper.createObjectNode();
        AssessmentJson.values(node.putArray("lowThirdsDb"), loss.walls().low());
        AssessmentJson.values(node.putArray("likelyThirdsDb"), loss.walls().likely());
        AssessmentJson.values(node.putArray("highThirdsDb"), loss.walls().high());
        ArrayNode parts = node.putArray("partsAtLow");
        for (WallRoute.Part part : loss.lowWalls().parts()) {
            ObjectNode row = parts.addObject().put("pass", part.pass() + 1);
            row.put("through", AssessmentJson.lower(part.kind().name()));
            AssessmentJson.values(row.putArray("thirdsDb"), part.loss());
        }
        return node;
    }

    private ObjectNode reason(LossReason reason) {
        ObjectNode node = mapper.createObjectNode();
        AssessmentJson.number(
                node,
                "wallsFromHz",
                reason.wallsFrom() == null ? null : reason.wallsFrom().nominalHz());
        AssessmentJson.number(node, "wallsLimitDb", reason.wallsLimit());
        AssessmentJson.number(node, "spreadDb", reason.spread());
        node.put("text", wording.why(reason));
        return node;
    }

    private ObjectNode ratings(WeightedReduction weighted, SoundTransmissionClass transmissionClass) {
        ObjectNode node = mapper.createObjectNode();
        node.put("weightedDb", weighted.number());
        node.put("cDb", weighted.c());
        node.put("ctrDb", weighted.ctr());
        node.put("stc", transmissionClass.number());
        return node;
    }

    private ObjectNode heard(Heard heard) {
        ObjectNode node = mapper.createObjectNode();
        node.put("by", AssessmentJson.lower(heard.kind().name()));
        node.put("ok", heard.received().ok());
        AssessmentJson.number(node, "marginDb", heard.received().margin().margin());
        AssessmentJson.number(
                node, "governingBandHz", heard.received().margin().governing().nominalHz());
        ArrayNode steps = node.putArray("steps");
        for (LevelStep step : heard.received().chain().steps()) {
            ObjectNode row = steps.addObject().put("name", step.key()).put("part", step.part());
            row.put("source", step.source());
            spectra(row, step.level());
        }
        return node;
    }

    ObjectNode envelope(RoomNoise.EnvelopeNoise envelope) {
        ObjectNode node = mapper.createObjectNode();
        Spectrum loss = envelope.loss().loss();
        AssessmentJson.values(node.putArray("outsideThirdsDb"), envelope.outside());
        node.put("outsideDerivedFrom", envelope.derivedFrom());
        AssessmentJson.values(node.putArray("lossThirdsDb"), loss);
        node.setAll(ratings(WeightedReduction.of(loss), SoundTransmissionClass.of(loss)));
        ArrayNode shares = node.putArray("elements");
        for (EnvelopeLoss.Share share : envelope.loss().shares()) {
            ObjectNode row = shares.addObject().put("name", share.name());
            AssessmentJson.values(row.putArray("openAreaThirdsDb"), share.openArea());
        }
        return node;
    }

    private static void spectra(ObjectNode node, Spectrum thirds) {
        AssessmentJson.values(node.putArray("thirdsDb"), thirds);
    }
}
