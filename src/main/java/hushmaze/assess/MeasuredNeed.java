package hushmaze.assess;

import hushmaze.project.Reading;
import hushmaze.quantity.Band;
import java.util.List;

/**
 * What was measured of a path against what its target asks: reductions against those needed and, where levels count from
 * something, the levels read with the box against those allowed.
 *
 * <p>The reduction is what is judged. Levels count only as far as the source was the noise itself; so it is told by how much
 * the source was louder.
 *
 * @param standings one per band, lowest first
 * @param worst the band that is short by most; null if none is
 * @param shortBy how much it is short, dB; infinite where the target leaves nothing
 * @param loudness levels with the box; null where only differences mean anything or no band has one
 */
public record MeasuredNeed(List<Standing> standings, Band worst, double shortBy, Loudness loudness) {
    /** How a measured reduction stands to the one needed. */
    public enum Standing {
        /** As much as needed, or more. */
        MET,
        /** Less, but by no more than its uncertainty, or background hides the rest. */
        OPEN,
        /** Less by more than its uncertainty. */
        SHORT,
        /** No reduction was measured. */
        NOT_MEASURED
    }

    /**
     * Levels read with the box, background taken off.
     *
     * @param worst the band that is farthest above what is allowed, or least below it
     * @param above level in that band less the level allowed, dB
     * @param bands how many bands have both
     * @param over how many of them are above what is allowed
     * @param louder mean over the bands of the level without the box less the noise of the project, dB; null where no band has both
     */
    public record Loudness(Band worst, double above, int bands, int over, Double louder) {}

    public MeasuredNeed {
        standings = List.copyOf(standings);
    }

    /** @param predicted the path the comparison is of */
    public static MeasuredNeed of(PathResult predicted, Comparison comparison) {
        return of(predicted.bands(comparison.bands()), comparison);
    }

    /** @param bands of the prediction, the same as those of the comparison */
    static MeasuredNeed of(List<BandResult> bands, Comparison comparison) {
        List<ComparedBand> rows = comparison.rows();
        Standing[] standings = new Standing[rows.size()];
        Band worst = null;
        double most = 0;
        for (int i = 0; i < standings.length; i++) {
            standings[i] = standing(rows.get(i), bands.get(i));
            if (standings[i] == Standing.SHORT) {
                double shortBy = needed(bands.get(i)) - rows.get(i).reduction();
                if (worst == null || shortBy > most) {
                    worst = rows.get(i).band();
                    most = shortBy;
                }
            }
        }
        Loudness loudness = comparison.scale() == Reading.Scale.FULL_SCALE ? null : loudness(bands, rows);
        return new MeasuredNeed(List.of(standings), worst, most, loudness);
    }

    /** How many bands stand so. */
    public int count(Standing standing) {
        return (int) standings.stream().filter(s -> s == standing).count();
    }

    /** How many bands have a reduction. */
    public int measured() {
        return standings.size() - count(Standing.NOT_MEASURED);
    }

    private static Standing standing(ComparedBand row, BandResult band) {
        if (row.reduction() == null) {
            return Standing.NOT_MEASURED;
        }
        double needed = needed(band);
        if (row.reduction() >= needed) {
            return Standing.MET;
        }
        boolean open = row.atLeast() || row.reduction() + row.uncertainty() >= needed;
        return open ? Standing.OPEN : Standing.SHORT;
    }

    /** Below zero where the bare opening is quieter than it must be. */
    private static double needed(BandResult band) {
        return -BandResult.margin(band.allowed(), band.noise());
    }

    private static Loudness loudness(List<BandResult> bands, List<ComparedBand> rows) {
        Band worst = null;
        double most = 0;
        int count = 0;
        int over = 0;
        double sum = 0;
        int compared = 0;
        for (int i = 0; i < rows.size(); i++) {
            ComparedBand row = rows.get(i);
            BandResult band = bands.get(i);
            if (row.after() != null && Double.isFinite(band.allowed())) {
                double above = row.after() - band.allowed();
                count++;
                over += above > 0 ? 1 : 0;
                if (worst == null || above > most) {
                    worst = row.band();
                    most = above;
                }
            }
            if (row.before() != null && Double.isFinite(band.noise())) {
                sum += row.before() - band.noise();
                compared++;
            }
        }
        Double louder = compared == 0 ? null : Double.valueOf(sum / compared);
        return worst == null ? null : new Loudness(worst, most, count, over, louder);
    }
}
