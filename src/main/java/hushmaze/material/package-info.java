/**
 * What is bought: boards, liners, sheets, a saw, screws. Values with the source of their numbers; a project keeps its own
 * copies, so that it never changes behind its owner's back.
 */
package hushmaze.material;
