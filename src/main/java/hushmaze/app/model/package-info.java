/** The view models: the project being edited, its results, its file; no controls, services by constructor. */
package hushmaze.app.model;
