/** Where a box is made of more than one piece: seams, so that boards fit on sheets, and parts through doors and in hands. */
package hushmaze.build.split;
