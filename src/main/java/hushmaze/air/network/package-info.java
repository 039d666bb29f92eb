/** Air between spaces: fan curves, operating points, and the pressures and flows of a room with its ways in and out. */
package hushmaze.air.network;
