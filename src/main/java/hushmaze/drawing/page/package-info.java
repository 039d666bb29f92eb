/** The pages of a path's document set, each drawn from an assessment, and the set put together in order. */
package hushmaze.drawing.page;
