/** The command line: one thin class per command. Data goes to standard output, talk to standard error. */
package hushmaze.cli;
