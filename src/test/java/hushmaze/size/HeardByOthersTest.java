package hushmaze.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.assess.SoundMargins;
import hushmaze.assess.TestRooms;
import hushmaze.build.Supply;
import hushmaze.project.Brief;
import hushmaze.project.Choices;
import hushmaze.project.MouthPosition;
import hushmaze.project.Opening;
import hushmaze.project.Outgoing;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Space;
import hushmaze.project.VentPath;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.wording.SizeWording;
import hushmaze.work.Progress;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Property: a search keeps the limit on what others hear as it keeps the target, and where no box does, tells the nearest one and by
 * how much it misses. Rooms and levels are invented.
 */
class HeardByOthersTest {
    private static final Methods SOON = new Methods(Methods.ALL.quick(), false, Methods.ALL.sheets());
    /** Noise that next to nothing must be done about. */
    private static final double LITTLE = 14;

    private static Project project(double noise, Double played) {
        Choices few = new Choices(null, null, 1, 1, List.of(PortFace.BACK), List.of(PortFace.FRONT, PortFace.END));
        Brief plain = TestRooms.brief(noise, null, new Space(0.5, 0.32, 0.24), Opening.Beyond.INDOORS)
                .choosing(few);
        Brief brief = played == null ? plain : heard(plain, played);
        return TestRooms.project(TestRooms.nc(20), null, new VentPath("in", Purpose.SUPPLY, brief, null));
    }

    private static Brief heard(Brief b, double played) {
        Outgoing outgoing = new Outgoing(
                Spectrum.flat(BandSet.OCTAVE, played),
                Outgoing.Receiver.ROOM,
                MouthPosition.MIDDLE_OF_SURFACE,
                Collections.nCopies(8, 10.0),
                2,
                TestRooms.nc(20),
                "invented for a test");
        return new Brief(
                b.opening(),
                b.flow(),
                b.maxPressureDrop(),
                b.maxPathVelocity(),
                b.maxOpeningVelocity(),
                b.noise(),
                b.noiseShare(),
                b.space(),
                b.construction(),
                b.roomMouth(),
                b.fan(),
                outgoing,
                b.sharedDuct(),
                b.drive(),
                b.fittings(),
                b.choices());
    }

    private static PathDesigns sized(Project project) {
        return Sizing.of(project, 1, SOON, Progress.NONE, Sizing.Watch.NOBODY)
                .paths()
                .get(0);
    }

    @Test
    void whatOthersHearIsKeptWithSomethingInHand() {
        Design careless = sized(project(LITTLE, null)).recommended().orElseThrow();
        double played = 46;
        Project asked = project(LITTLE, played);
        SoundMargins before = Assessor.alone(asked, 0, careless.box(), SOON, Supply.of(asked.stock()), Progress.NONE)
                .soundMargins();
        assertThat(before.target()).isPositive();
        assertThat(before.others()).isNegative();
        PathDesigns found = sized(asked);
        assertThat(found.shortfall().isAny()).isFalse();
        Design careful = found.recommended().orElseThrow();
        assertThat(careful.good()).isTrue();
        assertThat(careful.result().othersOk()).isTrue();
        assertThat(careful.result().soundMargins().others()).isGreaterThanOrEqualTo(Kind.IN_HAND);
        assertThat(careful.othersGovern()).isTrue();
        assertThat(careful.margin()).isEqualTo(careful.result().soundMargins().others());
    }

    @Test
    void whereNoBoxKeepsItTheNearestIsToldAndWhatWouldHelp() {
        double played = 75;
        Project project = project(LITTLE, played);
        PathDesigns found = sized(project);
        Design nearest = found.recommended().orElseThrow();
        double missed = found.shortfall().others();
        assertThat(missed).isPositive();
        assertThat(found.shortfall().target()).isZero();
        assertThat(nearest.good()).isFalse();
        assertThat(nearest.result().quiet().ok()).isTrue();
        assertThat(nearest.margin()).isCloseTo(-missed, within(1e-9));
        SizeWording words = new SizeWording(project);
        assertThat(words.head("in", found)).contains("NO box keeps what others hear");
        assertThat(words.figures(nearest, found.inMoney())).contains("what others hear EXCEEDS its limit by");
        assertThat(words.why(nearest)).contains("what others hear");
        assertThat(words.ways(found)).anyMatch(way -> way.contains("played or spoken in the room"));
        assertThat(sized(project(LITTLE, played - missed - 0.5)).shortfall().isAny())
                .isFalse();
    }
}
