/** From sound power at an opening to the level at a place in the room, and between two places. */
package hushmaze.sound.room;
