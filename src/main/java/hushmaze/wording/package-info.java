/**
 * Verdicts, notices and amounts as sentences, from one resource bundle; the command line, the drawings and the window all
 * speak through it.
 */
package hushmaze.wording;
