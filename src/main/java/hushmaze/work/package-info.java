/** How long work reports what it is doing, and learns that it is no longer wanted. */
package hushmaze.work;
