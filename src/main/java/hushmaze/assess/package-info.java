/** Puts sound, air and build together into verdicts and typed notices. */
package hushmaze.assess;
