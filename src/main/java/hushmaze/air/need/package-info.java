/** How much air a room needs and how it feels: what people give off, rates by persons, carbon dioxide over a day, heat, draught. */
package hushmaze.air.need;
