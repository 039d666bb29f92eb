package hushmaze.app.sheet;

import java.util.Collection;
import java.util.Optional;

/**
 * How a page gets onto paper: at true size where there is paper of its size, else shrunk, never enlarged.
 *
 * @param sheet the paper it goes on
 * @param across whether the paper lies across
 * @param scale 1 for true size
 */
record PrintPlan(Sheet sheet, boolean across, double scale) {
    /** By how much paper may differ from the page and still be of its size, mm. */
    private static final double SAME_MM = 1.5;

    /**
     * Paper as the printer names it, upright.
     *
     * @param name for people
     * @param width mm
     * @param height mm
     */
    record Sheet(String name, double width, double height) {}

    /**
     * The plan for a page.
     *
     * @param width of the page, mm
     * @param height of the page, mm
     * @param chosen paper that is taken where no other fits
     * @param others paper the printer has
     * @param margin of the chosen paper that cannot be printed on, on every side, mm
     */
    static PrintPlan of(double width, double height, Sheet chosen, Collection<Sheet> others, double margin) {
        boolean across = width > height;
        double shorter = Math.min(width, height);
        double longer = Math.max(width, height);
        if (isSame(chosen, shorter, longer)) {
            return new PrintPlan(chosen, across, 1);
        }
        Optional<Sheet> fitting =
                others.stream().filter(s -> isSame(s, shorter, longer)).findFirst();
        if (fitting.isPresent()) {
            return new PrintPlan(fitting.get(), across, 1);
        }
        double scale = Math.min(
                (Math.min(chosen.width(), chosen.height()) - 2 * margin) / shorter,
                (Math.max(chosen.width(), chosen.height()) - 2 * margin) / longer);
        return new PrintPlan(chosen, across, Math.min(1, scale));
    }

    private static boolean isSame(Sheet sheet, double shorter, double longer) {
        return Math.abs(Math.min(sheet.width(), sheet.height()) - shorter) <= SAME_MM
                && Math.abs(Math.max(sheet.width(), sheet.height()) - longer) <= SAME_MM;
    }

    /** Whether what is printed may be measured on. */
    boolean trueSize() {
        return scale == 1;
    }
}
