package hushmaze.sound.wave;

import hushmaze.quantity.Energy;
import hushmaze.sound.porous.Complex;
import java.util.List;

/**
 * What passes through a space at one frequency.
 *
 * @param frequency Hz
 * @param inletModes modes that carry sound in the inlet, the plane wave first
 * @param outletModes the same of the outlet
 * @param reflected for each inlet mode coming in with amplitude 1 the amplitudes of the inlet modes that go back; modes are
 *     scaled to a mean square of 1 over the duct's section
 * @param transmitted the same for the outlet modes that leave
 * @param areaRatio outlet over inlet
 * @param meanSquare mean square pressure in the rooms that the solver was given, over that of a plane wave coming in alone
 * @param residual largest error of the equations over the right side, of all solutions
 * @param unknowns of the system that was solved
 */
public record WaveAnswer(
        double frequency,
        List<PortMode> inletModes,
        List<PortMode> outletModes,
        List<List<Complex>> reflected,
        List<List<Complex>> transmitted,
        double areaRatio,
        List<Double> meanSquare,
        double residual,
        int unknowns) {
    public WaveAnswer {
        inletModes = List.copyOf(inletModes);
        outletModes = List.copyOf(outletModes);
        reflected = reflected.stream().map(List::copyOf).toList();
        transmitted = transmitted.stream().map(List::copyOf).toList();
        meanSquare = List.copyOf(meanSquare);
    }

    /** Transmission loss for a plane wave that comes in, all modes that leave counted, dB. */
    public double transmissionLoss() {
        return -Energy.db(transmittedPower(0));
    }

    /** Transmission loss for equal energy in all inlet modes that carry sound, dB. */
    public double transmissionLossAllModes() {
        double sum = 0;
        for (int mode = 0; mode < inletModes.size(); mode++) {
            sum += transmittedPower(mode);
        }
        return -Energy.db(sum / inletModes.size());
    }

    /** Power that leaves by the outlet over the incident power, for one inlet mode. */
    public double transmittedPower(int inletMode) {
        return areaRatio * power(transmitted.get(inletMode), outletModes, inletMode);
    }

    /** Power that goes back through the inlet over the incident power, for one inlet mode. */
    public double reflectedPower(int inletMode) {
        return power(reflected.get(inletMode), inletModes, inletMode);
    }

    private double power(List<Complex> amplitudes, List<PortMode> modes, int inletMode) {
        double sum = 0;
        for (int i = 0; i < amplitudes.size(); i++) {
            sum += amplitudes.get(i).absSquared() * modes.get(i).wavenumber();
        }
        return sum / inletModes.get(inletMode).wavenumber();
    }
}
