/** The verdicts in sentences, with marks that do not rest on colour, and the notices by severity. */
package hushmaze.app.verdict;
