package hushmaze.sound.flow;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Spectrum;
import java.util.ArrayList;
import java.util.List;

/**
 * One source that two formulas speak of: the louder figure holds in every octave, since nothing says which is right.
 *
 * @param one formula
 * @param other formula for the same part
 */
public record LouderOf(FlowSource one, FlowSource other) implements FlowSource {
    public LouderOf {
        if (!one.part().equals(other.part())) {
            throw new IllegalArgumentException("two parts: " + one.part() + " and " + other.part());
        }
    }

    @Override
    public String part() {
        return one.part();
    }

    @Override
    public String source() {
        return "the louder in each octave of: " + one.source() + "; " + other.source();
    }

    @Override
    public Spectrum power() {
        Spectrum first = one.power();
        Spectrum second = other.power();
        return Spectrum.of(BandSet.OCTAVE, i -> Math.max(first.value(i), second.value(i)));
    }

    @Override
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>(one.notices());
        notices.addAll(other.notices());
        return notices;
    }
}
