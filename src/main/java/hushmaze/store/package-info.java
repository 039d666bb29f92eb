/**
 * Every file the program reads or writes: projects, presets and sample projects as JSON, with messages that name file,
 * field, value, limit and unit, atomic saving, and side files for autosave. Inside the program values are in SI units; in
 * a file the unit ends the field's name.
 */
package hushmaze.store;
