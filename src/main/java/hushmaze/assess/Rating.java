package hushmaze.assess;

/**
 * Single numbers of a level spectrum.
 *
 * @param nc noise criterion; null below the lowest printed curve, NC 15
 * @param nr noise rating; null below NR 0
 * @param dbA A-weighted level, dB
 */
public record Rating(Double nc, Double nr, double dbA) {}
