package hushmaze.work;

import java.util.function.BooleanSupplier;

/**
 * What a long calculation tells its caller, and how the caller stops it.
 *
 * <p>A loop calls {@link #check} once a step; the call throws {@link Cancelled} when the work is no longer wanted, so
 * that the calculation unwinds without a special return value.
 */
public interface Progress {
    /** Reports nothing and is never cancelled. */
    Progress NONE = (fraction, doing) -> {};

    /**
     * Reports progress and gives the caller the chance to cancel.
     *
     * @param fraction share done, 0 to 1
     * @param doing what is being done, as a short text
     * @throws Cancelled if the work is no longer wanted
     */
    void check(double fraction, String doing);

    /** The same, cancelled as soon as something more does not hold any longer, which every step asks again. */
    default Progress asLongAs(BooleanSupplier wanted) {
        return (fraction, doing) -> {
            check(fraction, doing);
            if (!wanted.getAsBoolean()) {
                throw new Cancelled();
            }
        };
    }

    /** The work was stopped by whoever asked for it. */
    final class Cancelled extends RuntimeException {
        private static final long serialVersionUID = 1L;

        public Cancelled() {
            super("cancelled");
        }
    }
}
