package hushmaze.sound.wave;

/**
 * A mode of a port's duct that carries sound.
 *
 * @param u half waves along the first axis across the duct, in the order x, y, z
 * @param v half waves along the second
 * @param wavenumber along the duct, 1/m
 */
public record PortMode(int u, int v, double wavenumber) {}
