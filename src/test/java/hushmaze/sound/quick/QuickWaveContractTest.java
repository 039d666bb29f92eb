package hushmaze.sound.quick;

import hushmaze.material.Liner;
import hushmaze.sound.PathMethod;
import hushmaze.sound.PathMethodContract;
import hushmaze.sound.porous.FacedLiner;
import hushmaze.sound.porous.LinerModel;
import hushmaze.sound.porous.MikiLiner;

/**
 * Property: the quick wave keeps what every method has to keep. Above the first cut-on a plane wave comes in and all modes
 * that leave are counted, which is not the same backwards; so bands are compared up to 315 Hz, below the cut-on of the
 * largest ports drawn; chambers, whose ports are wider still, are left out.
 */
class QuickWaveContractTest extends PathMethodContract {
    private static final double ANY = 20_000;

    @Override
    protected PathMethod method() {
        return (solid, soundSpeed) -> {
            Liner liner = solid.box().liner();
            LinerModel model = liner == null ? new MikiLiner(ANY) : FacedLiner.miki(liner);
            return QuickWave.of(solid, model, soundSpeed).thirds();
        };
    }

    @Override
    protected int cases() {
        return 10;
    }

    @Override
    protected double highestHz() {
        return 315;
    }

    @Override
    protected double exactness() {
        return 1e-3;
    }

    @Override
    protected double longest() {
        return 1.2;
    }

    @Override
    protected boolean takesChambers() {
        return false;
    }
}
