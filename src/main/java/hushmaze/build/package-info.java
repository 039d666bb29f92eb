/** From the solid to the shop: cut list, sheet layouts with their cuts, mass and quantities. */
package hushmaze.build;
