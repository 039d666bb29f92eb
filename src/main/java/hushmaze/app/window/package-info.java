/** The frame of the window: menus, commands, questions to the user, and where everything has its place. */
package hushmaze.app.window;
