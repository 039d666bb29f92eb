package hushmaze.drawing.draft;

import java.util.List;

/** Something that fills a column from top to bottom: a heading, a paragraph, a table, a chart. Made by {@link Blocks}. */
public interface Block {
    /** Its strips for a column of the given width, mm. */
    List<Row> rows(double width);

    /**
     * Its strips where pages are to be saved.
     *
     * @param air share of the usual room inside its strips, 1 for all of it
     */
    default List<Row> rows(double width, double air) {
        return rows(width);
    }
}
