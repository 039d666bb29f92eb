/** How sound gets through a box: the path, the walls around it, and what it makes in the room. */
package hushmaze.sound;
