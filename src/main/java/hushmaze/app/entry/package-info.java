/** The entries: one row for each field of the project, in the order a builder comes to them. */
package hushmaze.app.entry;
