/** Curves and weightings by which a spectrum of levels becomes one number, and by which a target becomes a spectrum. */
package hushmaze.sound.criterion;
