package hushmaze.solid;

import hushmaze.project.Seam;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

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
        List<Cuboid> baffles =
                IntStream.range(0, frame.passes() - 1).mapToObj(frame::baffle).toList();
        this.places = new SeamPlaces(frame.box(), frame.cavity(), frame.outer(), ports, baffles);
        for (int i = 0; i < seams.size(); i++) {
            requirePlace(i);
        }
    }

    private double gap(Seam seam) {
        return seam.kind() == Seam.Kind.PARTING ? frame.box().joinery().gasket() : 0;
    }

    List<Panel> panels(List<Panel> whole) {
        List<Panel> cut = whole;
        for (Seam seam : seams) {
            List<Panel> next = new ArrayList<>();
            for (Panel panel : cut) {
                double x = places.plane(seam, panel.role() == Role.BAFFLE ? 0 : panel.layer());
                panels(panel, x, gap(seam), next);
            }
            cut = next;
        }
        return cut;
    }

    private void panels(Panel panel, double x, double gap, List<Panel> into) {
        Cuboid bounds = panel.bounds();
        if (crosses(bounds, x)) {
            if (gap > 0) {
                seals.add(new Seal(Seal.Kind.PARTING_GASKET, bounds.with(Axis.X, x - gap / 2, x + gap / 2)));
            }
            into.add(stretch(panel, bounds.x0(), x - gap / 2, panel.stretch()));
            into.add(stretch(panel, x + gap / 2, bounds.x1(), panel.stretch() + 1));
        } else {
            boolean beyond = bounds.x0() >= x;
            into.add(beyond ? stretch(panel, bounds.x0(), bounds.x1(), panel.stretch() + 1) : panel);
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
        List<Cutout> cutouts = new ArrayList<>();
        for (Cutout c : part.cutouts()) {
            double u0 = Math.max(0, c.u0() - moved);
            double u1 = Math.min(length, c.u1() - moved);
            if (u1 > u0) {
                cutouts.add(new Cutout(u0, c.v0(), u1, c.v1()));
            }
        }
        return cutouts;
    }

    List<LinerPiece> liners(List<LinerPiece> whole) {
        List<LinerPiece> cut = whole;
        for (Seam seam : seams) {
            double x = places.plane(seam, 0);
            List<LinerPiece> next = new ArrayList<>();
            for (LinerPiece piece : cut) {
                Cuboid bounds = piece.bounds();
                if (crosses(bounds, x)) {
                    next.add(stretch(piece, bounds.x0(), x, piece.stretch()));
                    next.add(stretch(piece, x, bounds.x1(), piece.stretch() + 1));
                } else {
                    boolean beyond = bounds.x0() >= x;
                    next.add(beyond ? stretch(piece, bounds.x0(), bounds.x1(), piece.stretch() + 1) : piece);
                }
            }
            cut = next;
        }
        return cut;
    }

    private static LinerPiece stretch(LinerPiece piece, double x0, double x1, int number) {
        Cuboid bounds = piece.bounds().with(Axis.X, x0, x1);
        List<Cutout> cutouts = cutouts(piece, x0 - piece.bounds().x0(), x1 - x0);
        return new LinerPiece(piece.role(), piece.number(), piece.layer(), piece.liner(), bounds, cutouts, number);
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
