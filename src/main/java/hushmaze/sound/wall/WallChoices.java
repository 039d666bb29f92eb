package hushmaze.sound.wall;

/**
 * What more work on a box's walls would buy, at one edge of the range and for the same sound inside.
 *
 * @param now as chosen
 * @param oneMoreLayer with one more layer of the outermost board all round
 * @param sealed with every joint tight
 * @param both one more layer and tight joints
 */
public record WallChoices(WallRoute now, WallRoute oneMoreLayer, WallRoute sealed, WallRoute both) {}
