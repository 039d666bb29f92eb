/** Finds boxes for a brief: a first one at once, the best of several kinds by a longer search; and tells which limits are in the way. */
package hushmaze.size;
