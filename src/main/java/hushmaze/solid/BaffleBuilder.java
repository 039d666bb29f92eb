package hushmaze.solid;

import hushmaze.project.Box;
import hushmaze.project.Joinery;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * The baffles and, if they are let in, the grooves that hold them.
 *
 * <p>A baffle stands on the back and under the cover, from which the gasket parts it. In a groove it reaches into the back
 * and into the end it starts from; the groove is wider than the baffle by the fit clearance, and deeper than the baffle
 * reaches by as much. The groove in the back goes on under the end, so that it can be run out there.
 */
final class BaffleBuilder {
    private final Frame frame;
    private final Box box;
    private final Joinery joinery;
    private final List<Seal> seals;

    BaffleBuilder(Frame frame, List<Seal> seals) {
        this.frame = frame;
        this.box = frame.box();
        this.joinery = box.joinery();
        this.seals = seals;
    }

    /** How far a baffle reaches into back and end, m. */
    private double tongue() {
        return joinery.groove() > 0 ? joinery.groove() - joinery.fitClearance() : 0;
    }

    /** The boards of all baffles; the gaskets over them go into the list. */
    List<Panel> panels() {
        List<Panel> panels = new ArrayList<>();
        double t = box.baffleBoard().thickness();
        for (int i = 0; i < frame.passes() - 1; i++) {
            Cuboid whole = frame.baffle(i);
            double top = whole.z1() - joinery.gasket();
            if (joinery.gasket() > 0) {
                seals.add(new Seal(Seal.Kind.COVER_GASKET, whole.with(Axis.Z, top, whole.z1())));
            }
            Cuboid block = reaching(i, tongue()).with(Axis.Z, -tongue(), top);
            for (int layer = 0; layer < box.baffleLayers(); layer++) {
                double y = whole.y0() + layer * t;
                panels.add(
                        new Panel(Role.BAFFLE, i, layer, box.baffleBoard(), block.with(Axis.Y, y, y + t), List.of()));
            }
        }
        return panels;
    }

    private Cuboid reaching(int baffle, double by) {
        Cuboid whole = frame.baffle(baffle);
        return frame.turnsAtFarEnd(baffle)
                ? whole.with(Axis.X, whole.x0() - by, whole.x1())
                : whole.with(Axis.X, whole.x0(), whole.x1() + by);
    }

    /** The shell with the grooves cut into its innermost layer. */
    List<Panel> grooved(List<Panel> shell, List<PortPlace> ports) {
        if (joinery.groove() == 0 || frame.passes() == 1) {
            return shell;
        }
        requireWeb(ports);
        List<Panel> panels = new ArrayList<>();
        for (Panel panel : shell) {
            List<Groove> grooves = new ArrayList<>();
            for (int i = 0; i < frame.passes() - 1; i++) {
                if (panel.layer() == 0 && holds(panel.role(), i)) {
                    Cuboid block = groove(panel, i);
                    seals.add(new Seal(Seal.Kind.PLAY, block));
                    grooves.add(in(panel, block));
                }
            }
            panels.add(grooves.isEmpty() ? panel : panel.grooved(grooves));
        }
        return panels;
    }

    private boolean holds(Role role, int baffle) {
        return role == Role.BACK || role == (frame.turnsAtFarEnd(baffle) ? Role.NEAR_END : Role.FAR_END);
    }

    /** The space a groove takes from a board. */
    private Cuboid groove(Panel panel, int baffle) {
        Cuboid whole = frame.baffle(baffle);
        double play = joinery.fitClearance() / 2;
        double depth = joinery.groove();
        Cuboid wide = whole.with(Axis.Y, whole.y0() - play, whole.y1() + play);
        if (panel.role() == Role.BACK) {
            double x0 = wide.x0() - (frame.turnsAtFarEnd(baffle) ? depth : play);
            double x1 = wide.x1() + (frame.turnsAtFarEnd(baffle) ? play : depth);
            return wide.with(Axis.X, x0, x1).with(Axis.Z, -depth, 0);
        }
        Cuboid bounds = panel.bounds();
        Cuboid high = wide.with(Axis.Z, bounds.z0(), bounds.z1());
        return panel.role() == Role.NEAR_END
                ? high.with(Axis.X, bounds.x1() - depth, bounds.x1())
                : high.with(Axis.X, bounds.x0(), bounds.x0() + depth);
    }

    private static Groove in(Panel panel, Cuboid block) {
        Cutout face = Holes.cutout(block, panel.bounds(), panel.normal());
        return new Groove(
                face.u0(), face.v0(), face.u1(), face.v1(), block.size(panel.normal()), panel.role() == Role.FAR_END);
    }

    /** A port beside a baffle needs board between itself and the groove. */
    private void requireWeb(List<PortPlace> ports) {
        for (int i = 0; i < frame.passes() - 1; i++) {
            Cuboid baffle = frame.baffle(i);
            double play = joinery.fitClearance() / 2;
            for (PortPlace port : ports) {
                Cuboid hole = port.hole();
                boolean clear = hole.y1() <= baffle.y0() - play + 1e-12 || hole.y0() >= baffle.y1() + play - 1e-12;
                if (holds(port.role(), i) && !clear) {
                    String field = port.equals(ports.get(0)) ? "openingPort" : "roomPort";
                    throw new InvalidValue(
                            field + (port.role() == Role.BACK ? ".height" : ".width"),
                            InvalidValue.shown(hole.size(Axis.Y), Unit.MILLIMETRE),
                            "clear of the baffle's groove by " + InvalidValue.shown(play, Unit.MILLIMETRE),
                            "mm");
                }
            }
        }
    }
}
