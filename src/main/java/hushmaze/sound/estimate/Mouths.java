package hushmaze.sound.estimate;

import hushmaze.project.Box;
import hushmaze.project.Opening;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Solid;
import hushmaze.sound.TermInput;
import hushmaze.sound.estimate.EndReflection.Setting;
import java.util.ArrayList;
import java.util.List;

/**
 * The mouths of a box less those of the bare opening, each after {@link EndReflection}, flush.
 *
 * <p>At a wall opening the box has two mouths, as the opening has; at a register the outlet, as the register has; within a
 * duct none. The bare opening counts as the mouth of a duct of its size, which for a hole in a thin wall is an assumption.
 */
final class Mouths {
    private static final String SOURCE =
            "end reflection after ASHRAE RP-1314 (constants from memory), box less bare opening";
    /** Diameters of straight duct behind a mouth that make it a long one; rule from memory. */
    private static final double STRAIGHT_DIAMETERS = 3;
    /** Areas that differ by a smaller share are the same. */
    private static final double SAME = 1e-9;

    private final Solid solid;
    private final double bare;
    private final double soundSpeed;
    private final List<PortPlace> mouths;

    Mouths(Solid solid, Opening opening, double soundSpeed) {
        this.solid = solid;
        this.bare = opening.area();
        this.soundSpeed = soundSpeed;
        this.mouths = switch (opening.kind()) {
            case REGISTER -> List.of(solid.roomPort());
            case WALL_OPENING -> List.of(solid.openingPort(), solid.roomPort());
            case IN_DUCT -> List.of();
        };
    }

    /** Adds their term and the notices, if there are mouths. */
    void addTo(TermList list) {
        if (mouths.isEmpty()) {
            return;
        }
        List<Notice> notices = new ArrayList<>();
        List<TermInput> inputs = new ArrayList<>();
        for (PortPlace mouth : mouths) {
            inputs.add(new TermInput(
                    isAtOpening(mouth) ? "openingPortArea" : "roomPortArea", mouth.area(), Unit.SQUARE_METRE));
            sayIfShort(mouth, notices);
        }
        inputs.add(new TermInput("bareArea", bare, Unit.SQUARE_METRE));
        Spectrum thirds = Spectrum.ofFrequency(BandSet.THIRD_OCTAVE, this::loss);
        list.add("mouths", "", SOURCE, BandLoss.atCentres(thirds, notices), inputs);
    }

    private double loss(double frequency) {
        double sum = 0;
        for (PortPlace mouth : mouths) {
            sum += EndReflection.loss(frequency, mouth.area(), soundSpeed, Setting.FLUSH)
                    - EndReflection.loss(frequency, bare, soundSpeed, Setting.FLUSH);
        }
        return sum;
    }

    /** A mouth as large as the bare opening cancels out whatever is behind it. */
    private void sayIfShort(PortPlace mouth, List<Notice> notices) {
        double asked = STRAIGHT_DIAMETERS * EndReflection.diameter(mouth.area());
        double straight = straightBehind(mouth);
        if (Math.abs(mouth.area() / bare - 1) > SAME && straight < asked) {
            notices.add(Notice.of(
                    NoticeKind.MOUTH_WITHOUT_STRAIGHT_DUCT,
                    Severity.WARNING,
                    isAtOpening(mouth) ? PortPlace.AT_OPENING : PortPlace.IN_ROOM,
                    straight,
                    asked,
                    Unit.MILLIMETRE));
        }
    }

    private double straightBehind(PortPlace mouth) {
        if (mouth.turns() || solid.box().form() == Box.Form.OFFSET_CHAMBER) {
            return 0;
        }
        Pass pass = solid.passes().get(isAtOpening(mouth) ? 0 : solid.passes().size() - 1);
        return MazeTerms.run(pass, solid);
    }

    private boolean isAtOpening(PortPlace mouth) {
        return mouth.equals(solid.openingPort());
    }
}
