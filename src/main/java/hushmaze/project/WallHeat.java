package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * Heat through walls, floor, ceiling and windows together.
 *
 * @param conductance area times heat transmittance, W/K
 * @param outsideTemperature on their far side, °C
 */
public record WallHeat(
        @Measured(Unit.WATT_PER_KELVIN) double conductance,
        @Measured(Unit.CELSIUS) double outsideTemperature) {
    public WallHeat {
        InvalidValue.within("conductance", conductance, 0.001, 1e5, Unit.WATT_PER_KELVIN);
        InvalidValue.within("outsideTemperature", outsideTemperature, -60, 80, Unit.CELSIUS);
    }
}
