package hushmaze.drawing.draft;

import hushmaze.drawing.Sketch;
import java.util.function.DoubleFunction;

/**
 * How a strip may be made lower to go on a page, and higher to fill one.
 *
 * @param least lowest it is still read well at, mm
 * @param most highest worth its room, mm; not below the least
 * @param last whether it also grows where nothing follows it
 * @param drawn the strip at a height, mm
 */
record Stretch(double least, double most, boolean last, DoubleFunction<Sketch> drawn) {}
