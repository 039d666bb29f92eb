package hushmaze.size;

import hushmaze.project.Box;
import hushmaze.project.PortFace;

/**
 * The choices that make a box, before it is one: two patterns are the same box exactly if they are equal.
 *
 * @param form maze or chamber
 * @param passes side by side
 * @param turned whether the box lies a quarter turn round in its space
 * @param openingFace over the opening
 * @param roomFace with the port in the room
 * @param build what it is made of
 * @param width clear, m
 * @param height clear, m
 * @param length clear, m
 * @param gap of the turns, m; 0 with one pass
 * @param mouth area of the room port over the least that keeps the limit on its velocity
 */
record Pattern(
        Box.Form form,
        int passes,
        boolean turned,
        PortFace openingFace,
        PortFace roomFace,
        Build build,
        double width,
        double height,
        double length,
        double gap,
        double mouth) {
    /** Whether another is of the same form and number of passes. */
    boolean isOfFormOf(Pattern other) {
        return form == other.form && passes == other.passes;
    }

    /** Whether another is made and lined alike, with its ports in the same faces. */
    boolean isMadeAs(Pattern other) {
        return build.equals(other.build) && openingFace == other.openingFace && roomFace == other.roomFace;
    }

    /** Whether no part is smaller than the same part of another box, which differs in sizes only. */
    boolean hasPartsOf(Pattern other) {
        return width >= other.width
                && height >= other.height
                && length >= other.length
                && length - gap >= other.length - other.gap;
    }

    /** A straight maze without sizes yet, its room port as small as may be. */
    static Pattern straight(boolean turned, PortFace openingFace, PortFace roomFace, Build build) {
        return new Pattern(Box.Form.MAZE, 1, turned, openingFace, roomFace, build, 0, 0, 0, 0, 1);
    }

    Pattern ofForm(Box.Form other) {
        return new Pattern(other, passes, turned, openingFace, roomFace, build, width, height, length, gap, mouth);
    }

    Pattern ofLength(double other) {
        return new Pattern(form, passes, turned, openingFace, roomFace, build, width, height, other, gap, mouth);
    }

    Pattern ofHeight(double other) {
        return new Pattern(form, passes, turned, openingFace, roomFace, build, width, other, length, gap, mouth);
    }

    /** With another width and the gap that goes with it. */
    Pattern ofWidth(double other, double otherGap) {
        return new Pattern(form, passes, turned, openingFace, roomFace, build, other, height, length, otherGap, mouth);
    }

    Pattern ofPasses(int others, double otherWidth, double otherGap) {
        return new Pattern(
                form, others, turned, openingFace, roomFace, build, otherWidth, height, length, otherGap, mouth);
    }

    Pattern ofBuild(Build other) {
        return new Pattern(form, passes, turned, openingFace, roomFace, other, width, height, length, gap, mouth);
    }

    Pattern ofMouth(double other) {
        return new Pattern(form, passes, turned, openingFace, roomFace, build, width, height, length, gap, other);
    }

    /** What boxes have in common that the methods disagree about alike. */
    Kin kin() {
        return new Kin(form, passes, openingFace, roomFace, build);
    }

    /** Boxes that differ in sizes only. */
    record Kin(Box.Form form, int passes, PortFace openingFace, PortFace roomFace, Build build) {}
}
