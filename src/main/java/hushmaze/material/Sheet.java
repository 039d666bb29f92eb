package hushmaze.material;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * A size in which board or liner is sold, or an offcut on hand.
 *
 * @param name as bought
 * @param length along the sheet's long side, and along the grain if it has one, m
 * @param width m
 * @param price of one sheet in the user's currency; may be absent
 * @param stock how many there are; absent for as many as needed
 * @param material name of the one board or liner it is of; absent for any
 * @param source where the numbers are from
 */
public record Sheet(
        String name,
        @Measured(Unit.MILLIMETRE) double length,
        @Measured(Unit.MILLIMETRE) double width,
        @MayBeAbsent Double price,
        @MayBeAbsent Integer stock,
        @MayBeAbsent String material,
        String source) {
    public Sheet {
        InvalidValue.text("name", name, 80);
        InvalidValue.within("length", length, 0.05, 10, Unit.MILLIMETRE);
        InvalidValue.within("width", width, 0.05, 10, Unit.MILLIMETRE);
        if (price != null) {
            InvalidValue.within("price", price, 0, 1e6, Unit.NUMBER);
        }
        if (stock != null) {
            InvalidValue.within("stock", stock, 0, 100_000);
        }
        if (material != null) {
            InvalidValue.text("material", material, 80);
        }
        InvalidValue.text("source", source, 400);
    }

    /** A sheet that every board, or every liner, may be had in. */
    public Sheet(String name, double length, double width, Double price, Integer stock, String source) {
        this(name, length, width, price, stock, null, source);
    }

    /** Whether a board or liner can be had in it. */
    public boolean isOf(String other) {
        return material == null || material.equals(other);
    }

    /** Whether it is on hand and costs nothing: there are so many, and no price or none to pay. */
    public boolean isOnHand() {
        return stock != null && (price == null || price == 0);
    }

    /** The same, of another board or liner. */
    public Sheet of(String other) {
        return new Sheet(name, length, width, price, stock, other, source);
    }

    /** The same sheet, of which there are so many. */
    public Sheet having(Integer count) {
        return new Sheet(name, length, width, price, count, material, source);
    }
}
