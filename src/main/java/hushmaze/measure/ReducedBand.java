package hushmaze.measure;

import hushmaze.quantity.Band;

/**
 * What was measured in one band.
 *
 * @param band the band
 * @param before level without the box, background taken off, dB; null where there is none
 * @param after level with the box, background taken off, dB; null where there is none
 * @param reduction before less after, dB; null where it cannot be said
 * @param uncertainty half width of the range the reduction is in for about 95 of 100, dB; null without a reduction
 * @param overBackground how far the reading with the box was above the background, dB; null without a background
 * @param atLeast whether background hides the level with the box, so that the reduction may be more
 */
public record ReducedBand(
        Band band,
        Double before,
        Double after,
        Double reduction,
        Double uncertainty,
        Double overBackground,
        boolean atLeast) {}
