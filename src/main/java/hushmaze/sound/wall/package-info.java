/** Sound through the boards and joints of a box: single walls, leaks, and what they make of a box as a whole. */
package hushmaze.sound.wall;
