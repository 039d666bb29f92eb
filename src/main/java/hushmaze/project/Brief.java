package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * What one vent path is asked to do.
 *
 * @param opening the bare opening
 * @param flow air through the path, m³/s; absent for what the room needs
 * @param maxPressureDrop most the path may cost at that flow, Pa
 * @param maxPathVelocity fastest air inside the box, m/s
 * @param maxOpeningVelocity fastest air at the room end, m/s
 * @param noise through the bare opening
 * @param noiseShare share of the allowed noise energy this path may use, 0 to 1; absent for an equal share
 * @param space room there is for the box
 * @param construction materials and connections wished for
 * @param roomMouth where in the room's surfaces the room end is; absent for the middle of a surface
 * @param fan in the path; absent when there is none, or when its sound is part of the noise
 * @param outgoing who hears the quiet room through this path; absent when that does not matter
 * @param sharedDuct the other room on the same duct; absent when there is none
 * @param drive what moves the air; absent for a given flow from ductwork or a fan, and nothing elsewhere
 * @param fittings at the ends of the box; empty for none
 * @param choices what a search for the box may choose among; absent for everything that is not a material
 */
public record Brief(
        Opening opening,
        @MayBeAbsent @Measured(Unit.LITRE_PER_SECOND) Double flow,
        @Measured(Unit.PASCAL) double maxPressureDrop,
        @Measured(Unit.METRE_PER_SECOND) double maxPathVelocity,
        @Measured(Unit.METRE_PER_SECOND) double maxOpeningVelocity,
        Noise noise,
        @MayBeAbsent Double noiseShare,
        Space space,
        Construction construction,
        @MayBeAbsent MouthPosition roomMouth,
        @MayBeAbsent FanSound fan,
        @MayBeAbsent Outgoing outgoing,
        @MayBeAbsent SharedDuct sharedDuct,
        @MayBeAbsent Drive drive,
        @MayBeAbsent List<Fitting> fittings,
        @MayBeAbsent Choices choices) {
    /** Most fittings of a path. */
    public static final int MAX_FITTINGS = 8;

    public Brief {
        InvalidValue.present("opening", opening);
        if (flow != null) {
            InvalidValue.within("flow", flow, 1e-4, 5, Unit.LITRE_PER_SECOND);
        }
        InvalidValue.within("maxPressureDrop", maxPressureDrop, 0.1, 2000, Unit.PASCAL);
        InvalidValue.within("maxPathVelocity", maxPathVelocity, 0.1, 20, Unit.METRE_PER_SECOND);
        InvalidValue.within("maxOpeningVelocity", maxOpeningVelocity, 0.1, 20, Unit.METRE_PER_SECOND);
        InvalidValue.present("noise", noise);
        if (noiseShare != null) {
            InvalidValue.within("noiseShare", noiseShare, 0.001, 1, Unit.NUMBER);
        }
        InvalidValue.present("space", space);
        InvalidValue.present("construction", construction);
        fittings = fittings == null ? List.of() : List.copyOf(fittings);
        if (fittings.size() > MAX_FITTINGS) {
            throw new InvalidValue(
                    "fittings", fittings.size() + " fittings", "at most " + MAX_FITTINGS + " fittings", "");
        }
        for (Fitting.End end : Fitting.End.values()) {
            long connecting = fittings.stream()
                    .filter(f -> f.end() == end && f.kind().connects())
                    .count();
            if (connecting > 1) {
                throw new InvalidValue(
                        "fittings",
                        connecting + " flexible ducts and collars at " + end,
                        "at most one flexible duct or collar at each end",
                        "");
            }
        }
    }

    /** A brief without the rarer wishes. */
    public Brief(
            Opening opening,
            Double flow,
            double maxPressureDrop,
            double maxPathVelocity,
            double maxOpeningVelocity,
            Noise noise,
            Double noiseShare,
            Space space,
            Construction construction) {
        this(
                opening,
                flow,
                maxPressureDrop,
                maxPathVelocity,
                maxOpeningVelocity,
                noise,
                noiseShare,
                space,
                construction,
                null,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    /** The same brief for another space. */
    public Brief withSpace(Space other) {
        return copy(opening, flow, maxPressureDrop, maxPathVelocity, maxOpeningVelocity, other, construction, drive);
    }

    /**
     * The same brief for other air.
     *
     * @param otherFlow m³/s
     * @param drop most the path may cost, Pa
     * @param pathVelocity fastest air inside the box, m/s
     * @param openingVelocity fastest air at the room end, m/s
     */
    public Brief withAir(double otherFlow, double drop, double pathVelocity, double openingVelocity) {
        return copy(opening, otherFlow, drop, pathVelocity, openingVelocity, space, construction, drive);
    }

    /**
     * The same brief with other limits.
     *
     * @param pathVelocity fastest air inside the box, m/s
     * @param openingVelocity fastest air at the room end, m/s
     */
    public Brief withVelocities(double pathVelocity, double openingVelocity) {
        return copy(opening, flow, maxPressureDrop, pathVelocity, openingVelocity, space, construction, drive);
    }

    /** Whether the box hangs on cleats, which hold it off its surface; else it lies there on the gasket around its port. */
    public boolean onCleats() {
        Mounting mounting = construction.mounting();
        boolean hangs = opening.surface() != Opening.Surface.FLOOR;
        return hangs && mounting != null && mounting.intoOrStuds() == Mounting.Into.STUDS;
    }

    /**
     * How far the box is off its surface, m.
     *
     * @param gasket thickness of a gasket once it is pressed, m
     */
    public double standOff(double gasket) {
        return onCleats() ? construction.mounting().cleat() : gasket;
    }

    /** The same brief for other materials and connections. */
    public Brief withConstruction(Construction other) {
        return copy(opening, flow, maxPressureDrop, maxPathVelocity, maxOpeningVelocity, space, other, drive);
    }

    /** The same brief without the rarer wishes, drive and fittings. */
    public Brief plain() {
        return new Brief(
                opening, flow, maxPressureDrop, maxPathVelocity, maxOpeningVelocity, noise, null, space, construction);
    }

    /** The same brief over another opening, with another flow (m³/s, or null) and drive (or null). */
    public Brief withAirFrom(Opening otherOpening, Double otherFlow, Drive otherDrive) {
        return copy(
                otherOpening,
                otherFlow,
                maxPressureDrop,
                maxPathVelocity,
                maxOpeningVelocity,
                space,
                construction,
                otherDrive);
    }

    /** The same brief with other choices for a search; null for everything free. */
    public Brief choosing(Choices others) {
        return with(noiseShare, others);
    }

    /** The same brief with another share of the target; null for an equal one. */
    public Brief withNoiseShare(Double share) {
        return with(share, choices);
    }

    private Brief with(Double share, Choices others) {
        return new Brief(
                opening,
                flow,
                maxPressureDrop,
                maxPathVelocity,
                maxOpeningVelocity,
                noise,
                share,
                space,
                construction,
                roomMouth,
                fan,
                outgoing,
                sharedDuct,
                drive,
                fittings,
                others);
    }

    private Brief copy(
            Opening over,
            Double air,
            double drop,
            double inPath,
            double atRoom,
            Space room,
            Construction made,
            Drive by) {
        return new Brief(
                over,
                air,
                drop,
                inPath,
                atRoom,
                noise,
                noiseShare,
                room,
                made,
                roomMouth,
                fan,
                outgoing,
                sharedDuct,
                by,
                fittings,
                choices);
    }

    /** The same brief for another flow, m³/s. */
    public Brief withFlow(double other) {
        return withAir(other, maxPressureDrop, maxPathVelocity, maxOpeningVelocity);
    }

    /** What moves the air, with the usual where nothing is said: ductwork and a fan bring the flow, elsewhere nothing does. */
    public Drive.Kind driveOrUsual() {
        if (drive != null) {
            return drive.kind();
        }
        boolean driven = fan != null || opening.beyond() == Opening.Beyond.DUCTWORK;
        return driven ? Drive.Kind.GIVEN_FLOW : Drive.Kind.NOTHING;
    }

    /** What a search may choose among, with everything free where nothing is said. */
    public Choices choicesOrFree() {
        return choices == null ? Choices.FREE : choices;
    }

    /** Where the room end is, with the middle of a surface where nothing is said. */
    public MouthPosition roomMouthOrMiddle() {
        return roomMouth == null ? MouthPosition.MIDDLE_OF_SURFACE : roomMouth;
    }
}
