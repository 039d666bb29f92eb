/**
 * The one solid model: from a box to its panels, liner pieces, cut-outs, passes, turns and ports, all placed in space,
 * with the proof that they close. Every figure and drawing is read from it.
 */
package hushmaze.solid;
