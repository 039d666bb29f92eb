package hushmaze.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.build.CutItem;
import hushmaze.build.CutSequence;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetPlan;
import hushmaze.build.joint.Hole;
import hushmaze.drawing.Page;
import hushmaze.drawing.SampleAssessment;
import hushmaze.drawing.page.TrueSize;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import hushmaze.solid.RandomBoxes;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Property: over seeded random boxes what a machine reads from the layers of a part's or sheet's SVG is what the cut list and
 * the layout say: outline, every cut-out, groove and hole, in true size; every shape is in one layer.
 */
class SvgLayersTest {
    private static final FontMeasure MEASURE = new FontMeasure();
    private static final double MM = 1000;
    private static final double EXACT = 1e-4;
    /** Blank rim of the page, mm. */
    private static final double RIM = 10;

    /** The picture read last, and the height of what it shows, mm. Places below are from its lower left corner, y upwards. */
    private Element svg;

    private double height;

    @Test
    void partsAreAsTheCutListSays() throws Exception {
        int[] met = new int[4];
        for (Assessment assessment : assessments()) {
            TrueSize trueSize =
                    new TrueSize(MEASURE, assessment.project().stock().screw());
            double hole = MM * assessment.project().stock().screw().diameter() + 0.5;
            for (PathResult result : assessment.paths()) {
                for (CutItem item : result.cutList().items().toList()) {
                    read(trueSize.part(item), item.length(), item.width());
                    outline(item, met);
                    List<double[]> grooves = rectangles("grooves");
                    assertThat(grooves).hasSameSizeAs(item.grooves());
                    for (Groove g : item.grooves()) {
                        met[2]++;
                        has(grooves, MM * g.u0(), MM * g.v0(), MM * g.u1(), MM * g.v1());
                    }
                    List<double[]> holes = circles("holes");
                    assertThat(holes).hasSameSizeAs(item.holes());
                    for (Hole h : item.holes()) {
                        met[3]++;
                        has(holes, MM * h.u(), MM * h.v(), hole);
                    }
                }
            }
        }
        assertThat(Arrays.stream(met).boxed().toList())
                .as("notches, windows, grooves, holes")
                .allMatch(count -> count > 10);
    }

    @Test
    void sheetsAreAsTheLayoutSays() throws Exception {
        int turned = 0;
        for (Assessment assessment : assessments()) {
            TrueSize trueSize =
                    new TrueSize(MEASURE, assessment.project().stock().screw());
            for (PathResult result : assessment.paths()) {
                for (SheetLayout layout : result.layouts()) {
                    for (SheetPlan plan : layout.sheets()) {
                        Page page = trueSize.sheet(layout.material(), plan, result.cutList());
                        read(page, plan.sheet().length(), plan.sheet().width());
                        has(
                                rectangles("sheet"),
                                0,
                                0,
                                MM * plan.sheet().length(),
                                MM * plan.sheet().width());
                        turned += sheet(plan, result);
                    }
                }
            }
        }
        assertThat(turned).as("turned panels with work on them").isGreaterThan(20);
    }

    /** Panels with their work; how many cut-outs, grooves and holes of turned ones there were. */
    private int sheet(SheetPlan plan, PathResult result) {
        int turned = 0;
        int cutouts = 0;
        int grooves = 0;
        int holes = 0;
        for (SheetPlan.Placed p : plan.panels()) {
            double x = MM * p.x();
            double y = MM * p.y();
            has(rectangles("outline"), x, y, x + MM * p.length(), y + MM * p.width());
            CutItem item = result.cutList()
                    .items()
                    .filter(i -> i.mark().equals(p.mark()))
                    .findFirst()
                    .orElseThrow();
            for (Cutout c : item.cutouts()) {
                has(rectangles("cutouts"), placed(p, c.u0(), c.v0(), c.u1(), c.v1()));
            }
            for (Groove g : item.grooves()) {
                has(rectangles("grooves"), placed(p, g.u0(), g.v0(), g.u1(), g.v1()));
            }
            for (Hole h : item.holes()) {
                double[] at = placed(p, h.u(), h.v(), h.u(), h.v());
                assertThat(circles("holes")).anyMatch(c -> near(c[0], at[0]) && near(c[1], at[1]));
            }
            cutouts += item.cutouts().size();
            grooves += item.grooves().size();
            holes += item.holes().size();
            turned += p.rotated()
                    ? item.cutouts().size()
                            + item.grooves().size()
                            + item.holes().size()
                    : 0;
        }
        assertThat(rectangles("outline")).hasSameSizeAs(plan.panels());
        assertThat(rectangles("cutouts")).hasSize(cutouts);
        assertThat(rectangles("grooves")).hasSize(grooves);
        assertThat(circles("holes")).hasSize(holes);
        int cuts = CutSequence.of(plan).steps().size();
        assertThat(elements("cuts", "line")).hasSize(cuts);
        return turned;
    }

    /** A quarter turn to the left takes the panel's length to the sheet's width, and its width back along the sheet's length. */
    private static double[] placed(SheetPlan.Placed p, double u0, double v0, double u1, double v1) {
        double[] at = p.rotated()
                ? new double[] {p.x() + p.length() - v1, p.y() + u0, p.x() + p.length() - v0, p.y() + u1}
                : new double[] {p.x() + u0, p.y() + v0, p.x() + u1, p.y() + v1};
        return Arrays.stream(at).map(m -> MM * m).toArray();
    }

    /** The outline is the part less its notches, the cut-outs layer its windows. */
    private void outline(CutItem item, int[] met) {
        double length = MM * item.length();
        double width = MM * item.width();
        List<double[]> outline = polygons("outline");
        double[] all = outline.stream().flatMapToDouble(Arrays::stream).toArray();
        // A notch may take a whole end away, which leaves the part's own size to be seen only together with the notch.
        double[] whole = DoubleStream.concat(
                        Arrays.stream(all),
                        item.cutouts().stream()
                                .flatMapToDouble(c -> DoubleStream.of(c.u0(), c.v0(), c.u1(), c.v1())
                                        .map(m -> MM * m)))
                .toArray();
        assertThat(extent(whole, 0)).containsExactly(new double[] {0, length}, within(EXACT));
        assertThat(extent(whole, 1)).containsExactly(new double[] {0, width}, within(EXACT));
        double removed =
                item.cutouts().stream().mapToDouble(c -> MM * MM * c.area()).sum();
        double drawn = outline.stream().mapToDouble(SvgLayersTest::area).sum()
                - polygons("cutouts").stream().mapToDouble(SvgLayersTest::area).sum();
        assertThat(drawn).isCloseTo(length * width - removed, within(EXACT * 4 * (length + width)));
        List<double[]> windows = rectangles("cutouts");
        int inside = 0;
        for (Cutout c : item.cutouts()) {
            double[] r = {MM * c.u0(), MM * c.v0(), MM * c.u1(), MM * c.v1()};
            if (r[0] > EXACT && r[1] > EXACT && r[2] < length - EXACT && r[3] < width - EXACT) {
                inside++;
                met[1]++;
                has(windows, r);
            } else {
                met[0]++;
                corners(r, length, width, all);
            }
        }
        assertThat(windows).hasSize(inside);
    }

    /** Every corner of a notch that is no corner of the part is a corner of the outline. */
    private static void corners(double[] r, double length, double width, double[] all) {
        for (double x : new double[] {r[0], r[2]}) {
            for (double y : new double[] {r[1], r[3]}) {
                boolean endOfPart = (x < EXACT || x > length - EXACT) && (y < EXACT || y > width - EXACT);
                boolean found = false;
                for (int i = 0; i < all.length; i += 2) {
                    found |= near(all[i], x) && near(all[i + 1], y);
                }
                assertThat(found || endOfPart).as("corner %s, %s", x, y).isTrue();
            }
        }
    }

    private static List<Assessment> assessments() {
        List<Assessment> all = new ArrayList<>();
        all.add(SampleAssessment.twoPaths(UnitSystem.METRIC));
        RandomBoxes boxes = new RandomBoxes(808);
        for (int i = 0; i < 20; i++) {
            all.add(SampleAssessment.of(UnitSystem.METRIC, boxes.next()));
        }
        return all;
    }

    /** Reads the page back and checks that it is in true size and every shape in one named group. */
    private void read(Page page, double length, double width) throws Exception {
        String text = new SvgWriter(MEASURE).write(page);
        svg = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))
                .getDocumentElement();
        height = MM * width;
        assertThat(svg.getAttribute("width")).endsWith("mm");
        assertThat(Double.parseDouble(svg.getAttribute("width").replace("mm", "")))
                .isCloseTo(MM * length + 2 * RIM, within(EXACT));
        assertThat(svg.getAttribute("viewBox"))
                .isEqualTo("0 0 " + svg.getAttribute("width").replace("mm", "") + " "
                        + svg.getAttribute("height").replace("mm", ""));
        Set<String> ids = new HashSet<>();
        int shapes = 0;
        for (Element group : children(svg)) {
            if (group.getTagName().equals("title")) {
                continue;
            }
            assertThat(group.getTagName()).isEqualTo("g");
            assertThat(ids.add(group.getAttribute("id"))).as("ids are unlike").isTrue();
            assertThat(group.getAttribute("aria-label")).isNotBlank();
            List<Element> inside = children(group);
            assertThat(inside.get(0).getTagName()).isEqualTo("title");
            assertThat(inside.subList(1, inside.size()))
                    .isNotEmpty()
                    .allMatch(e -> Set.of("line", "polygon", "polyline", "circle", "text")
                            .contains(e.getTagName()));
            shapes += inside.size() - 1;
        }
        assertThat(shapes).isEqualTo(page.shapes().size());
    }

    private static List<Element> children(Element parent) {
        List<Element> children = new ArrayList<>();
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                children.add(element);
            }
        }
        return children;
    }

    private List<Element> elements(String layer, String tag) {
        return children(svg).stream()
                .filter(g -> g.getAttribute("id").equals(layer))
                .flatMap(g -> children(g).stream())
                .filter(e -> e.getTagName().equals(tag))
                .toList();
    }

    /** Corners x, y in turn. */
    private List<double[]> polygons(String layer) {
        return elements(layer, "polygon").stream()
                .map(e -> {
                    double[] xy = Arrays.stream(e.getAttribute("points").split("[ ,]"))
                            .mapToDouble(Double::parseDouble)
                            .toArray();
                    for (int i = 0; i < xy.length; i += 2) {
                        xy[i] -= RIM;
                        xy[i + 1] = RIM + height - xy[i + 1];
                    }
                    return xy;
                })
                .toList();
    }

    private List<double[]> rectangles(String layer) {
        return polygons(layer).stream()
                .map(xy -> {
                    assertThat(xy).as("a rectangle").hasSize(8);
                    double[] x = extent(xy, 0);
                    double[] y = extent(xy, 1);
                    assertThat(area(xy)).isCloseTo((x[1] - x[0]) * (y[1] - y[0]), within(0.1));
                    return new double[] {x[0], y[0], x[1], y[1]};
                })
                .toList();
    }

    private List<double[]> circles(String layer) {
        return elements(layer, "circle").stream()
                .map(e -> new double[] {
                    Double.parseDouble(e.getAttribute("cx")) - RIM,
                    RIM + height - Double.parseDouble(e.getAttribute("cy")),
                    2 * Double.parseDouble(e.getAttribute("r"))
                })
                .toList();
    }

    private static void has(List<double[]> all, double... wanted) {
        assertThat(all).as(Arrays.toString(wanted)).anyMatch(one -> {
            boolean same = one.length == wanted.length;
            for (int i = 0; same && i < wanted.length; i++) {
                same = near(one[i], wanted[i]);
            }
            return same;
        });
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) <= EXACT + 1e-9;
    }

    private static double[] extent(double[] xy, int from) {
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (int i = from; i < xy.length; i += 2) {
            least = Math.min(least, xy[i]);
            most = Math.max(most, xy[i]);
        }
        return new double[] {least, most};
    }

    private static double area(double[] xy) {
        double twice = 0;
        for (int i = 0; i < xy.length; i += 2) {
            int k = (i + 2) % xy.length;
            twice += xy[i] * xy[k + 1] - xy[k] * xy[i + 1];
        }
        return Math.abs(twice) / 2;
    }
}
