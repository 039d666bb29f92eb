package hushmaze.solid;

import hushmaze.project.Seam;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/**
 * Makes two of every board and liner piece that a seam crosses.
 *
 * <p>At a seam that comes apart all layers part in one plane, boards shorter by half the gasket on each side, liner without
 * a gap. At a glued seam the second layer parts {@link SeamPlaces#STAGGER} further from the near end, so that each layer covers the
 * other's joint; baffles and liner part where the first layer does.
 */
final class SeamCutter {
    private final Frame frame;
    private final List<Seam> seams;
    private final List<Seal> seals;
    private final SeamPlaces places;

    SeamCutter(Frame frame, List<PortPlace> ports, List<Seal> seals) {
        this.frame = frame;
        this.seams = frame.box().seams();
        this.seals = seals;
        this.places = new SeamPlaces(frame.box(), frame.cavity(), frame.outer(), ports, frame.baffles());
        for (int i = 0; i < seams.size(); i++) {
            requirePlace(i);
        }
    }

    private double gap(Seam seam) {
        return seam.comesApart() ? frame.box().joinery().gasket() : 0;
    }

    /** A stretch of a part, from one plane to another, with its number. */
    private interface Stretches<P extends Part> {
        P stretch(P part, double x0, double x1, int number);
    }

    List<Panel> panels(List<Panel> whole) {
        return parted(whole, p -> p.role() == Role.BAFFLE ? 0 : p.layer(), this::gap, SeamCutter::stretch);
    }

    List<LinerPiece> liners(List<LinerPiece> whole) {
        return parted(whole, piece -> 0, seam -> 0, SeamCutter::stretch);
    }

    private <P extends Part> List<P> parted(
            List<P> whole, ToIntFunction<P> layer, ToDoubleFunction<Seam> gap, Stretches<P> stretches) {
        List<P> cut = whole;
        for (Seam seam : seams) {
            List<P> next = new ArrayList<>();
            for (P part : cut) {
                double x = places.plane(seam, layer.applyAsInt(part));
                part(part, x, gap.applyAsDouble(seam), stretches, next);
            }
            cut = next;
        }
        return cut;
    }

    private <P extends Part> void part(P part, double x, double gap, Stretches<P> stretches, List<P> into) {
        Cuboid bounds = part.bounds();
        if (crosses(bounds, x)) {
            if (gap > 0) {
                seals.add(new Seal(Seal.Kind.PARTING_GASKET, bounds.with(Axis.X, x - gap / 2, x + gap / 2)));
            }
            into.add(stretches.stretch(part, bounds.x0(), x - gap / 2, part.stretch()));
            into.add(stretches.stretch(part, x + gap / 2, bounds.x1(), part.stretch() + 1));
        } else {
            boolean beyond = bounds.x0() >= x;
            into.add(beyond ? stretches.stretch(part, bounds.x0(), bounds.x1(), part.stretch() + 1) : part);
        }
    }

    private static boolean crosses(Cuboid bounds, double x) {
        return bounds.x0() < x && x < bounds.x1();
    }

    private static Panel stretch(Panel panel, double x0, double x1, int number) {
        Cuboid bounds = panel.bounds().with(Axis.X, x0, x1);
        double moved = x0 - panel.bounds().x0();
        double length = x1 - x0;
        boolean alongU = panel.normal() != Axis.X;
        List<Groove> grooves = new ArrayList<>();
        for (Groove g : panel.grooves()) {
            double u0 = alongU ? Math.max(0, g.u0() - moved) : g.u0();
            double u1 = alongU ? Math.min(length, g.u1() - moved) : g.u1();
            if (u1 > u0) {
                grooves.add(new Groove(u0, g.v0(), u1, g.v1(), g.depth(), g.inLowFace()));
            }
        }
        List<Cutout> cutouts = cutouts(panel, moved, length);
        return new Panel(panel.role(), panel.number(), panel.layer(), panel.board(), bounds, cutouts, grooves, number);
    }

    private static List<Cutout> cutouts(Part part, double moved, double length) {
        if (part.normal() == Axis.X) {
            return part.cutouts();
        }
        return Holes.between(part.cutouts(), true, moved, moved + length);
    }

    private static LinerPiece stretch(LinerPiece piece, double x0, double x1, int number) {
        Cuboid bounds = piece.bounds().with(Axis.X, x0, x1);
        List<Cutout> cutouts = cutouts(piece, x0 - piece.bounds().x0(), x1 - x0);
        return new LinerPiece(
                piece.role(), piece.number(), piece.layer(), piece.ply(), piece.liner(), bounds, cutouts, number);
    }

    private void requirePlace(int number) {
        Seam seam = seams.get(number);
        places.inTheWay(seam).ifPresent(from -> {
            throw new InvalidValue(
                    "seams[" + number + "].position",
                    InvalidValue.shown(seam.position(), Unit.MILLIMETRE),
                    "away from " + from + " by at least " + InvalidValue.shown(SeamPlaces.KEEP_OFF, Unit.MILLIMETRE),
                    "mm");
        });
    }
}
