package hushmaze.build.split;

import hushmaze.quantity.Unit;
import hushmaze.solid.Role;

/**
 * What seams across the passes cannot mend.
 *
 * @param kind of it
 * @param role of the part it is about; null if it is about the whole box
 * @param value of the size or mass in the way, SI
 * @param limit it would have to keep, SI
 */
public record Obstacle(Kind kind, Role role, double value, double limit) {
    /** Kinds of obstacles. */
    public enum Kind {
        /** A board is too wide, across the passes or along the clear height, for every sheet. */
        BOARD,
        /** A piece of liner is. */
        LINER,
        /** The box is too wide or too high for the door, however short its parts. */
        DOOR,
        /** There are not enough places for seams, so pieces stay too long for the sheets. */
        PIECE_LENGTH,
        /** There are not enough places for seams, so parts stay too long for the door. */
        PART_LENGTH,
        /** There are not enough places for seams, so parts stay too heavy. */
        PART_MASS
    }

    /** Unit of the value and its limit. */
    public Unit unit() {
        return kind == Kind.PART_MASS ? Unit.KILOGRAM : Unit.MILLIMETRE;
    }

    /** Whether it keeps parts from being cut from sheets. */
    public boolean ofSheets() {
        return kind == Kind.BOARD || kind == Kind.LINER || kind == Kind.PIECE_LENGTH;
    }

    /** Whether it keeps the box from being carried to its place. */
    public boolean ofDoor() {
        return kind == Kind.DOOR || kind == Kind.PART_LENGTH;
    }
}
