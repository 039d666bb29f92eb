/**
 * Drawings as values: pages of lines, filled shapes and texts in millimetres, with y downwards from the upper left
 * corner. The same page goes to PDF, SVG and the screen; text widths come through {@link
 * hushmaze.drawing.TextMeasure}.
 */
package hushmaze.drawing;
