package hushmaze.assess;

import hushmaze.quantity.Notice;
import hushmaze.sound.BoxLoss;
import hushmaze.sound.criterion.SoundTransmissionClass;
import hushmaze.sound.criterion.WeightedReduction;
import hushmaze.sound.flow.FlowNoise;
import java.util.List;

/**
 * Everything behind the sound figures of one path.
 *
 * @param loss of the box, by every method and route
 * @param routes ways to the microphone, pessimistic edge
 * @param flow noise of the moving air, source by source
 * @param improvements what changes of the walls would buy
 * @param reason why the box reduces as much as it does
 * @param difference weighted element-normalized level difference, from the likely insertion loss and the bare opening's area
 * @param transmissionClass sound transmission class of the same level difference
 * @param heard what others hear of the room through this path
 * @param notices about walls and moving air
 */
public record SoundDetail(
        BoxLoss loss,
        List<SoundRoute> routes,
        FlowNoise flow,
        List<Improvement> improvements,
        LossReason reason,
        WeightedReduction difference,
        SoundTransmissionClass transmissionClass,
        List<Heard> heard,
        List<Notice> notices) {
    public SoundDetail {
        routes = List.copyOf(routes);
        improvements = List.copyOf(improvements);
        heard = List.copyOf(heard);
        notices = List.copyOf(notices);
    }

    /** The way that is loudest in an octave. */
    public SoundRoute.Kind loudestInOctave(int octave) {
        SoundRoute loudest = routes.get(0);
        for (SoundRoute route : routes) {
            boolean louder = route.level().levelsInOctaves().value(octave)
                    > loudest.level().levelsInOctaves().value(octave);
            loudest = louder ? route : loudest;
        }
        return loudest.kind();
    }
}
