package hushmaze.app.model;

/** Where among the entries something can be changed: its group, what it is folded into, and its field. */
public enum EntryPlace {
    PEOPLE("room", null, "room.people"),
    ABSORPTION("room", null, "room.absorptionArea"),
    DOOR("room", "leaks", "room.door.width"),
    OPENING_WIDTH("opening", null, "path.brief.opening.width"),
    OPENING_SURFACE("opening", null, "path.brief.opening.surface"),
    BEYOND("opening", null, "path.brief.opening.beyond"),
    PURPOSE("opening", null, "path.purpose"),
    FLOW("opening", null, "path.brief.flow"),
    PRESSURE_LIMIT("opening", null, "path.brief.maxPressureDrop"),
    PATH_VELOCITY_LIMIT("opening", null, "path.brief.maxPathVelocity"),
    MOUTH_VELOCITY_LIMIT("opening", null, "path.brief.maxOpeningVelocity"),
    DRIVE("opening", "drive", "path.brief.drive.kind"),
    FAN("opening", "drive", "path.brief.drive.fan"),
    FITTINGS("opening", "fittings", "fitting.add"),
    TARGET("noise", null, "room.target"),
    OWN_NOISE("noise", null, "room.ownNoise"),
    SPACE_WIDTH("space", null, "path.brief.space.width"),
    SPACE_HEIGHT("space", null, "path.brief.space.height"),
    SPACE_DEPTH("space", null, "path.brief.space.depth"),
    SHELL_LAYERS("materials", null, "path.brief.construction.shellLayers"),
    LINER("materials", null, "path.brief.construction.liner"),
    LINER_RESISTIVITY("materials", "liner", "path.brief.construction.liner.flowResistivity"),
    FACING("materials", null, "path.brief.construction.liner.facing"),
    LINED_BROAD_FACES("materials", null, "path.brief.construction.linedBroadFaces"),
    MASS_LIMIT("materials", null, "path.brief.construction.maxMass"),
    BOARD_SHEETS("materials", "sheets", "stock.boardSheets.0.stock"),
    PLAY("materials", "joinery", "path.brief.construction.joinery.fitClearance"),
    GASKET("materials", "joinery", "path.brief.construction.joinery.gasket"),
    DOORWAY("materials", "doorway", "path.brief.construction.doorway.width"),
    MOUNTING("materials", "mounting", "path.brief.construction.mounting"),
    FIXED_INTO("materials", "mounting", "path.brief.construction.mounting.into"),
    SCREWS("materials", "mounting", "path.brief.construction.mounting.screwsPerRow"),
    THREAD("materials", "mounting", "path.brief.construction.mounting.thread"),
    ROW_DISTANCE("materials", "mounting", "path.brief.construction.mounting.rowDistance"),
    CLEAT_LENGTH("materials", "mounting", "path.brief.construction.mounting.cleatLength"),
    PASSES("box", null, "path.box.passes"),
    CLEAR_WIDTH("box", null, "path.box.clearWidth"),
    CLEAR_LENGTH("box", null, "path.box.clearLength"),
    TURN_GAP("box", null, "path.box.turnGap"),
    LINED_WALLS("box", null, "path.box.linedFaces.walls"),
    OPENING_PORT("box", null, "path.box.openingPort.width"),
    OPENING_PORT_FACE("box", null, "path.box.openingPort.face"),
    ROOM_PORT("box", null, "path.box.roomPort.width"),
    ROOM_PORT_FACE("box", null, "path.box.roomPort.face"),
    SEAMS("box", null, "seam.add"),
    OUTGOING("extras", "outgoing", "path.brief.outgoing.limit.number"),
    OUTSIDE_LEVEL("extras", "envelope", "room.envelope.outsideLevel"),
    ENVELOPE("extras", "envelope", "room.envelope");

    private final String group;
    private final String fold;
    private final String field;

    EntryPlace(String group, String fold, String field) {
        this.group = group;
        this.fold = fold;
        this.field = field;
    }

    /** Key of its group. */
    public String group() {
        return group;
    }

    /** Key of what it is folded into; null if it is not. */
    public String fold() {
        return fold;
    }

    /** Id of its control. */
    public String id() {
        return field.replace('.', '-');
    }

    /** Its label, in words that say enough where the entries are not in sight. */
    public String words() {
        return Texts.find("place." + field)
                .or(() -> Texts.find("entry." + field))
                .orElseThrow(() -> new IllegalStateException("no words for " + field));
    }
}
