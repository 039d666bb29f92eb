package hushmaze.size;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.air.AirState;
import hushmaze.air.PathAir;
import hushmaze.air.PathLosses;
import hushmaze.assess.AirJudge;
import hushmaze.assess.BoxFit;
import hushmaze.assess.SoundJudge;
import hushmaze.assess.TestRooms;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Construction;
import hushmaze.project.Doorway;
import hushmaze.project.Joinery;
import hushmaze.project.Opening;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Seam;
import hushmaze.project.Space;
import hushmaze.project.VentPath;
import hushmaze.solid.Axis;
import hushmaze.solid.PlacementProof;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.PathCalculator.Quick;
import hushmaze.work.Progress;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Property: a proposed box keeps every limit of its brief; when none is found, the relaxations named really help. */
class FirstLayoutTest {
    private static final double SLACK = 1e-6;

    private static Proposal propose(Brief brief) {
        VentPath path = new VentPath("in", Purpose.SUPPLY, brief, null);
        return new FirstLayout(TestRooms.project(TestRooms.nc(20), null, path)).propose(0, Progress.NONE);
    }

    @Test
    void proposedBoxesKeepEveryLimitOfTheBrief() {
        Random random = new Random(7);
        int found = 0;
        for (int i = 0; i < 12; i++) {
            Brief brief = randomBrief(random);
            Proposal proposal = propose(brief);
            if (proposal.box().isPresent()) {
                found++;
                requireKept(brief, proposal.box().get());
            } else {
                assertThat(proposal.tried()).isZero();
            }
        }
        assertThat(found).isBetween(4, 11);
    }

    private static void requireKept(Brief brief, Box box) {
        Solid solid = SolidBuilder.build(box);
        assertThat(PlacementProof.faults(solid)).isEmpty();
        Axis away = BoxFit.away(box.openingPort().face());
        Space space = brief.space();
        double u = solid.outer().size(away.u());
        double v = solid.outer().size(away.v());
        assertThat(solid.outer().size(away)).isLessThanOrEqualTo(space.depth() + SLACK);
        assertThat(Math.max(u, v)).isLessThanOrEqualTo(Math.max(space.width(), space.height()) + SLACK);
        assertThat(Math.min(u, v)).isLessThanOrEqualTo(Math.min(space.width(), space.height()) + SLACK);
        PathAir air = PathLosses.of(solid, brief.opening(), brief.flow(), AirState.of(0, 20), Purpose.SUPPLY);
        assertThat(air.pressureHigh()).isLessThanOrEqualTo(brief.maxPressureDrop());
        assertThat(brief.flow() / box.roomPort().area()).isLessThanOrEqualTo(brief.maxOpeningVelocity() + SLACK);
        assertThat(brief.flow() / (box.clearWidth() * box.clearHeight()))
                .isLessThanOrEqualTo(brief.maxPathVelocity() + SLACK);
        assertThat(box.openingPort().area())
                .isGreaterThanOrEqualTo(brief.opening().area() - SLACK);
        Double mass = brief.construction().maxMass();
        if (mass != null) {
            assertThat(solid.modules()).allMatch(m -> m.mass() <= mass + SLACK);
        }
    }

    private static Brief randomBrief(Random random) {
        Brief plain = TestRooms.brief(
                40 + 30 * random.nextDouble(),
                null,
                new Space(
                        0.4 + 0.8 * random.nextDouble(),
                        0.3 + 0.6 * random.nextDouble(),
                        0.15 + 0.4 * random.nextDouble()),
                Opening.Beyond.INDOORS);
        PortFace[] faces = PortFace.values();
        Construction c = plain.construction();
        Construction construction = new Construction(
                c.board(),
                1 + random.nextInt(2),
                1,
                c.liner(),
                random.nextBoolean(),
                faces[random.nextInt(4)],
                faces[random.nextInt(4)],
                random.nextInt(3) == 0 ? 20 + 30 * random.nextDouble() : null);
        return new Brief(
                plain.opening(),
                0.005 + 0.025 * random.nextDouble(),
                5 + 20 * random.nextDouble(),
                2.5,
                1.3,
                plain.noise(),
                null,
                plain.space(),
                construction);
    }

    @Test
    void whenNothingFitsEachRelaxationNamedHelpsAndALittleLessDoesNot() {
        Brief shallow = TestRooms.brief(50, null, new Space(0.9, 0.7, 0.07), Opening.Beyond.INDOORS);
        Proposal none = propose(shallow);
        assertThat(none.box()).isEmpty();
        assertThat(none.relaxations()).isNotEmpty();
        for (Relaxation relaxation : none.relaxations()) {
            Brief relaxed = BriefLimits.with(shallow, relaxation.limit(), relaxation.to());
            assertThat(propose(relaxed).box()).as("%s", relaxation).isPresent();
            // The search resolves one percent of the limit; a step of two percent back must not do.
            double step = 0.02 * Math.signum(relaxation.to() - relaxation.from()) * relaxation.from();
            double less = relaxation.to() - step;
            if ((less - relaxation.from()) * step > 0) {
                Brief notQuite = BriefLimits.with(shallow, relaxation.limit(), less);
                assertThat(propose(notQuite).box())
                        .as("less than %s", relaxation)
                        .isEmpty();
            }
        }
        assertThat(none.relaxations()).extracting(Relaxation::limit).contains(Relaxation.Limit.SPACE_DEPTH);
    }

    /** A brief whose box may be long, with limits on what is carried and on the door it goes through. */
    private static Brief longBrief(Double maxMass, Doorway doorway, PortFace openingFace) {
        Brief plain = TestRooms.brief(50, null, new Space(1.5, 0.5, 0.4), Opening.Beyond.INDOORS);
        Construction c = plain.construction();
        return plain.withConstruction(new Construction(
                c.board(), 1, 1, c.liner(), false, openingFace, c.roomFace(), maxMass, null, Joinery.usual(), doorway));
    }

    @Test
    void aBoxTooHeavyInOneIsLaidOutInParts() {
        Brief brief = longBrief(9.0, null, PortFace.BACK);
        Box box = propose(brief).box().orElseThrow();
        assertThat(box.seams()).extracting(Seam::kind).contains(Seam.Kind.PARTING);
        assertThat(SolidBuilder.build(box).mass()).isGreaterThan(9);
        requireKept(brief, box);
    }

    @Test
    void aDoorTooSmallForAnyBoxIsALimitLikeOthers() {
        // The opening alone is 200 mm wide, and with walls, liner and clear width no side goes through 0.2 x 0.2 m.
        Brief brief = longBrief(null, new Doorway(0.2, 0.2), PortFace.SIDE);
        Proposal none = propose(brief);
        if (none.box().isPresent()) {
            Solid solid = SolidBuilder.build(none.box().get());
            assertThat(solid.modules())
                    .allMatch(m -> brief.construction()
                            .doorway()
                            .lets(
                                    m.bounds().size(Axis.X) - SLACK,
                                    m.bounds().size(Axis.Y),
                                    m.bounds().size(Axis.Z)));
        } else {
            assertThat(none.relaxations())
                    .extracting(Relaxation::limit)
                    .containsAnyOf(Relaxation.Limit.DOORWAY_WIDTH, Relaxation.Limit.DOORWAY_HEIGHT);
        }
    }

    @Test
    void theSameBriefAlwaysGivesTheSameBox() {
        Brief brief = TestRooms.brief(50, null, new Space(0.9, 0.7, 0.35), Opening.Beyond.INDOORS);
        assertThat(propose(brief)).isEqualTo(propose(brief));
    }

    @Test
    void moreSpaceNeverMakesTheProposedBoxWorse() {
        Brief small = TestRooms.brief(75, null, new Space(0.7, 0.5, 0.25), Opening.Beyond.INDOORS);
        Project project = TestRooms.project(TestRooms.nc(20), null, new VentPath("in", Purpose.SUPPLY, small, null));
        Proposal tight = new FirstLayout(project).propose(0, Progress.NONE);
        Proposal roomy = propose(TestRooms.brief(75, null, new Space(1.4, 1.0, 0.5), Opening.Beyond.INDOORS));
        assertThat(tight.quietEnough()).isFalse();
        SoundJudge judge = new SoundJudge(project);
        double before = margin(judge, project, tight.box().orElseThrow());
        double after = margin(judge, project, roomy.box().orElseThrow());
        assertThat(after).isGreaterThan(before);
    }

    private static double margin(SoundJudge judge, Project project, Box box) {
        Solid solid = SolidBuilder.build(box);
        PathAir flow = AirJudge.air(project.paths().get(0), solid, AirState.of(project.room()));
        return judge.margins(0, solid, flow, Quick.NONE).target();
    }

    @Test
    void cancelStopsTheSearch() {
        VentPath path = TestRooms.path("in", Purpose.SUPPLY, 60, null);
        FirstLayout rules = new FirstLayout(TestRooms.project(TestRooms.nc(20), null, path));
        Progress cancelled = (fraction, doing) -> {
            throw new Progress.Cancelled();
        };
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> rules.propose(0, cancelled))
                .isInstanceOf(Progress.Cancelled.class);
    }
}
