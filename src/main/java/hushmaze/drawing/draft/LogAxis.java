package hushmaze.drawing.draft;

/**
 * A logarithmic axis of frequency: place = from + (to - from) · lg(f / fLow) / lg(fHigh / fLow).
 *
 * @param low frequency at the start, Hz
 * @param high frequency at the end, Hz
 * @param from start, mm
 * @param to end, mm
 */
public record LogAxis(double low, double high, double from, double to) {
    /** Place of a frequency, mm. */
    public double place(double hz) {
        return from + (to - from) * Math.log(hz / low) / Math.log(high / low);
    }
}
