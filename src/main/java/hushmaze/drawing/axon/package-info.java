/**
 * Pictures of blocks in isometric projection, with hidden lines taken away exactly: parts cut into blocks and edges, what of
 * an edge or a face is seen, marks with leaders around a picture.
 */
package hushmaze.drawing.axon;
