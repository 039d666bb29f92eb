package hushmaze.drawing;

import java.util.List;

/**
 * What a place of a drawing tells somebody who points at it.
 *
 * @param head what the place is
 * @param items the figures there
 */
public record Told(String head, List<Item> items) {
    /**
     * A figure.
     *
     * @param name as in the legend
     * @param value with its unit
     * @param source where it comes from
     */
    public record Item(String name, String value, String source) {}

    public Told {
        items = List.copyOf(items);
    }

    /** All of it in one text, a figure a line. */
    public String text() {
        StringBuilder all = new StringBuilder(head);
        for (Item item : items) {
            all.append('\n')
                    .append(item.name())
                    .append(": ")
                    .append(item.value())
                    .append(" (")
                    .append(item.source())
                    .append(')');
        }
        return all.toString();
    }
}
