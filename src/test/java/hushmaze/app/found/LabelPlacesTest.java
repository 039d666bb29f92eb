package hushmaze.app.found;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.drawing.Bounds;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Property tests of the words beside dots, over seeded random dots: never over a dot or other words, never outside. */
class LabelPlacesTest {
    private static final double ROW = 4;
    private static final double DOT = 1.6;
    private static final Bounds ROOM = new Bounds(0, 5, 128, 36);

    private static void check(List<double[]> dots, String what) {
        LabelPlaces places = new LabelPlaces(ROOM, ROW);
        List<Bounds> kept = new ArrayList<>();
        for (double[] dot : dots) {
            Bounds around = new Bounds(dot[0] - DOT, dot[1] - DOT, dot[0] + DOT, dot[1] + DOT);
            places.keepFree(around);
            kept.add(around);
        }
        for (double[] dot : dots) {
            Bounds place = places.place(dot[0], dot[1], dot[2]);
            assertThat(kept).as(what).noneMatch(place::overlaps);
            assertThat(place.x0()).as(what).isGreaterThanOrEqualTo(ROOM.x0());
            assertThat(place.x1()).as(what).isLessThanOrEqualTo(ROOM.x1());
            assertThat(place.y0()).as(what).isGreaterThanOrEqualTo(ROOM.y0());
            assertThat(place.y1()).as(what).isLessThanOrEqualTo(ROOM.y1());
            kept.add(place);
        }
    }

    @Test
    void sixDotsAnywhereHaveTheirWords() {
        Random random = new Random(11);
        for (int run = 0; run < 2000; run++) {
            List<double[]> dots = new ArrayList<>();
            for (int i = 0; i < 1 + run % 6; i++) {
                dots.add(new double[] {
                    3 + 122 * random.nextDouble(), 9 + 23 * random.nextDouble(), 25 + 30 * random.nextDouble()
                });
            }
            check(dots, "run " + run);
        }
    }

    @Test
    void dotsInOnePlaceHaveTheirWordsToo() {
        for (double x : new double[] {3, 64, 125}) {
            for (double y : new double[] {9, 20, 32}) {
                List<double[]> dots = new ArrayList<>();
                for (int i = 0; i < 6; i++) {
                    dots.add(new double[] {x + 0.2 * i, y, 50});
                }
                check(dots, "at " + x + ", " + y);
            }
        }
    }

    @Test
    void longWordsGoAboveOrBelow() {
        check(List.of(new double[] {64, 20, 110}, new double[] {70, 22, 40}), "long");
    }

    @Test
    void whereTheRightIsFreeWordsAreThere() {
        LabelPlaces places = new LabelPlaces(ROOM, ROW);
        places.keepFree(new Bounds(30 - DOT, 20 - DOT, 30 + DOT, 20 + DOT));
        assertThat(places.place(30, 20, 40)).isEqualTo(new Bounds(30 + LabelPlaces.GAP, 18, 70 + LabelPlaces.GAP, 22));
        LabelPlaces others = new LabelPlaces(ROOM, ROW);
        others.keepFree(new Bounds(110 - DOT, 20 - DOT, 110 + DOT, 20 + DOT));
        assertThat(others.place(110, 20, 40).x1()).isEqualTo(110 - LabelPlaces.GAP);
    }
}
