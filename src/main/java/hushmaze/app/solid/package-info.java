/** The box in space: meshes of its panels, liner pieces and edges, to be turned, opened and pulled apart. */
package hushmaze.app.solid;
