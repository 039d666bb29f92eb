/**
 * The handbook estimate of the path through a box, term by term: one class per published method, and {@link
 * hushmaze.sound.estimate.PathEstimate}, which reads a solid and adds the terms up.
 */
package hushmaze.sound.estimate;
