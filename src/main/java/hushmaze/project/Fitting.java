package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * A grille, louvre, filter, flexible duct or round collar at one end of a box.
 *
 * @param kind of fitting
 * @param end of the path it is at
 * @param width of the whole face, m; for a grille and a louvre
 * @param height of the whole face, m; for a grille and a louvre
 * @param freeArea free over whole area of the face, 0 to 1; for a grille
 * @param diameter inner, m; for a flexible duct and a collar
 * @param length as laid, m; for a flexible duct
 * @param compression share by which the duct is shorter than pulled straight, 0 to 0.3; for a flexible duct
 * @param projection how far the collar stands into the box, m; for a flexible duct and a collar; absent for flush
 * @param pressure known loss, Pa; for a filter and a known loss
 * @param flow at which that is the loss, m³/s; for a filter and a known loss
 * @param source data sheet, measured or assumed: where the figures are from
 */
public record Fitting(
        Kind kind,
        End end,
        @MayBeAbsent @Measured(Unit.MILLIMETRE) Double width,
        @MayBeAbsent @Measured(Unit.MILLIMETRE) Double height,
        @MayBeAbsent Double freeArea,
        @MayBeAbsent @Measured(Unit.MILLIMETRE) Double diameter,
        @MayBeAbsent @Measured(Unit.METRE) Double length,
        @MayBeAbsent Double compression,
        @MayBeAbsent @Measured(Unit.MILLIMETRE) Double projection,
        @MayBeAbsent @Measured(Unit.PASCAL) Double pressure,
        @MayBeAbsent @Measured(Unit.LITRE_PER_SECOND) Double flow,
        String source) {
    /** Kinds of fitting. */
    public enum Kind {
        /** A flat grille or perforated plate. */
        GRILLE,
        /** A louvre against rain with a mesh behind it. */
        WEATHER_LOUVRE,
        /** A filter whose loss at one flow is known. */
        FILTER,
        /** Anything else whose loss at one flow is known. */
        KNOWN_LOSS,
        /** A round flexible duct between the box and the opening. */
        FLEXIBLE_DUCT,
        /** A collar for a round duct that goes on. */
        ROUND_COLLAR;

        /** Whether it stands between the box and what it is set over, so that there can be only one at an end. */
        public boolean connects() {
            return this == FLEXIBLE_DUCT || this == ROUND_COLLAR;
        }
    }

    /** Ends of a path. */
    public enum End {
        AT_OPENING,
        IN_ROOM
    }

    public Fitting {
        InvalidValue.present("kind", kind);
        InvalidValue.present("end", end);
        switch (kind) {
            case GRILLE -> {
                InvalidValue.present("width", width);
                InvalidValue.present("height", height);
                InvalidValue.present("freeArea", freeArea);
            }
            case WEATHER_LOUVRE -> {
                InvalidValue.present("width", width);
                InvalidValue.present("height", height);
            }
            case FILTER, KNOWN_LOSS -> {
                InvalidValue.present("pressure", pressure);
                InvalidValue.present("flow", flow);
            }
            case FLEXIBLE_DUCT -> {
                InvalidValue.present("diameter", diameter);
                InvalidValue.present("length", length);
                InvalidValue.present("compression", compression);
            }
            case ROUND_COLLAR -> InvalidValue.present("diameter", diameter);
        }
        // What another kind needs may stay beside the chosen one, but must be a value all the same.
        within("width", width, 0.03, 3, Unit.MILLIMETRE);
        within("height", height, 0.03, 3, Unit.MILLIMETRE);
        within("freeArea", freeArea, 0.05, 1, Unit.NUMBER);
        within("diameter", diameter, 0.05, 0.6, Unit.MILLIMETRE);
        within("length", length, 0.01, 30, Unit.METRE);
        within("compression", compression, 0, 0.3, Unit.NUMBER);
        within("projection", projection, 0, 0.3, Unit.MILLIMETRE);
        within("pressure", pressure, 0, 1000, Unit.PASCAL);
        within("flow", flow, 1e-4, 5, Unit.LITRE_PER_SECOND);
        InvalidValue.text("source", source, 400);
    }

    private static void within(String field, Double value, double least, double most, Unit unit) {
        if (value != null) {
            InvalidValue.within(field, value, least, most, unit);
        }
    }
}
