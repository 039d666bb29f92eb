package hushmaze.size;

import hushmaze.material.Board;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.InvalidValue;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Makes boxes of patterns for one brief: the ports follow from opening, airflow and limits. */
final class BoxMaker {
    /** Narrowest pass worth building and cleaning, m; common practice, no source. */
    static final double MIN_CLEAR = 0.04;

    private final Brief brief;
    private final Steps steps;

    BoxMaker(Brief brief, Steps steps) {
        this.brief = brief;
        this.steps = steps;
    }

    /** The box of a pattern; nothing where the sizes do not make one, as when a port is larger than its pass. */
    Optional<Box> box(Pattern pattern) {
        Build build = pattern.build();
        Place place = Place.of(brief, pattern.openingFace(), pattern.turned());
        List<Board> layers = Collections.nCopies(build.layers(), build.board());
        try {
            return Optional.of(new Box(
                    pattern.form(),
                    pattern.passes(),
                    pattern.width(),
                    pattern.height(),
                    pattern.length(),
                    pattern.gap(),
                    layers,
                    build.board(),
                    build.baffleLayers(),
                    build.liner(),
                    build.lined(),
                    new Port(pattern.openingFace(), place.openingWidth(), place.openingHeight(), 0),
                    roomPort(pattern),
                    brief.construction().joineryOrPlain(),
                    List.of()));
        } catch (InvalidValue notABox) {
            return Optional.empty();
        }
    }

    /** Area the room port must have to keep the limit on its velocity, m². */
    double leastMouth() {
        return brief.flow() / brief.maxOpeningVelocity();
    }

    /**
     * The least clear width that keeps the limits on velocity, lets the opening in and is no less than its lining is thick, m.
     *
     * @param height clear, m
     */
    double leastWidth(Place place, Pattern kind, double height) {
        double least = Math.max(MIN_CLEAR, brief.flow() / brief.maxPathVelocity() / height);
        least = Math.max(least, kind.build().side());
        if (kind.openingFace() == PortFace.END) {
            least = Math.max(least, place.openingWidth());
        } else if (kind.openingFace().isBroad()) {
            least = Math.max(least, place.openingHeight());
        }
        if (kind.roomFace() == PortFace.END) {
            least = Math.max(least, leastMouth() / height);
        }
        return least;
    }

    /** As wide as its pass, and as long as its area asks; an end is open as a whole. In a chamber half as wide, out of line. */
    private Port roomPort(Pattern pattern) {
        PortFace face = pattern.roomFace();
        boolean chamber = pattern.form() == Box.Form.OFFSET_CHAMBER;
        double area = leastMouth() * pattern.mouth();
        if (face == PortFace.END) {
            double wide = chamber ? along(area, pattern.height()) : pattern.width();
            return new Port(face, wide, pattern.height(), 0);
        }
        double broad = chamber ? steps.down(pattern.width() / 2) : pattern.width();
        double across = face.isBroad() ? broad : pattern.height();
        return new Port(face, along(area, across), across, 0);
    }

    private double along(double area, double across) {
        return Math.max(steps.up(area / across), MIN_CLEAR);
    }
}
