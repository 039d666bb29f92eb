package hushmaze.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Saw;
import hushmaze.material.Screw;
import hushmaze.material.Sheet;
import hushmaze.project.Stock;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Validation: costs of sheets worked by hand; 0.95 of a sheet at most is taken to become parts. */
class PricesTest {
    private static Sheet sheet(double length, double width, Double price, Integer stock) {
        return new Sheet("sheet", length, width, price, stock, "invented for a test");
    }

    private static Prices prices(Sheet liner, Sheet... boards) {
        return new Prices(new Stock(
                List.of(boards),
                List.of(liner),
                new Saw("saw", 0.003, 0, "invented for a test"),
                new Screw("screw", 0.004, 0.05, 0.003, "invented for a test")));
    }

    /** 2.1 m² of parts are 2.21 m² of sheets: one of 2 m² for 50 and one of 1 m² for 30, not three small ones or two large. */
    @Test
    void theCheapestWholeSheetsOfAnArea() {
        Prices prices = prices(sheet(1, 1, 8.0, null), sheet(2, 1, 50.0, null), sheet(1, 1, 30.0, null));
        assertThat(prices.inMoney()).isTrue();
        assertThat(prices.expected(2.1, 0)).isEqualTo(80);
        assertThat(prices.expected(0.95, 0)).isEqualTo(30);
        assertThat(prices.expected(0.96, 0)).isEqualTo(50);
        assertThat(prices.expected(0, 2.1)).isEqualTo(24);
    }

    @Test
    void withoutPricesAreasCount() {
        Prices prices = prices(sheet(1.2, 0.6, null, null), sheet(2, 1, 50.0, null));
        assertThat(prices.inMoney()).isFalse();
        assertThat(prices.expected(1, 0.5)).isCloseTo(2 + 0.72, within(1e-12));
    }

    /** Two offcuts of 0.5 m² hold 0.95 m² of parts and cost nothing; the rest must be bought. */
    @Test
    void whatIsOnHandIsFreeButEnds() {
        Prices prices = prices(sheet(1, 1, 8.0, null), sheet(2, 1, 50.0, null), sheet(1, 0.5, null, 2));
        assertThat(prices.inMoney()).isTrue();
        assertThat(prices.expected(0.95, 0)).isZero();
        assertThat(prices.expected(0.96, 0)).isEqualTo(50);
        Prices few = prices(sheet(1, 1, 8.0, null), sheet(1, 0.5, null, 2));
        assertThat(few.expected(0.96, 0)).isInfinite();
    }
}
