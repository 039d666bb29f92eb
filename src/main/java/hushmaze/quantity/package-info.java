/**
 * Frequency bands, band spectra with their energy sums, and the units in which people type and read sizes. Everything
 * inside the program is in SI units; only this package converts.
 */
package hushmaze.quantity;
