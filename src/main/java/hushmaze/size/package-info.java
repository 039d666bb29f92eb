/** Finds a box for a brief: for now by a rule set that tries a small grid of boxes and judges each. */
package hushmaze.size;
