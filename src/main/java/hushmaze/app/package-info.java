/** The window: its parts show what the view models of {@link hushmaze.app.model} hold, and decide nothing themselves. */
package hushmaze.app;
