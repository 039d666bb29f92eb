package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * What one vent path is asked to do.
 *
 * @param opening the bare opening
 * @param flow air through the path, m³/s
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
 */
public record Brief(
        Opening opening,
        @Measured(Unit.LITRE_PER_SECOND) double flow,
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
        @MayBeAbsent SharedDuct sharedDuct) {
    public Brief {
        InvalidValue.present("opening", opening);
        InvalidValue.within("flow", flow, 1e-4, 5, Unit.LITRE_PER_SECOND);
        InvalidValue.within("maxPressureDrop", maxPressureDrop, 0.1, 2000, Unit.PASCAL);
        InvalidValue.within("maxPathVelocity", maxPathVelocity, 0.1, 20, Unit.METRE_PER_SECOND);
        InvalidValue.within("maxOpeningVelocity", maxOpeningVelocity, 0.1, 20, Unit.METRE_PER_SECOND);
        InvalidValue.present("noise", noise);
        if (noiseShare != null) {
            InvalidValue.within("noiseShare", noiseShare, 0.001, 1, Unit.NUMBER);
        }
        InvalidValue.present("space", space);
        InvalidValue.present("construction", construction);
    }

    /** A brief without the rarer wishes. */
    public Brief(
            Opening opening,
            double flow,
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
                null);
    }

    /** The same brief for another space. */
    public Brief withSpace(Space other) {
        return copy(flow, maxPressureDrop, maxPathVelocity, maxOpeningVelocity, other, construction);
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
        return copy(otherFlow, drop, pathVelocity, openingVelocity, space, construction);
    }

    /** The same brief for other materials and connections. */
    public Brief withConstruction(Construction other) {
        return copy(flow, maxPressureDrop, maxPathVelocity, maxOpeningVelocity, space, other);
    }

    private Brief copy(double air, double drop, double inPath, double atRoom, Space room, Construction made) {
        return new Brief(
                opening,
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
                sharedDuct);
    }

    /** Where the room end is, with the middle of a surface where nothing is said. */
    public MouthPosition roomMouthOrMiddle() {
        return roomMouth == null ? MouthPosition.MIDDLE_OF_SURFACE : roomMouth;
    }
}
