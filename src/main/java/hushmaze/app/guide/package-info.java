/** The questions that lead to a first box, one step at a time, each with a drawing of what its numbers mean. */
package hushmaze.app.guide;
