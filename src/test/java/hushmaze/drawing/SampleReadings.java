package hushmaze.drawing;

import hushmaze.assess.Assessment;
import hushmaze.assess.BandResult;
import hushmaze.assess.PathResult;
import hushmaze.project.PathReadings;
import hushmaze.project.Reading;
import hushmaze.project.Reading.Round;
import hushmaze.project.Reading.Scale;
import hushmaze.project.RoomReadings;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** Readings nobody took, of the first path of the sample assessment. */
public final class SampleReadings {
    /** What every reading says of where it is from. */
    public static final String INVENTED = "Invented for a test";
    /** Level of the source in every band without the box, dB. */
    public static final double OPEN = 110;
    /** Air of a room that gets too little of it, and has too much of it pushed in. */
    public static final RoomReadings BAD_AIR =
            new RoomReadings(4.5, 1900e-6, 30, 1, 450e-6, INVENTED + ", a manometer");

    private SampleReadings() {}

    /** Readings of a source in two rounds that differ by a reduction, with so much background at one place. */
    public static PathReadings of(BandSet set, Scale scale, double open, IntToDoubleFunction reduction, double floor) {
        List<Reading> all = new ArrayList<>();
        all.add(reading("Chair", Round.WITHOUT_BOX, scale, BandLevels.of(set, i -> open)));
        all.add(reading("Chair", Round.WITH_BOX, scale, BandLevels.of(set, i -> open - reduction.applyAsDouble(i))));
        all.add(reading("Chair", Round.SOURCE_OFF, scale, BandLevels.of(set, i -> floor)));
        return new PathReadings(all, null, null);
    }

    /** One reading. */
    public static Reading reading(String name, Round round, Scale scale, BandLevels levels) {
        return new Reading(name, round, scale, levels, INVENTED + ", a meter of class 1");
    }

    /** The likely reduction of the sample's first path in a band. */
    public static IntToDoubleFunction likely(BandSet set) {
        PathResult path = SampleAssessment.twoPaths(UnitSystem.METRIC).paths().get(0);
        List<BandResult> bands = set == BandSet.OCTAVE ? path.octaves() : path.thirds();
        return i -> bands.get(i).likely();
    }

    /** A bit of everything: three places, the air on, bands that were not read, a background that hides what is above 1 kHz. */
    public static Assessment everything(UnitSystem units, BandSet set) {
        IntToDoubleFunction likely = likely(set);
        List<Reading> all = new ArrayList<>();
        for (int place = 1; place <= 3; place++) {
            double more = place - 2;
            String name = "Place " + place + ", " + place + " m from the mouth of the box, at the height of the ear";
            boolean[] covered = new boolean[set.size()];
            Arrays.fill(covered, 1, covered.length - 1, true);
            BandLevels open = with(covered, set, i -> 72 + more);
            BandLevels box = with(covered, set, i -> Math.max(31, 72 - likely.applyAsDouble(i) - i * 0.5) + more);
            all.add(reading(name, Round.WITHOUT_BOX, Scale.AS_GIVEN, open));
            all.add(reading(name, Round.WITH_BOX, Scale.AS_GIVEN, box));
            all.add(reading(name, Round.SOURCE_OFF, Scale.AS_GIVEN, with(covered, set, i -> 30)));
            all.add(reading(name, Round.WITH_AIR, Scale.AS_GIVEN, box.plus(6)));
        }
        PathReadings readings = new PathReadings(all, 0.019, INVENTED + ", an anemometer in nine fields");
        return SampleAssessment.measured(units, readings, BAD_AIR);
    }

    private static BandLevels with(boolean[] covered, BandSet set, IntToDoubleFunction level) {
        double[] levels = new double[set.size()];
        Arrays.setAll(levels, level);
        return new BandLevels(set, levels, covered);
    }
}
