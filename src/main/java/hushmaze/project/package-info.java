/**
 * What is asked and what is chosen, as immutable values: a room with its vent paths, each with a brief and, once there is
 * one, a box. Every value is checked when it is made; nothing is computed here and no file is known.
 */
package hushmaze.project;
