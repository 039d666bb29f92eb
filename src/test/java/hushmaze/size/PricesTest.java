package hushmaze.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.TestRooms;
import hushmaze.build.KeptOffcut;
import hushmaze.build.Supply;
import hushmaze.material.Saw;
import hushmaze.material.Screw;
import hushmaze.material.Sheet;
import hushmaze.project.Construction;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Space;
import hushmaze.project.Stock;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Validation: costs of sheets worked by hand; 0.95 of a sheet at most is taken to become parts. */
class PricesTest {
    private static Sheet sheet(double length, double width, Double price, Integer stock) {
        return new Sheet("sheet", length, width, price, stock, "invented for a test");
    }

    private static final Construction USUAL = TestRooms.brief(40, null, new Space(1, 1, 1), Opening.Beyond.INDOORS)
            .construction();
    private static final Build BUILD = new Build(USUAL.board(), 1, 1, USUAL.liner(), LinedFaces.ALL);

    private static Prices prices(Sheet liner, Sheet... boards) {
        return new Prices(Supply.of(stock(liner, boards)));
    }

    private static Stock stock(Sheet liner, Sheet... boards) {
        return new Stock(
                List.of(boards),
                List.of(liner),
                new Saw("saw", 0.003, 0, "invented for a test"),
                new Screw("screw", 0.004, 0.05, 0.003, "invented for a test"));
    }

    /** 2.1 m² of parts are 2.21 m² of sheets: one of 2 m² for 50 and one of 1 m² for 30, not three small ones or two large. */
    @Test
    void theCheapestWholeSheetsOfAnArea() {
        Prices prices = prices(sheet(1, 1, 8.0, null), sheet(2, 1, 50.0, null), sheet(1, 1, 30.0, null));
        assertThat(prices.inMoney()).isTrue();
        assertThat(prices.expected(BUILD, 2.1, 0)).isEqualTo(80);
        assertThat(prices.expected(BUILD, 0.95, 0)).isEqualTo(30);
        assertThat(prices.expected(BUILD, 0.96, 0)).isEqualTo(50);
        assertThat(prices.expected(BUILD, 0, 2.1)).isEqualTo(24);
    }

    @Test
    void withoutPricesAreasCount() {
        Prices prices = prices(sheet(1.2, 0.6, null, null), sheet(2, 1, 50.0, null));
        assertThat(prices.inMoney()).isFalse();
        assertThat(prices.expected(BUILD, 1, 0.5)).isCloseTo(2 + 0.72, within(1e-12));
    }

    /** Two offcuts of 0.5 m² hold 0.95 m² of parts and cost nothing; the rest must be bought. */
    @Test
    void whatIsOnHandIsFreeButEnds() {
        Prices prices = prices(sheet(1, 1, 8.0, null), sheet(2, 1, 50.0, null), sheet(1, 0.5, null, 2));
        assertThat(prices.inMoney()).isTrue();
        assertThat(prices.expected(BUILD, 0.95, 0)).isZero();
        assertThat(prices.expected(BUILD, 0.96, 0)).isEqualTo(50);
        Prices few = prices(sheet(1, 1, 8.0, null), sheet(1, 0.5, null, 2));
        assertThat(few.expected(BUILD, 0.96, 0)).isInfinite();
    }

    /** An offcut of 1 m² that another box leaves spares half a sheet's price, but only boxes of the same board. */
    @Test
    void whatAnotherBoxLeavesIsFree() {
        Stock stock = stock(sheet(1, 1, 8.0, null), sheet(1, 1, 30.0, null));
        KeptOffcut offcut =
                new KeptOffcut("first", 1, USUAL.board().name(), USUAL.board().thickness(), 2, 0.5);
        Prices prices = new Prices(new Supply(stock, Map.of(), List.of(offcut)));
        assertThat(prices.expected(BUILD, 0.95, 0)).isZero();
        assertThat(prices.expected(BUILD, 1.9, 0)).isEqualTo(30);
        KeptOffcut thin = new KeptOffcut("first", 1, USUAL.board().name(), 0.006, 2, 0.5);
        Prices others = new Prices(new Supply(stock, Map.of(), List.of(thin)));
        assertThat(others.expected(BUILD, 0.95, 0)).isEqualTo(30);
    }
}
