package hushmaze.drawing.page;

import hushmaze.drawing.Labels;
import hushmaze.project.JointGap;
import hushmaze.sound.wall.BoxWalls.Edge;
import hushmaze.wording.Amounts;

/** What the figures suppose of the joints, or what was measured of them. Gaps are in millimetres always: feeler gauges are. */
final class GapWords {
    private final Job job;

    GapWords(Job job) {
        this.job = job;
    }

    /** How tight the three edges take the joints to be. */
    String supposed() {
        JointGap gap = job.result().path().box().joinery().coverGap();
        return gap == null
                ? Labels.of(
                        "methods.joints",
                        millimetres(Edge.LOW.gap()),
                        millimetres(Edge.LOW.coverGap()),
                        millimetres(Edge.LIKELY.gap()),
                        millimetres(Edge.LIKELY.coverGap()))
                : Labels.of(
                        "methods.joints.measured",
                        millimetres(Edge.LOW.gap()),
                        millimetres(gap.most()),
                        millimetres(Edge.LIKELY.gap()),
                        millimetres(gap.likely()),
                        millimetres(gap.least()),
                        gap.source());
    }

    /** What a slit round the cover stands in place of. @param slit m */
    String slit(String slit) {
        JointGap gap = job.result().path().box().joinery().coverGap();
        return gap == null
                ? Labels.of("change.meant.slit", slit, millimetres(Edge.LOW.coverGap()))
                : Labels.of("change.meant.slit.measured", slit, millimetres(gap.most()));
    }

    /** The gap that the project holds. */
    String kept(JointGap gap) {
        return Labels.of(
                "report.fitting.kept",
                millimetres(gap.likely()),
                millimetres(gap.least()),
                millimetres(gap.most()),
                gap.source());
    }

    private static String millimetres(double metres) {
        return Amounts.number(metres * 1e3, 3) + " mm";
    }
}
