/** What the air costs: its properties, every loss of the path with its velocity, and what the people in the room need. */
package hushmaze.air;
