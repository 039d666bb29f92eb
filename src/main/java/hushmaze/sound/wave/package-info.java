/**
 * Wave solution: the Helmholtz equation in a space of air and liner between rigid walls, by finite elements of high order.
 * A space is either solid or flat; a flat one has no change of pressure along z.
 */
package hushmaze.sound.wave;
