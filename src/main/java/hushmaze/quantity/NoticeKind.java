package hushmaze.quantity;

/** What notices can be about. Each kind has its sentence in the resource bundle of the wording. */
public enum NoticeKind {
    /** A calculation was not made, so its figure is missing. */
    METHOD_NOT_RUN,
    /** The liner's thickness is outside what the lining formula was fitted to. */
    LINER_OUTSIDE_RANGE,
    /** A lined run is shorter than what the lining formula was fitted to. */
    RUN_SHORTER_THAN_RANGE,
    /** A term was held at its cap. */
    TERM_CAPPED,
    /** A chamber is smaller than what its formula was tested on. */
    CHAMBER_OUTSIDE_RANGE,
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
    /** Grille, filter or flexible duct are not in the sum. */
    FITTINGS_NOT_COUNTED,
    /** Air in a pass, turn or opening is faster than the limit. */
    VELOCITY_ABOVE_LIMIT,
    /** The path costs more pressure than the brief allows. */
    PRESSURE_ABOVE_LIMIT,
    /** One more than 3 Pa: a closed room should not be pushed further. */
    PRESSURE_ABOVE_ROOM_LIMIT,
    /** Not quiet enough in the governing band. */
    NOT_QUIET_ENOUGH,
    /** The box's own walls decide over the path in the governing band. */
    WALLS_GOVERN,
    /** The first resonance of an outer panel falls where the walls could then decide. */
    PANEL_RESONANCE,
    /** The room's own noise is above the target already. */
    OWN_NOISE_ABOVE_TARGET,
    /** Octave figures were spread over third octaves. */
    OCTAVES_INTERPOLATED,
    /** Noise of the moving air is not in the sum. */
    FLOW_NOISE_NOT_COUNTED,
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
    /** A panel is larger than any sheet. */
    PANEL_LARGER_THAN_SHEET,
    /** Not enough sheets in stock. */
    NOT_ENOUGH_SHEETS,
    /** The box is heavier than the limit. */
    HEAVIER_THAN_LIMIT,
    /** Heavy enough for two people. */
    LIFT_WITH_TWO,
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
    OVERHEAD
}
