/** What screws in stud timber hold and whether they find it, what a hanging box asks of them, how a box stands, who lifts it. */
package hushmaze.build.fixing;
