package stillturning.parts.element;

import stillturning.parts.element.curve.Require;

/**
 * Diode: conducts from {@code from} to {@code to}.
 *
 * @param saturationAmps saturation current (A)
 * @param emissionVolts emission coefficient times thermal voltage (V)
 * @param ohms series resistance (ohm)
 */
public record Rectifier(
        String name,
        String from,
        String to,
        double saturationAmps,
        double emissionVolts,
        double ohms)
        implements Element {

    public Rectifier {
        Require.positive(name, "saturation current (A)", saturationAmps);
        Require.positive(name, "emission voltage (V)", emissionVolts);
        Require.positive(name, "series resistance (ohm)", ohms);
    }

    @Override
    public Passage passage() {
        return Passage.ONE_WAY;
    }
}
