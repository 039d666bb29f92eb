package hushmaze.wording;

import hushmaze.mend.Mend;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;

/** Words for changes that mend something. */
public final class MendWording {
    private final Wording wording;
    private final Amounts amounts;

    public MendWording(UnitSystem units) {
        this.wording = new Wording(units);
        this.amounts = new Amounts(units);
    }

    /** What is changed, and for sound by how much it helps: "Passes 130 mm wide". */
    public String of(Mend mend) {
        String what = wording.text("mend." + mend.kind(), value(mend));
        if (Double.isNaN(mend.gain())) {
            return what;
        }
        return wording.text(mend.enough() ? "mend.gain" : "mend.notEnough", what, Amounts.number(mend.gain(), 1));
    }

    private String value(Mend mend) {
        if (Double.isNaN(mend.value())) {
            return "";
        }
        return mend.unit() == Unit.NUMBER ? Amounts.number(mend.value(), 0) : amounts.of(mend.value(), mend.unit());
    }
}
