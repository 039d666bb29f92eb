/** What would mend the thing a notice is about: changes of one number or part, each tried by judging the project with it. */
package hushmaze.mend;
