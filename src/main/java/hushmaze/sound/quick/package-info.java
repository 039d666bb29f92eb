/** The quick wave: a box's path as a chain of lined passes, turns and ports that carry a few modes each; for searching. */
package hushmaze.sound.quick;
