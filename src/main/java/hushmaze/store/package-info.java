/** Every file the program reads or writes: projects, presets, parts lists and results, with atomic saving. */
package hushmaze.store;
