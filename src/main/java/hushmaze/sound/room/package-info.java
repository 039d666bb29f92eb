/**
 * From sound power at an opening to the level at a place, in the quiet room, in the neighbour's or outdoors, and from the
 * level in a room to the power that leaves it through an opening, a wall or a duct.
 */
package hushmaze.sound.room;
