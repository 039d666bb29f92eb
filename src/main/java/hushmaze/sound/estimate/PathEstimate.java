package hushmaze.sound.estimate;

import hushmaze.project.Box;
import hushmaze.project.Opening;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.solid.Pass;
import hushmaze.solid.Solid;
import hushmaze.sound.LossTerm;
import java.util.List;

/**
 * Handbook estimate of the insertion loss of the path through a box: level in the room through the bare opening minus
 * level through the box, same source, walls of the box taken as tight.
 *
 * <p>Terms, which add up arithmetically:
 *
 * <ul>
 *   <li>{@code lining}: {@link LinedRun}, one straight run per pass. A run is what lies between the turns: the stretch
 *       beyond a baffle's tip and the stretch in front of a port that turns belong to the turn.
 *   <li>{@code turn}: {@link AshraeSquareElbow}. A U-turn counts as one square turn: its two bends are close together,
 *       interfere, and are not twice one. A port in a side or broad face counts as one square turn. A turn counts as lined
 *       only if both the end and the sides around it carry liner of a tenth of the width, for two widths. How turns add up:
 *       {@link TurnSeries}.
 *   <li>{@code areaStep}: {@link AreaStep} between each port and its pass, plane waves only.
 *   <li>{@code mouths}: {@link Mouths} of the box less those of the bare opening. Negative when the box's mouths are larger
 *       than the opening.
 *   <li>{@code chamber}: {@link TwoRegionPlenum}, instead of lining, turns and area steps.
 * </ul>
 *
 * <p>The methods give transmission losses between unlined ducts of the ports' sections; with the mouths they make an
 * insertion loss. Liner that stops short, gaps and the way round through the walls are not in it. The path run the other
 * way loses the same.
 *
 * @param terms in the order of the air, mouths last
 * @param legs what happens to the sound in each pass, for the route through the walls
 * @param octaves sum of the terms per octave, dB
 * @param thirds sum of the terms per third octave, dB
 * @param notices where a method left its range; what holds for several parts is said once, of the worst of them
 */
public record PathEstimate(
        List<LossTerm> terms, List<Leg> legs, Spectrum octaves, Spectrum thirds, List<Notice> notices) {
    private static final double SLOWEST = 250;
    private static final double FASTEST = 450;

    public PathEstimate {
        terms = List.copyOf(terms);
        legs = List.copyOf(legs);
        notices = List.copyOf(notices);
    }

    /**
     * What happens to the sound in one pass, third octaves, dB.
     *
     * @param pass the pass
     * @param entry loss of the turn before it; for a chamber how far its field is below that in the opening
     * @param along loss of its lining
     */
    public record Leg(Pass pass, Spectrum entry, Spectrum along) {}

    /**
     * The estimate for a box over an opening.
     *
     * @param solid of the box
     * @param opening the bare opening
     * @param soundSpeed m/s
     */
    public static PathEstimate of(Solid solid, Opening opening, double soundSpeed) {
        return of(solid, opening, new EstimateTables(soundSpeed));
    }

    /** The estimate for one of many boxes in the same air; 250 to 450 m/s. */
    public static PathEstimate of(Solid solid, Opening opening, EstimateTables tables) {
        double soundSpeed = tables.soundSpeed();
        InvalidValue.within("soundSpeed", soundSpeed, SLOWEST, FASTEST, Unit.METRE_PER_SECOND);
        TermList list = new TermList(tables);
        if (solid.box().form() == Box.Form.OFFSET_CHAMBER) {
            ChamberTerms.add(list, solid, opening);
        } else {
            MazeTerms.add(list, solid);
        }
        list.addMouths(solid, opening);
        return list.estimate();
    }

    /** Sum of the terms of one kind per third octave, dB; zero if there are none. */
    public Spectrum thirdsOf(String key) {
        Spectrum sum = Spectrum.flat(thirds.bands(), 0);
        for (LossTerm term : terms) {
            if (term.key().equals(key)) {
                sum = sum.plus(term.thirds());
            }
        }
        return sum;
    }
}
