package hushmaze.assess;

import hushmaze.project.Project;
import hushmaze.project.Room;
import hushmaze.project.Target;
import hushmaze.project.VentPath;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.criterion.AWeighting;
import hushmaze.sound.criterion.TargetCurve;
import hushmaze.sound.room.RoomLevel;
import java.util.ArrayList;
import java.util.List;

/**
 * What each path of a project is up against: the noise through its bare opening, and its share of what the target leaves
 * when the room's own noise is taken off by energy. Paths without a share of their own split the rest equally.
 */
final class NoiseNeeds {
    private NoiseNeeds() {}

    static List<NoiseNeed> of(Project project) {
        Room room = project.room();
        TargetCurve curve = TargetCurve.of(room.target());
        Spectrum thirds = lessOwn(curve.thirds(), ownNoise(room, BandSet.THIRD_OCTAVE));
        Spectrum octaves = lessOwn(curve.octaves(), ownNoise(room, BandSet.OCTAVE));
        double[] shares = shares(project.paths());
        List<NoiseNeed> needs = new ArrayList<>();
        for (int i = 0; i < shares.length; i++) {
            double shareDb = Energy.db(shares[i]);
            var noise = project.paths().get(i).brief().noise();
            needs.add(new NoiseNeed(
                    RoomLevel.atMicrophone(noise, room, BandSet.THIRD_OCTAVE),
                    RoomLevel.atMicrophone(noise, room, BandSet.OCTAVE),
                    thirds.plus(shareDb),
                    octaves.plus(shareDb),
                    allowedDbA(room, shareDb)));
        }
        return needs;
    }

    /** The room's own noise in the given bands; null when none is known. */
    static Spectrum ownNoise(Room room, BandSet bands) {
        Spectrum own = room.ownNoise();
        if (own == null) {
            return null;
        }
        return bands == BandSet.OCTAVE ? own.levelsInOctaves() : own.levelsInThirds();
    }

    /** Shares of the allowed energy, one per path. */
    static double[] shares(List<VentPath> paths) {
        double given = 0;
        int open = 0;
        for (VentPath path : paths) {
            Double share = path.brief().noiseShare();
            given += share == null ? 0 : share;
            open += share == null ? 1 : 0;
        }
        if (given > 1 + 1e-9 || (open > 0 && given >= 1)) {
            throw new InvalidValue(
                    "noiseShare",
                    "shares adding up to " + given,
                    open > 0 ? "less than 1 together" : "at most 1 together",
                    "");
        }
        double[] shares = new double[paths.size()];
        for (int i = 0; i < shares.length; i++) {
            Double share = paths.get(i).brief().noiseShare();
            shares[i] = share == null ? (1 - given) / open : share;
        }
        return shares;
    }

    private static Spectrum lessOwn(Spectrum limit, Spectrum own) {
        return own == null ? limit : limit.energyMinus(own);
    }

    private static Double allowedDbA(Room room, double shareDb) {
        if (room.target().kind() != Target.Kind.DBA) {
            return null;
        }
        Spectrum own = ownNoise(room, BandSet.THIRD_OCTAVE);
        double left = own == null
                ? room.target().number()
                : Energy.minus(room.target().number(), AWeighting.total(own));
        return left + shareDb;
    }
}
