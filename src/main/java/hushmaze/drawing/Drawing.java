package hushmaze.drawing;

import java.time.LocalDate;
import java.util.List;

/**
 * A set of pages.
 *
 * @param title of the set
 * @param author who made it
 * @param date of issue
 * @param pages at least one
 */
public record Drawing(String title, String author, LocalDate date, List<Page> pages) {
    public Drawing {
        pages = List.copyOf(pages);
        if (pages.isEmpty()) {
            throw new IllegalArgumentException("a drawing without pages: " + title);
        }
    }
}
