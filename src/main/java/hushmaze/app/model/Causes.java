package hushmaze.app.model;

import hushmaze.quantity.Notice;
import hushmaze.solid.PortPlace;
import java.util.Arrays;
import java.util.List;

/** The ways from a notice to what it is about: every kind of notice has its own. */
public final class Causes {
    private static final String NOISE = "spectra";
    private static final String AIR = "air";
    private static final String DRAWING = "sections";
    private static final String PAGES = "pages";

    private Causes() {}

    /** Where to look, the nearest first. */
    public static List<Cause> of(Notice notice) {
        return switch (notice.kind()) {
            case METHOD_NOT_RUN, OCTAVES_INTERPOLATED, TERMS_INTERPOLATED -> in(NOISE);
            case TERM_CAPPED, BEAM_CAPPED, STEP_BELOW_CUT_ON_ONLY, PATH_LOSS_HELD, MODES_UNCERTAIN -> in(NOISE);
            case LINER_OUTSIDE_RANGE, NO_LINER, TURN_LINER_THIN -> at(EntryPlace.LINER);
            case LINER_MODEL_BELOW_RANGE, LINER_MODEL_ABOVE_RANGE -> at(EntryPlace.LINER_RESISTIVITY);
            case FACING_NOT_IN_HANDBOOK -> at(EntryPlace.FACING);
            case RUN_SHORTER_THAN_RANGE, RUN_LONGER_THAN_RANGE, TURN_LINING_SHORT -> at(EntryPlace.CLEAR_LENGTH);
            case TURNS_INTERFERE, TURNS_CLOSE -> at(EntryPlace.CLEAR_LENGTH);
            case MOUTH_WITHOUT_STRAIGHT_DUCT, FLAT_PORT_STANDS_IN, QUICK_BROAD_PORT ->
                at(isInRoom(notice) ? EntryPlace.ROOM_PORT_FACE : EntryPlace.OPENING_PORT_FACE);
            case LINED_SECTION_OUTSIDE_RANGE, TURN_ABOVE_TABLE, TURN_WIDTHS_OUTSIDE_RANGE -> at(EntryPlace.CLEAR_WIDTH);
            case LINE_OF_SIGHT -> at(EntryPlace.PASSES);
            case CHAMBER_OUTSIDE_RANGE, CHAMBER_SMALL_TO_WAVELENGTH, CHAMBER_REGIONS_JOINED ->
                at(EntryPlace.CLEAR_LENGTH);
            case CHAMBER_LINING_SMALL -> at(EntryPlace.LINED_WALLS);
            case CHAMBER_PORTS_NOT_OPPOSITE -> at(EntryPlace.OPENING_PORT_FACE, EntryPlace.ROOM_PORT_FACE);
            case TURN_GAP_NARROW, TURN_OUTSIDE_RANGE, TURNS_OVERLAP -> at(EntryPlace.TURN_GAP);
            case FLAT_BROAD_LINING, QUICK_BROAD_LINING -> at(EntryPlace.LINED_BROAD_FACES);
            case REYNOLDS_BELOW_RANGE -> in(AIR);
            case FITTINGS_NOT_COUNTED, LOUVRE_FAST, KNOWN_LOSS_FAR, COLLAR_OVERHANGS -> at(EntryPlace.FITTINGS);
            case VELOCITY_ABOVE_LIMIT ->
                List.of(
                        Cause.in(AIR),
                        Cause.at(isInRoom(notice) ? EntryPlace.MOUTH_VELOCITY_LIMIT : EntryPlace.PATH_VELOCITY_LIMIT));
            case PATH_VELOCITY_LIMIT_LOOSE -> at(EntryPlace.PATH_VELOCITY_LIMIT);
            case VELOCITY_LIMIT_LOOSE -> at(EntryPlace.MOUTH_VELOCITY_LIMIT);
            case PRESSURE_ABOVE_LIMIT -> List.of(Cause.in(AIR), Cause.at(EntryPlace.PRESSURE_LIMIT));
            case PRESSURE_ABOVE_DRIVE, FLOW_BELOW_ASKED, FLOW_ABOVE_ASKED ->
                List.of(Cause.in(AIR), Cause.at(EntryPlace.DRIVE));
            case FAN_BEFORE_SUMMIT, FAN_TOO_WEAK, FAN_OFF_CURVE -> List.of(Cause.in(AIR), Cause.at(EntryPlace.FAN));
            case PRESSURE_ABOVE_ROOM_LIMIT, ROOM_PRESSURE_HIGH, ROOM_AIR_NOT_SETTLED -> in(AIR);
            case OPENING_MISSING, ONLY_GAPS, NO_WAY_OUT, ROOM_SEALED -> at(EntryPlace.PURPOSE);
            case OPENING_TO_ENLARGE -> at(EntryPlace.OPENING_WIDTH);
            case DOOR_TO_ENLARGE -> at(EntryPlace.DOOR);
            case NEED_ABOVE_FLOW, FLOWS_UNEQUAL -> at(EntryPlace.FLOW);
            case CO2_HIGH -> List.of(Cause.in(AIR), Cause.at(EntryPlace.FLOW), Cause.at(EntryPlace.PEOPLE));
            case DRAUGHT -> at(EntryPlace.ROOM_PORT);
            case NOTHING_DRIVES_AIR -> at(EntryPlace.DRIVE);
            case NOT_QUIET_ENOUGH -> List.of(Cause.in(NOISE), Cause.at(EntryPlace.TARGET));
            case WALLS_GOVERN, PANEL_RESONANCE, PANEL_RESONANCE_DECIDES ->
                List.of(Cause.in(NOISE), Cause.at(EntryPlace.SHELL_LAYERS));
            case OWN_NOISE_ABOVE_TARGET -> at(EntryPlace.OWN_NOISE, EntryPlace.TARGET);
            case FLOW_NOISE_GOVERNS, FLOW_NOISE_OUTSIDE_RANGE -> in(NOISE);
            case OTHERS_HEAR_TOO_MUCH -> at(EntryPlace.OUTGOING);
            case ENVELOPE_NOT_COUNTED -> at(EntryPlace.OUTSIDE_LEVEL);
            case ENVELOPE_SHAPE_ASSUMED, ENVELOPE_GOVERNS -> at(EntryPlace.ENVELOPE);
            case ROOM_HAS_FEW_MODES, ROOM_VERY_DEAD -> at(EntryPlace.ABSORPTION);
            case DOES_NOT_FIT -> at(space(notice.part()));
            case PORT_SMALLER_THAN_OPENING -> at(EntryPlace.OPENING_PORT);
            case PANEL_LARGER_THAN_SHEET -> parts(notice, Cause.at(EntryPlace.BOARD_SHEETS));
            case NOT_ENOUGH_SHEETS -> parts(notice, Cause.at(EntryPlace.BOARD_SHEETS));
            case NARROW_STRIP -> parts(notice, Cause.at(EntryPlace.ROOM_PORT));
            case HEAVIER_THAN_LIMIT, PART_HEAVIER_THAN_LIMIT -> at(EntryPlace.MASS_LIMIT);
            case DOES_NOT_PASS_DOORWAY -> at(EntryPlace.DOORWAY);
            case PRINTED_SIZES_TIGHT -> at(EntryPlace.PLAY);
            case SEAM_WITHOUT_GASKET -> at(EntryPlace.GASKET);
            case LIFT_WITH_TWO, LIFT_WITH_AID, PART_LIFT_WITH_TWO, PART_LIFT_WITH_AID -> at(EntryPlace.SEAMS);
            case FIXING_OVERLOADED, MORE_SCREWS_DO, SCREWS_EXCEED_STUDS, NO_SCREWS_DO -> at(EntryPlace.SCREWS);
            case SCREWS_MISS_STUDS, SCREWS_MAY_MISS_STUDS, LONGER_CLEAT -> at(EntryPlace.CLEAT_LENGTH);
            case ROWS_BEYOND_BOX, CLEAT_ACROSS_PORT, CLEAT_BEYOND_BOX, ROW_AT_BOARD, HOOK_TIPS, CENTRE_BEYOND_ROWS ->
                at(EntryPlace.ROW_DISTANCE);
            case HOOK_NEEDS_ROOM -> at(EntryPlace.SPACE_HEIGHT);
            case SCREWS_OUT_OF_REACH, HANGS_BY_COVER -> at(EntryPlace.OPENING_PORT);
            case SCREWS_SHALLOW -> at(EntryPlace.THREAD);
            case ASK_A_CARPENTER, FIXING_BEYOND_METHOD -> at(EntryPlace.FIXED_INTO);
            case FIXING_NOT_CHECKED -> at(EntryPlace.MOUNTING);
            case WEIGHT_DOES_NOT_HOLD, STANDING_TIPS, STANDING_SLENDER -> in(DRAWING);
            case PARTS_DO_NOT_CLOSE -> in(PAGES);
            case AIR_FROM_GARAGE, DUCTWORK_CAUTION, OUTDOOR_OPENING -> at(EntryPlace.BEYOND);
            case OVERHEAD -> at(EntryPlace.OPENING_SURFACE);
        };
    }

    private static boolean isInRoom(Notice notice) {
        return notice.part().equals(PortPlace.IN_ROOM);
    }

    private static List<Cause> at(EntryPlace... places) {
        return Arrays.stream(places).map(Cause::at).toList();
    }

    private static List<Cause> in(String view) {
        return List.of(Cause.in(view));
    }

    /** The drawing of the first part named, and where it can be mended. */
    private static List<Cause> parts(Notice notice, Cause more) {
        return List.of(Cause.of(notice.part().split(", ", -1)[0]), more);
    }

    private static EntryPlace space(String side) {
        return switch (side) {
            case "height" -> EntryPlace.SPACE_HEIGHT;
            case "depth" -> EntryPlace.SPACE_DEPTH;
            default -> EntryPlace.SPACE_WIDTH;
        };
    }
}
