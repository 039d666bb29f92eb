package hushmaze.sound.estimate;

import static hushmaze.sound.SampleBoxes.opening;

import hushmaze.project.Opening;
import hushmaze.sound.PathMethod;
import hushmaze.sound.PathMethodContract;

/** Property: the handbook estimate keeps what every method for the path has to keep. */
class PathEstimateContractTest extends PathMethodContract {
    @Override
    protected PathMethod method() {
        // Within a duct no mouth counts.
        return (solid, soundSpeed) -> PathEstimate.of(solid, opening(Opening.Kind.IN_DUCT), soundSpeed)
                .thirds();
    }

    @Override
    protected int cases() {
        return 400;
    }

    @Override
    protected double exactness() {
        return 1e-9;
    }

    @Override
    protected double nothing() {
        return 1e-9;
    }
}
