package hushmaze.sound.wall;

import hushmaze.project.Envelope;
import hushmaze.project.EnvelopeElement;
import hushmaze.project.Room;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.criterion.WeightedReduction;
import java.util.ArrayList;
import java.util.List;

/**
 * Sound through the room's envelope, element by element; third octaves.
 *
 * <p>Formula: T = Σ Si 10^(-Ri/10) + Σ A0 10^(-Dj/10) + Σ σ w l; R' = -10 lg(T/S); L2 = L1 - R' + 10 lg(S/A) = L1 + 10 lg(T/A).
 *
 * <p>Symbols: T area in m² that would let through as much if all sound passed; Si and Ri area in m² and sound reduction
 * index in dB of a surface, S = Σ Si; Dj element-normalized level difference in dB of a small element, A0 = 10 m²; σ, w, l
 * transmission coefficient, width and length of a gap ({@link SlitLeak}); L1 and L2 levels outside and inside in dB; A
 * absorption area of the room in m².
 *
 * <p>Source: composite loss and D_n,e as textbooks and EN ISO 10140-2 have them, from memory.
 *
 * <p>Range: diffuse fields on both sides; outdoors, where sound comes from one side, an approximation. Sound that comes round
 * through floors and side walls is not in it.
 *
 * <p>Accuracy: that of the elements; built walls are often 3 to 5 dB below their laboratory figures (common experience, no
 * source).
 *
 * <p>Differs from the source: octaves are interpolated over log frequency; where only a weighted figure is given, the shape of
 * the reference curve is assumed.
 *
 * @param shares what comes through each element, in the envelope's order
 * @param area of all surfaces, m²
 * @param assumed whether an element's loss was interpolated from octaves or given a shape
 */
public record EnvelopeLoss(List<Share> shares, double area, boolean assumed) {
    /**
     * What comes through one element.
     *
     * @param name of the element
     * @param openArea area that would let through as much if all sound passed, 10 lg of m², third octaves
     */
    public record Share(String name, Spectrum openArea) {}

    public EnvelopeLoss {
        shares = List.copyOf(shares);
    }

    /** The loss of an envelope; speed of sound in m/s. */
    public static EnvelopeLoss of(Envelope envelope, double soundSpeed) {
        List<Share> shares = new ArrayList<>();
        double area = 0;
        boolean assumed = false;
        for (EnvelopeElement element : envelope.elements()) {
            shares.add(new Share(element.name(), openArea(element, soundSpeed)));
            if (element.kind() == EnvelopeElement.Kind.SURFACE) {
                area += element.count() * element.area();
            }
            if (element.kind() != EnvelopeElement.Kind.GAP) {
                assumed |= element.loss() == null || element.loss().bands() == BandSet.OCTAVE;
            }
        }
        return new EnvelopeLoss(shares, area, assumed);
    }

    /** The same envelope with one more small element, such as a vent with its box; level difference D_n,e in dB. */
    public EnvelopeLoss with(String name, Spectrum levelDifference) {
        List<Share> more = new ArrayList<>(shares);
        Spectrum loss = levelDifference.interpolatedInThirds();
        more.add(new Share(name, openArea(ElementDifference.REFERENCE_AREA, loss)));
        return new EnvelopeLoss(more, area, assumed || levelDifference.bands() == BandSet.OCTAVE);
    }

    /** Area of the whole envelope that would let through as much if all sound passed, 10 lg of m². */
    public Spectrum openArea() {
        return shares.stream().map(Share::openArea).reduce(Spectrum::energyPlus).orElseThrow();
    }

    /** Sound reduction index of the whole, R', dB. */
    public Spectrum loss() {
        double whole = Energy.db(area);
        Spectrum open = openArea();
        return Spectrum.of(BandSet.THIRD_OCTAVE, i -> whole - open.value(i));
    }

    /** The element that lets through most in a band. */
    public Share governing(int band) {
        Share most = shares.get(0);
        for (Share share : shares) {
            most = share.openArea().value(band) > most.openArea().value(band) ? share : most;
        }
        return most;
    }

    /**
     * Level in the room, third octaves, dB.
     *
     * @param outside level of the diffuse field in front of the envelope, dB; octaves are split evenly
     * @param room for its absorption
     */
    public Spectrum levelIn(Room room, Spectrum outside) {
        return levelIn(room, outside, openArea());
    }

    /** Level in the room through one element, third octaves, dB. */
    public static Spectrum levelIn(Room room, Spectrum outside, Share share) {
        return levelIn(room, outside, share.openArea());
    }

    private static Spectrum levelIn(Room room, Spectrum outside, Spectrum openArea) {
        Spectrum absorption =
                Spectrum.of(BandSet.OCTAVE, i -> room.absorptionArea().get(i)).interpolatedInThirds();
        Spectrum levels = outside.levelsInThirds();
        return Spectrum.of(
                BandSet.THIRD_OCTAVE, i -> levels.value(i) + openArea.value(i) - Energy.db(absorption.value(i)));
    }

    private static Spectrum openArea(EnvelopeElement element, double soundSpeed) {
        return switch (element.kind()) {
            case SURFACE -> openArea(element.count() * element.area(), lossOf(element));
            case SMALL -> openArea(element.count() * ElementDifference.REFERENCE_AREA, lossOf(element));
            case GAP -> {
                SlitLeak slit =
                        new SlitLeak(element.gapWidth(), element.gapLength(), element.gapDepth(), element.gapMouth());
                yield Spectrum.ofFrequency(
                        BandSet.THIRD_OCTAVE, f -> Energy.db(element.count() * slit.openArea(f, soundSpeed)));
            }
        };
    }

    private static Spectrum openArea(double size, Spectrum loss) {
        double db = Energy.db(size);
        return Spectrum.of(BandSet.THIRD_OCTAVE, i -> db - loss.value(i));
    }

    private static Spectrum lossOf(EnvelopeElement element) {
        return element.loss() == null
                ? WeightedReduction.assumedShape(element.weighted())
                : element.loss().interpolatedInThirds();
    }
}
