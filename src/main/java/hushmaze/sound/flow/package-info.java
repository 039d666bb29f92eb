/**
 * Noise that the moving air makes itself: one class per published formula, {@link hushmaze.sound.flow.FlowNoise}, which
 * brings every source to the room, and {@link hushmaze.sound.flow.BoxFlow}, which finds the sources of a box.
 */
package hushmaze.sound.flow;
