/** The sound in a box as a map: how loud it is everywhere, or the wave itself at an instant. */
package hushmaze.app.field;
