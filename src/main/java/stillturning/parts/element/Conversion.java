package stillturning.parts.element;

import stillturning.parts.element.curve.Require;

/**
 * DC–DC converter: draws between {@code from} and {@code to}, holds a voltage between {@code plus}
 * and {@code minus}.
 */
public record Conversion(
        String name, String from, String to, OutputSide output, double efficiency, InputSide input)
        implements Element {

    /** Output terminals, voltage (V), droop (ohm), current limit (A). */
    public record OutputSide(
            String plus, String minus, double setVolts, double droopOhms, double limitAmps) {
        public OutputSide {
            Require.positive("converter", "output voltage (V)", setVolts);
            Require.positive("converter", "output droop (ohm)", droopOhms);
            Require.positive("converter", "current limit (A)", limitAmps);
        }
    }

    /** Idle draw (W), the voltage below which it stops (V), and above which it starts again (V). */
    public record InputSide(double idleWatts, double minimumVolts, double restartVolts) {
        public InputSide {
            Require.notNegative("converter", "idle draw (W)", idleWatts);
            Require.positive("converter", "minimum input voltage (V)", minimumVolts);
            if (!(restartVolts >= minimumVolts)) {
                throw new IllegalArgumentException(
                        "converter: restart voltage "
                                + restartVolts
                                + " V is below the minimum "
                                + minimumVolts
                                + " V");
            }
        }
    }

    public Conversion {
        if (!(efficiency > 0 && efficiency <= 1)) {
            throw new IllegalArgumentException(
                    name + ": efficiency " + efficiency + " is not above 0 and at most 1");
        }
    }

    @Override
    public Role role() {
        return Role.CONVERTER;
    }

    /** It lies over its input; its current comes out at its output. */
    @Override
    public String outlet() {
        return output.plus();
    }

    @Override
    public <T> T accept(Visitor<T> visitor) {
        return visitor.visit(this);
    }
}
