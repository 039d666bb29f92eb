package hushmaze.sound.section;

import hushmaze.material.Liner;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.PathMethod;
import hushmaze.sound.PathMethodContract;
import hushmaze.sound.porous.LinerModel;
import hushmaze.sound.porous.MikiLiner;
import hushmaze.work.Progress;

/**
 * Property: the wave solution of the flat section keeps what every method has to keep. Above the first cut-on a plane wave
 * comes in and all modes that leave are counted, which is not the same backwards; so bands are compared up to 630 Hz.
 */
class PathWaveContractTest extends PathMethodContract {
    @Override
    protected PathMethod method() {
        return (solid, soundSpeed) -> {
            Liner liner = solid.box().liner();
            LinerModel model = liner == null ? null : new MikiLiner(liner.flowResistivity());
            return PathWave.of(solid, model, soundSpeed, 0, Progress.NONE)
                    .completedBy(Spectrum.flat(BandSet.THIRD_OCTAVE, 0));
        };
    }

    @Override
    protected int cases() {
        return 1;
    }

    @Override
    protected double highestHz() {
        return 630;
    }

    @Override
    protected double exactness() {
        return 1e-3;
    }

    @Override
    protected double longest() {
        return 0.6;
    }
}
