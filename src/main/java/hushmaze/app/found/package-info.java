/** The search for the best boxes: what it found as cards with a picture each, and a chart of what quiet costs. */
package hushmaze.app.found;
