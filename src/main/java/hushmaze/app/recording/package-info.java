/** A recording that is looked at: its wave and its third octaves over time, and a part of it that is chosen and measured. */
package hushmaze.app.recording;
