/** What was measured before and after: readings from files, measured air, and how they stand to what is predicted. */
package hushmaze.app.measured;
