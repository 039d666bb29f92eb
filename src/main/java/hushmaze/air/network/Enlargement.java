package hushmaze.air.network;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.function.DoubleUnaryOperator;

/** How many times as large one way has to be to hold a room's pressure to a limit; or why that does not help. */
public sealed interface Enlargement permits Enlargement.Found, Enlargement.None {
    /** Most that is tried. */
    double MOST = 100;

    /** The factor is found to this share of itself. */
    double EXACT = 1e-7;

    /** Why it does not help. */
    enum Reason {
        /** The way does not answer to the pressure. */
        DOES_NOT_ANSWER,
        /** Even {@link #MOST} times as large it is not enough. */
        NOT_ENOUGH,
        /** The network has no answer. */
        NOT_SETTLED
    }

    /**
     * It helps.
     *
     * @param factor so many times as large, above 1
     */
    record Found(double factor) implements Enlargement {}

    /** It does not help. */
    record None(Reason reason) implements Enlargement {}

    /**
     * The least enlargement; 1 if the limit is kept already.
     *
     * @param network with the room in it
     * @param room whose pressure is looked at
     * @param branch which is enlarged
     * @param limit of the pressure either way, Pa
     */
    static Enlargement of(RoomNetwork network, String room, String branch, double limit) {
        InvalidValue.within("limit", limit, 1e-3, 1e5, Unit.PASCAL);
        boolean answers = network.branches().stream()
                .anyMatch(b -> b.name().equals(branch) && b.law().answersPressure());
        if (!answers) {
            return new None(Reason.DOES_NOT_ANSWER);
        }
        DoubleUnaryOperator above = log -> pressure(network, room, branch, Math.exp(log)) - limit;
        double now = above.applyAsDouble(0);
        double most = above.applyAsDouble(Math.log(MOST));
        if (Double.isNaN(now) || Double.isNaN(most)) {
            return new None(Reason.NOT_SETTLED);
        }
        if (now <= 0) {
            return new Found(1);
        }
        if (most > 0) {
            return new None(Reason.NOT_ENOUGH);
        }
        return new Found(Math.exp(Root.between(above, 0, Math.log(MOST), EXACT)));
    }

    private static double pressure(RoomNetwork network, String room, String branch, double factor) {
        RoomNetwork.Outcome outcome = network.enlarged(branch, factor).solve();
        return outcome instanceof RoomNetwork.Solution solution
                ? Math.abs(solution.pressures().get(room))
                : Double.NaN;
    }
}
