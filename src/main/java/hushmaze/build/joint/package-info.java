/**
 * What holds the boards of a box together: where boards meet, which fasteners go where at the distances from edges and
 * corners that MDF asks for, and how many of each to buy.
 */
package hushmaze.build.joint;
