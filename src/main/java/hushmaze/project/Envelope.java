package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * What stands around the vent paths: the elements of the room's envelope that face one noise.
 *
 * @param elements walls, doors, windows, small elements and gaps; at least one surface
 * @param outsideLevel mean level of the diffuse field in front of the envelope, third octaves or octaves, dB; absent when it
 *     is not known
 * @param outsideSource measured, imported, typical or invented: where that level is from; needed with it
 */
public record Envelope(
        List<EnvelopeElement> elements,
        @MayBeAbsent Spectrum outsideLevel,
        @MayBeAbsent String outsideSource) {
    private static final int MOST = 100;

    public Envelope {
        elements = List.copyOf(InvalidValue.present("elements", elements));
        if (elements.size() > MOST) {
            throw new InvalidValue("elements", elements.size() + " elements", "at most " + MOST + " elements", "");
        }
        if (elements.stream().noneMatch(e -> e.kind() == EnvelopeElement.Kind.SURFACE)) {
            throw new InvalidValue("elements", "no surface", "a list with at least one surface", "");
        }
        if (outsideLevel != null) {
            for (double level : outsideLevel.values()) {
                InvalidValue.within("outsideLevel", level, -30, 160, Unit.DECIBEL);
            }
            InvalidValue.present("outsideSource", outsideSource);
        }
        if (outsideSource != null) {
            InvalidValue.text("outsideSource", outsideSource, 400);
        }
    }
}
