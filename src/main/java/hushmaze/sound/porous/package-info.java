/** Porous liners as equivalent fluids: characteristic impedance, wavenumber and what a backed layer absorbs. */
package hushmaze.sound.porous;
