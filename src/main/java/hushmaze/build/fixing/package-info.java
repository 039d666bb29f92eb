/** What screws in stud timber hold, and what a hanging box asks of them. */
package hushmaze.build.fixing;
