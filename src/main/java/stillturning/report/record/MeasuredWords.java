package stillturning.report.record;

import java.util.Map;
import stillturning.model.Candidate;
import stillturning.quantity.Formats;
import stillturning.reliability.asbuilt.Compared;
import stillturning.reliability.asbuilt.Expectation;
import stillturning.reliability.asbuilt.FittedValue;
import stillturning.reliability.asbuilt.FittedValue.Known;
import stillturning.reliability.asbuilt.FittedValue.Unknown;
import stillturning.reliability.asbuilt.Measurand;
import stillturning.reliability.asbuilt.Measurand.MeasurandKind;
import stillturning.reliability.asbuilt.StepKey;
import stillturning.report.Spoken;
import stillturning.report.groundtest.PlanWords;

/** What is measured, in words and with its unit. */
public final class MeasuredWords {

    private static final String KEEPS = "keeps to it";
    private static final String PASSED = "passed";

    private final Spoken spoken;
    private final Map<String, String> acts;

    /**
     * @param acts what is done in each step, by its name
     */
    public MeasuredWords(Candidate candidate, Map<String, String> acts) {
        this.spoken = new Spoken(candidate);
        this.acts = Map.copyOf(acts);
    }

    /** A part or a load. */
    public String of(String name) {
        return spoken.of(name);
    }

    /** What is measured. */
    public String says(Measurand subject) {
        String at = of(subject.at());
        return switch (subject.kind()) {
            case HAPPENED -> step(subject.step());
            case VOLTS -> step(subject.step()) + ": voltage of " + at;
            case AMPS -> step(subject.step()) + ": current of " + at;
            case OUT_SECONDS -> step(subject.step()) + ": " + at + " out for";
            case CAPACITY -> "capacity of " + at;
            case BATTERY_OHMS -> "resistance of " + at;
            case LOAD_AMPS -> "current of " + at;
            case PATH_OHMS -> "resistance of " + at;
        };
    }

    private String step(String key) {
        String configuration = PlanWords.ready(StepKey.configurationOf(key));
        return key.endsWith("/" + StepKey.BEFORE)
                ? configuration + ", before the first step"
                : configuration
                        + ", "
                        + acts.getOrDefault(key, key.substring(key.indexOf('/') + 1));
    }

    /** A value with its unit. */
    public static String value(MeasurandKind kind, double value) {
        return switch (kind) {
            case HAPPENED -> value > 0 ? PASSED : "failed";
            case VOLTS -> Formats.fixed(zero(value), 2) + " V";
            case AMPS -> Formats.fixed(zero(value), 2) + " A";
            case LOAD_AMPS -> Formats.significant(value, 3) + " A";
            case OUT_SECONDS -> Formats.fixed(value, 2) + " s";
            case CAPACITY -> Formats.fixed(value / 3600, 1) + " Ah";
            case BATTERY_OHMS, PATH_OHMS -> Formats.significant(1000 * value, 3) + " mohm";
        };
    }

    /** No minus before nothing. */
    private static double zero(double value) {
        return Math.abs(value) < 0.005 ? 0 : value;
    }

    /** What was measured, with its interval where one is known. */
    public static String measured(Compared compared) {
        MeasurandKind kind = compared.expectation().subject().kind();
        if (compared.measured().isEmpty()) {
            return "";
        }
        String value = value(kind, compared.measured().getAsDouble());
        return compared.half().isEmpty()
                ? value
                : value + " ±" + half(kind, compared.half().getAsDouble());
    }

    private static String half(MeasurandKind kind, double half) {
        return switch (kind) {
            case CAPACITY -> Formats.significant(half / 3600, 2) + " Ah";
            case BATTERY_OHMS, PATH_OHMS -> Formats.significant(1000 * half, 2) + " mohm";
            case HAPPENED, VOLTS, AMPS, OUT_SECONDS, LOAD_AMPS -> value(kind, half);
        };
    }

    /** How the two stand to each other, in a word or two. */
    public static String verdict(Compared compared) {
        boolean step = compared.expectation().subject().kind() == MeasurandKind.HAPPENED;
        return switch (compared.verdict()) {
            case AGREES -> step ? PASSED : KEEPS;
            case DISAGREES -> step ? "failed" : "does not keep to it";
            case NOT_MEASURED -> step ? "not done" : "not measured";
        };
    }

    /** What is said of what an older form asked for and the study does not any more. */
    public static final String NO_LONGER = "no longer asked for";

    /** Whether a word says that what was measured keeps to what was predicted. */
    public static boolean isGood(String verdict) {
        return verdict.equals(KEEPS) || verdict.equals(PASSED);
    }

    /** From the least to the most that keeps to a prediction. */
    static String limits(Expectation expectation) {
        MeasurandKind kind = expectation.subject().kind();
        return kind == MeasurandKind.HAPPENED
                ? ""
                : value(kind, expectation.low()) + " to " + value(kind, expectation.high());
    }

    /** What stands beside the blank of a form. */
    public static String beside(Expectation expectation) {
        MeasurandKind kind = expectation.subject().kind();
        return "predicted "
                + value(kind, expectation.predicted())
                + " ("
                + limits(expectation)
                + ")";
    }

    /** An estimate, or that there is none and why. */
    static String estimate(FittedValue.BatteryValue of, FittedValue estimate) {
        return estimate.fold(known -> known(of, known), unknown -> unknown(of, unknown));
    }

    private static String known(FittedValue.BatteryValue of, Known known) {
        return number(of, known.value())
                + (known.half() > 0 ? " ±" + number(of, known.half()) + " (95 %)" : ", as given");
    }

    private static String number(FittedValue.BatteryValue of, double value) {
        return switch (of) {
            case CAPACITY -> Formats.fixed(value / 3600, 2) + " Ah";
            case RESISTANCE -> Formats.fixed(1000 * value, 2) + " mohm";
            case CHARGE -> Formats.fixed(100 * value, 1) + " %";
        };
    }

    private static String unknown(FittedValue.BatteryValue of, Unknown unknown) {
        return "not told by this log: "
                + unknown.mistakenFor()
                        .map(other -> "it cannot be told apart from " + name(other) + "; ")
                        .orElse("its voltages hardly hang on it; ")
                + remedy(of);
    }

    private static String remedy(FittedValue.BatteryValue of) {
        return switch (of) {
            case CAPACITY -> "discharge it further";
            case RESISTANCE -> "switch a second load on and off meanwhile";
            case CHARGE -> "discharge it further, or say with --charge how full it was";
        };
    }

    /** What is estimated. */
    static String name(FittedValue.BatteryValue of) {
        return switch (of) {
            case CAPACITY -> "capacity";
            case RESISTANCE -> "resistance";
            case CHARGE -> "charge at the first reading";
        };
    }
}
