/** Drawings on the screen: the same shapes as in the PDF, painted on a canvas in the colours of the style sheet. */
package hushmaze.app.sheet;
