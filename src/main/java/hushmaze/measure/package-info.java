/** What was measured: levels in bands from text and from recordings, and what a box took away between two rounds of readings. */
package hushmaze.measure;
