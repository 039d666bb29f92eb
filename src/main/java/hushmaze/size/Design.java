package hushmaze.size;

import hushmaze.assess.PathResult;
import hushmaze.build.SheetLayout;
import hushmaze.project.Box;
import hushmaze.project.Construction;
import hushmaze.project.Mounting;
import hushmaze.project.VentPath;
import java.util.List;

/**
 * A box that a search found, assessed as documents are.
 *
 * @param kinds what it is the best at, at least one
 * @param box with its seams
 * @param result of the path with it
 * @param cost of its sheets, in the user's currency or m²
 */
public record Design(List<Kind> kinds, Box box, PathResult result, double cost) {
    public Design {
        kinds = List.copyOf(kinds);
    }

    /** A path with this box, its rows of screws as far apart as the box has room for. */
    public VentPath placed(VentPath asked) {
        Construction wished = asked.brief().construction();
        Mounting rows = result.path().brief().construction().mounting();
        return asked.withBrief(asked.brief().withConstruction(wished.mounted(rows)))
                .withBox(box);
    }

    /** Whether the wave solution has confirmed that it meets the target, and that others do not hear too much. */
    public boolean good() {
        return result.quiet().ok() && result.othersOk();
    }

    /** Margin at the pessimistic edge to the target, or to the limit on what others hear if that is less, dB. */
    public double margin() {
        return result.soundMargins().least();
    }

    /** Whether what others hear leaves less than the target does. */
    public boolean othersGovern() {
        return result.soundMargins().others() < result.soundMargins().target();
    }

    /** Depth away from the surface of the opening, cleats or gasket included, m. */
    public double depth() {
        return result.fits().depth() + result.fits().standOff();
    }

    /** kg. */
    public double mass() {
        return result.buildable().mass();
    }

    /** Pressure drop at the high edge, Pa. */
    public double drop() {
        return result.pathAir().pressureHigh();
    }

    /** Sheets of board. */
    public int sheets() {
        return result.buildable().sheets();
    }

    /** Sheets of liner. */
    public int linerSheets() {
        return result.layouts().stream().mapToInt(SheetLayout::fromStock).sum() - sheets();
    }

    /** Offcuts of board and liner, left by the boxes of paths before, that are cut up. */
    public int keptOffcuts() {
        return result.layouts().stream().mapToInt(l -> l.keptOffcuts().size()).sum();
    }
}
