package hushmaze.size;

/** How well a candidate is known, each better and dearer than the one before. */
enum Level {
    /** Sound by the handbook estimate, cost by area. */
    ESTIMATE,
    /** Sound with the quick wave, seams and sheets laid out. */
    QUICK,
    /** Sound with the quick wave for the softest and stiffest liner, and another model of it. */
    LINERS,
    /** Assessed as documents are, with the wave solution. */
    ASSESSED;

    Level next() {
        return values()[ordinal() + 1];
    }
}
