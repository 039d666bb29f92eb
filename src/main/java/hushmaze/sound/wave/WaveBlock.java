package hushmaze.sound.wave;

import hushmaze.solid.Cuboid;

/**
 * A block filled with one medium. In a flat space its size along z is a weight: a duct half as high carries half the
 * flow.
 *
 * @param medium what fills it
 * @param place where, m
 */
public record WaveBlock(Medium medium, Cuboid place) {}
