package hushmaze.project;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * What the box shall be made of and how it shall be connected.
 *
 * @param board for shell and baffles
 * @param shellLayers layers of board in every wall, 1 to 3
 * @param baffleLayers layers of board in every baffle, 1 or 2
 * @param liner lining of the path
 * @param linedBroadFaces whether the broad faces are lined too
 * @param openingFace face of the box that lies over the opening
 * @param roomFace face of the box with the port in the room
 * @param maxMass heaviest box, or part of a box that comes apart, that can be handled, kg; absent for no limit
 * @param mounting how it is fixed; absent when nothing is said, or when it stands
 * @param joinery how the boards are joined; absent for plain butt joints
 * @param doorway narrowest place it must be carried through; absent for no limit
 */
public record Construction(
        Board board,
        int shellLayers,
        int baffleLayers,
        Liner liner,
        boolean linedBroadFaces,
        PortFace openingFace,
        PortFace roomFace,
        @MayBeAbsent @Measured(Unit.KILOGRAM) Double maxMass,
        @MayBeAbsent Mounting mounting,
        @MayBeAbsent Joinery joinery,
        @MayBeAbsent Doorway doorway) {
    public Construction {
        InvalidValue.present("board", board);
        InvalidValue.within("shellLayers", shellLayers, 1, 3);
        InvalidValue.within("baffleLayers", baffleLayers, 1, 2);
        InvalidValue.present("liner", liner);
        InvalidValue.present("openingFace", openingFace);
        InvalidValue.present("roomFace", roomFace);
        if (maxMass != null) {
            InvalidValue.within("maxMass", maxMass, 1, 2000, Unit.KILOGRAM);
        }
    }

    /** A construction of whose mounting, joints and carrying nothing is said. */
    public Construction(
            Board board,
            int shellLayers,
            int baffleLayers,
            Liner liner,
            boolean linedBroadFaces,
            PortFace openingFace,
            PortFace roomFace,
            Double maxMass) {
        this(
                board,
                shellLayers,
                baffleLayers,
                liner,
                linedBroadFaces,
                openingFace,
                roomFace,
                maxMass,
                null,
                null,
                null);
    }

    /** How the boards are joined; plain when nothing is said. */
    public Joinery joineryOrPlain() {
        return joinery == null ? Joinery.PLAIN : joinery;
    }

    /** The same with other limits for carrying. */
    public Construction carried(Double otherMass, Doorway otherDoorway) {
        return with(otherMass, mounting, otherDoorway, joinery);
    }

    /** The same joined in another way. */
    public Construction joined(Joinery other) {
        return with(maxMass, mounting, doorway, other);
    }

    /** The same fixed in another way. */
    public Construction mounted(Mounting other) {
        return with(maxMass, other, doorway, joinery);
    }

    /** The same lined with another liner. */
    public Construction lined(Liner other) {
        return new Construction(
                board,
                shellLayers,
                baffleLayers,
                other,
                linedBroadFaces,
                openingFace,
                roomFace,
                maxMass,
                mounting,
                joinery,
                doorway);
    }

    private Construction with(Double otherMass, Mounting otherMounting, Doorway otherDoorway, Joinery otherJoinery) {
        return new Construction(
                board,
                shellLayers,
                baffleLayers,
                liner,
                linedBroadFaces,
                openingFace,
                roomFace,
                otherMass,
                otherMounting,
                otherJoinery,
                otherDoorway);
    }
}
