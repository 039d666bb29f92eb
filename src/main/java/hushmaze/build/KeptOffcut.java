package hushmaze.build;

import hushmaze.material.Sheet;

/**
 * An offcut that the box of another path leaves, and that is cut up before a new sheet is begun.
 *
 * @param path name of the path whose box leaves it
 * @param sheet number of the sheet of its layout it comes from, counted from 1
 * @param material name of the board or liner
 * @param thickness m
 * @param length along the sheet's length, m
 * @param width along the sheet's width, m
 */
public record KeptOffcut(String path, int sheet, String material, double thickness, double length, double width) {
    /** Longest name of a sheet. */
    private static final int LONGEST = 80;

    /** Whether it is of a material. */
    boolean isOf(String name, double thick) {
        return material.equals(name) && thickness == thick;
    }

    /**
     * It as a sheet on hand, of which there is one.
     *
     * @param number tells offcuts of the same size apart
     */
    Sheet sheet(int number) {
        String name = "offcut " + number + ", of sheet " + sheet + " of " + path;
        String cut = name.substring(0, Math.min(name.length(), LONGEST));
        return new Sheet(cut, length, width, null, 1, material, "left by another box of the project");
    }
}
