/** Boxes put by, side by side: a table of what they come to and their levels in one chart. */
package hushmaze.app.kept;
