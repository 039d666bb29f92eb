/** From the solid of a box to what the wave solution is computed for, and what it finds for the path of a box. */
package hushmaze.sound.section;
