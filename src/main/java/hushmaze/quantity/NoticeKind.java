package hushmaze.quantity;

/** What notices can be about. Each kind has its sentence in the resource bundle of the wording. */
public enum NoticeKind {
    /** A calculation was not made, so its figure is missing. */
    METHOD_NOT_RUN,
    /** The liner's thickness is outside what the lining formula was fitted to. */
    LINER_OUTSIDE_RANGE,
    /** A lined run is shorter than what the lining formula was fitted to. */
    RUN_SHORTER_THAN_RANGE,
    /** A lined run is longer than what the lining formula was fitted to. */
    RUN_LONGER_THAN_RANGE,
    /** Clear area over lined perimeter is outside the printed table of lined ducts. */
    LINED_SECTION_OUTSIDE_RANGE,
    /** A term was held at its cap. */
    TERM_CAPPED,
    /** A straight run was held to what the lining can take from a beam down its middle. */
    BEAM_CAPPED,
    /** One can see straight through the box: high sound passes as a beam. */
    LINE_OF_SIGHT,
    /** The flow resistivity's frequency range for the liner's model does not reach down to the lowest bands. */
    LINER_MODEL_BELOW_RANGE,
    /** The flow resistivity's frequency range for the liner's model does not reach up to the highest bands. */
    LINER_MODEL_ABOVE_RANGE,
    /** The liner at a turn is too thin for the column of lined turns. */
    TURN_LINER_THIN,
    /** The liner does not go on far enough beyond a turn for the column of lined turns. */
    TURN_LINING_SHORT,
    /** The highest bands of a turn are beyond the last limit of its table. */
    TURN_ABOVE_TABLE,
    /** Two turns are so close, or so bare between them, that their losses do not add up. */
    TURNS_INTERFERE,
    /** A change of area counts below its first cut-on only. */
    STEP_BELOW_CUT_ON_ONLY,
    /** The duct behind a mouth is too short to be the long straight one of its formula. */
    MOUTH_WITHOUT_STRAIGHT_DUCT,
    /** A chamber's volume is outside what its method was tested on. */
    CHAMBER_OUTSIDE_RANGE,
    /** A chamber has little liner for its ports. */
    CHAMBER_LINING_SMALL,
    /** A chamber is small to the wavelength where the formula of a diffuse field begins. */
    CHAMBER_SMALL_TO_WAVELENGTH,
    /** Between two cut-ons neither of a chamber's formulas holds. */
    CHAMBER_REGIONS_JOINED,
    /** A chamber's ports are not in its two ends. */
    CHAMBER_PORTS_NOT_OPPOSITE,
    /** The path has no liner. */
    NO_LINER,
    /** A turn's gap is narrower than the pass. */
    TURN_GAP_NARROW,
    /** A turn's gap ratio is outside the table. */
    TURN_OUTSIDE_RANGE,
    /** Two turns follow each other closer than the table of turns in series. */
    TURNS_CLOSE,
    /** The Reynolds number is below the range of the turn's published correction. */
    REYNOLDS_BELOW_RANGE,
    /** The widths before and after a sharp turn are outside its table. */
    TURN_WIDTHS_OUTSIDE_RANGE,
    /** No grille, filter or flexible duct was named, so none is in the sum. */
    FITTINGS_NOT_COUNTED,
    /** Air in a pass, turn or opening is faster than the limit. */
    VELOCITY_ABOVE_LIMIT,
    /** The path costs more pressure than the brief allows. */
    PRESSURE_ABOVE_LIMIT,
    /** The path costs more pressure than its fan gives, or than there is, at the flow asked for. */
    PRESSURE_ABOVE_DRIVE,
    /** The brief allows faster air at the mouth in the room than is published for so quiet a room. */
    VELOCITY_LIMIT_LOOSE,
    /** The brief allows faster air in the path than is published for the last run of a duct to so quiet a room. */
    PATH_VELOCITY_LIMIT_LOOSE,
    /** A louvre is so small that its air may carry rain in. */
    LOUVRE_FAST,
    /** A known loss is known at a flow far from this one. */
    KNOWN_LOSS_FAR,
    /** With the door shut the drive brings less than asked for. */
    FLOW_BELOW_ASKED,
    /** With the door shut the drive may bring a good deal more than asked for. */
    FLOW_ABOVE_ASKED,
    /** The fan stands left of the summit of its curve. */
    FAN_BEFORE_SUMMIT,
    /** The fan is overcome by what it works against. */
    FAN_TOO_WEAK,
    /** The fan stands beyond the last point of its curve. */
    FAN_OFF_CURVE,
    /** One more than 3 Pa: a closed room should not be pushed further. */
    PRESSURE_ABOVE_ROOM_LIMIT,
    /** With the door shut the room is pushed or sucked by more than 3 Pa. */
    ROOM_PRESSURE_HIGH,
    /** Free area of one more opening that would keep the room at 3 Pa. */
    OPENING_MISSING,
    /** A path that would keep the room at 3 Pa if it were larger. */
    OPENING_TO_ENLARGE,
    /** Gaps of the door that would keep the room at 3 Pa if they were larger. */
    DOOR_TO_ENLARGE,
    /** The pressure of the room could not be worked out. */
    ROOM_AIR_NOT_SETTLED,
    /** Air goes one way through paths, and the other way through gaps only. */
    ONLY_GAPS,
    /** The room needs more air than comes in. */
    NEED_ABOVE_FLOW,
    /** People near the mouth may feel a draught. */
    DRAUGHT,
    /** No path has a fan or ductwork behind it: the flows of the briefs are wishes. */
    NOTHING_DRIVES_AIR,
    /** More air is driven in than out, or the other way, and there is no way for the rest. */
    ROOM_SEALED,
    /** Not quiet enough in the governing band. */
    NOT_QUIET_ENOUGH,
    /** The box's own walls decide over the path in the governing band. */
    WALLS_GOVERN,
    /** The first resonance of an outer panel falls where the walls could then decide. */
    PANEL_RESONANCE,
    /** The same, and with it the target would be missed. */
    PANEL_RESONANCE_DECIDES,
    /** The room's own noise is above the target already. */
    OWN_NOISE_ABOVE_TARGET,
    /** Octave figures were spread over third octaves. */
    OCTAVES_INTERPOLATED,
    /** The handbook's figures for lining are used for a liner under a facing. */
    FACING_NOT_IN_HANDBOOK,
    /** Terms published per octave were interpolated in thirds. */
    TERMS_INTERPOLATED,
    /** Noise of the moving air is the loudest in the governing band. */
    FLOW_NOISE_GOVERNS,
    /** Others hear more of the room through the path than they may. */
    OTHERS_HEAR_TOO_MUCH,
    /** Sound through the room's envelope is not counted: the level outside is not known. */
    ENVELOPE_NOT_COUNTED,
    /** The loss of an element of the envelope was interpolated or given a usual shape. */
    ENVELOPE_SHAPE_ASSUMED,
    /** The boxes are no longer what limits the room: its envelope or its own noise is. */
    ENVELOPE_GOVERNS,
    /** A formula of flow noise was carried on beyond what it was published for. */
    FLOW_NOISE_OUTSIDE_RANGE,
    /** At low frequencies the room has too few resonances for a level that is the same everywhere. */
    ROOM_HAS_FEW_MODES,
    /** The room swallows so much that its reverberant field is an approximation. */
    ROOM_VERY_DEAD,
    /** In the flat section a mouth in the long side stands for a port through a broad face. */
    FLAT_PORT_STANDS_IN,
    /** In the flat section lined broad faces are a property of the air between them. */
    FLAT_BROAD_LINING,
    /** The box is bigger than the space. */
    DOES_NOT_FIT,
    /** The box's port is smaller than the opening it is set over. */
    PORT_SMALLER_THAN_OPENING,
    /** A part, or several, is larger than any sheet inside its trim. */
    PANEL_LARGER_THAN_SHEET,
    /** Not enough sheets in stock. */
    NOT_ENOUGH_SHEETS,
    /** The box is heavier than the limit. */
    HEAVIER_THAN_LIMIT,
    /** A part of a box that comes apart is heavier than the limit. */
    PART_HEAVIER_THAN_LIMIT,
    /** The box, or a part of it, does not go through the narrowest place on its way. */
    DOES_NOT_PASS_DOORWAY,
    /** Cut to its printed size a board would be larger than the frame it goes into. */
    PRINTED_SIZES_TIGHT,
    /** A strip of board beside a cut-out or a groove is narrower than it is thick. */
    NARROW_STRIP,
    /** The box comes apart at a joint without a gasket. */
    SEAM_WITHOUT_GASKET,
    /** Heavy enough for two people. */
    LIFT_WITH_TWO,
    /** Too heavy for two people. */
    LIFT_WITH_AID,
    /** A part of a box that comes apart is heavy enough for two people. */
    PART_LIFT_WITH_TWO,
    /** A part of a box that comes apart is too heavy for two people. */
    PART_LIFT_WITH_AID,
    /** The screws would carry more than is allowed. */
    FIXING_OVERLOADED,
    /** More of the same screws in each row would carry the box. */
    MORE_SCREWS_DO,
    /** The screws that would carry the box are more than find studs for certain. */
    SCREWS_EXCEED_STUDS,
    /** No number of these screws carries the box. */
    NO_SCREWS_DO,
    /** However the studs lie, not all screws of a row find one. */
    SCREWS_MISS_STUDS,
    /** Unless the studs lie well, not all screws of a row find one. */
    SCREWS_MAY_MISS_STUDS,
    /** A longer cleat is sure to cross as many studs as the screws need. */
    LONGER_CLEAT,
    /** The rows of screws are further apart than the box reaches. */
    ROWS_BEYOND_BOX,
    /** A cleat runs across the port at the opening. */
    CLEAT_ACROSS_PORT,
    /** A batten on the box or on the wall reaches beyond the box's face, or one of them on the other. */
    CLEAT_BEYOND_BOX,
    /** A row of screws is under or too near a board inside the box. */
    ROW_AT_BOARD,
    /** The weight of a box on bevelled battens is further from the wall than they are high. */
    HOOK_TIPS,
    /** There is no height above the box to lift it over the batten it hangs on. */
    HOOK_NEEDS_ROOM,
    /** Under a ceiling nobody can get at the screws, since the way in is at a side. */
    SCREWS_OUT_OF_REACH,
    /** The cover lies on the surface, so that the box would hang by its cover. */
    HANGS_BY_COVER,
    /** The centre of mass of a box under a ceiling lies beyond its rows of screws. */
    CENTRE_BEYOND_ROWS,
    /** The screws are not deep enough in the timber. */
    SCREWS_SHALLOW,
    /** So heavy, or overhead: a carpenter or engineer has to look at it. */
    ASK_A_CARPENTER,
    /** Nothing is said of how a hanging box is fixed. */
    FIXING_NOT_CHECKED,
    /** The box is to be fixed to something that cannot be computed. */
    FIXING_BEYOND_METHOD,
    /** The weight of a standing box is less than twice what the pressure below lifts. */
    WEIGHT_DOES_NOT_HOLD,
    /** The flange of the duct's collar is larger than the face it lies on. */
    COLLAR_OVERHANGS,
    /** Somebody who stumbles against the standing box can tip it over. */
    STANDING_TIPS,
    /** The standing box is high and narrow. */
    STANDING_SLENDER,
    /** The solid failed its placement proof. */
    PARTS_DO_NOT_CLOSE,
    /** Air is supplied but has no way out, or the other way round. */
    NO_WAY_OUT,
    /** Supply and return differ. */
    FLOWS_UNEQUAL,
    /** Carbon dioxide settles above 1000 ppm. */
    CO2_HIGH,
    /** The air comes from a garage. */
    AIR_FROM_GARAGE,
    /** The opening is in a duct system: combustion air and the only return must be kept free. */
    DUCTWORK_CAUTION,
    /** The opening is to outdoors: hood, insect screen and slope. */
    OUTDOOR_OPENING,
    /** The box is overhead. */
    OVERHEAD,
    /** The path lets so little through that its loss is held at a limit. */
    PATH_LOSS_HELD,
    /** Two turns, or a turn and a port, overlap along a pass. */
    TURNS_OVERLAP,
    /** The quick wave takes what a port through a broad face sends across the clear height to travel with the plane wave. */
    QUICK_BROAD_PORT,
    /** The quick wave takes lined broad faces as a property of the air between them. */
    QUICK_BROAD_LINING,
    /** A section is so many waves wide that a mode of it may be missing. */
    MODES_UNCERTAIN
}
