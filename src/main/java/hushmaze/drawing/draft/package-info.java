/**
 * The draughtsman's tools: scales, dimension chains, hatching, tables, charts, columns of text, the page frame and its
 * title block. They know paper, not boxes.
 */
package hushmaze.drawing.draft;
