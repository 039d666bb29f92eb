package hushmaze.sound.porous;

import hushmaze.quantity.InvalidValue;

/**
 * The fluids of a lined slit at one frequency, time factor exp(+jωt).
 *
 * @param airSquared squared wavenumber of the air, 1/m²
 * @param low what fills the layer on the first wall
 * @param high what fills the layer on the second wall
 */
public record SlitMedia(Complex airSquared, Layer low, Layer high) {
    /**
     * What fills a layer.
     *
     * @param squared squared wavenumber, 1/m²
     * @param density over that of the air
     * @param facing φ of what lies over its face, m: pressure is higher by φ (1/ρ) dp/dy behind it, in the direction of y
     */
    public record Layer(Complex squared, Complex density, Complex facing) {
        private static final Complex NONE = new Complex(0, 0);

        /** A layer with a bare face. */
        public Layer(Complex squared, Complex density) {
            this(squared, density, NONE);
        }

        /** The same layer where it is cut: without its facing. */
        public Layer bare() {
            return new Layer(squared, density);
        }

        /** The same layer with so many times the height of the air beside it; its facing is as high as the air. */
        public Layer weighted(double weight) {
            return new Layer(squared, density.times(1 / weight), facing);
        }
    }

    public SlitMedia {
        InvalidValue.present("airSquared", airSquared);
        InvalidValue.present("low", low);
        InvalidValue.present("high", high);
    }

    /**
     * Air without losses between two layers of the same liner.
     *
     * @param liner of both layers
     * @param frequency Hz
     * @param soundSpeed of the air, m/s
     */
    public static SlitMedia of(LinerModel liner, double frequency, double soundSpeed) {
        double k0 = 2 * Math.PI * frequency / soundSpeed;
        Complex gamma = liner.wavenumberRatio(frequency);
        Complex zeta = liner.impedanceRatio(frequency);
        // Z = φ j k0 ρc
        Complex facing = liner.facingRatio(frequency).dividedBy(new Complex(0, k0));
        Layer layer = new Layer(gamma.times(gamma).times(k0 * k0), zeta.times(gamma), facing);
        return new SlitMedia(new Complex(k0 * k0, 0), layer, layer);
    }

    /** The same layers with other air. */
    public SlitMedia withAir(Complex squared) {
        return new SlitMedia(squared, low, high);
    }
}
