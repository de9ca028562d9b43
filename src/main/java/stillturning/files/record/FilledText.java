package stillturning.files.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.files.record.Blank.Notation;
import stillturning.files.record.FilledForm.FilledValue;
import stillturning.quantity.Dimension;
import stillturning.quantity.MalformedQuantity;
import stillturning.quantity.Quantity;
import stillturning.yaml.Excerpt;
import stillturning.yaml.notation.TextForm.FaultReceiver;

/** Reads what somebody wrote into a blank. */
record FilledText(Notation notation, FaultReceiver faults) {

    private static final String AT = " at ";

    /** The values, or none after a fault was told. */
    List<FilledValue> read(String text) {
        return switch (notation) {
            case RESULT -> result(text).map(List::of).orElse(List.of());
            case VOLTS, AMPS, SECONDS, CAPACITY, OHMS ->
                    quantity(text, 0, notation.dimension())
                            .map(v -> List.of(new FilledValue(v, OptionalDouble.empty())))
                            .orElse(List.of());
            case AMPS_AT_VOLTS -> pairs(text, Dimension.VOLTAGE);
            case VOLTS_AT_AMPS -> pairs(text, Dimension.CURRENT);
        };
    }

    private Optional<FilledValue> result(String text) {
        boolean passed = text.strip().equals("passed");
        if (!passed && !text.strip().equals("failed")) {
            faults.at(
                    0,
                    "\"" + Excerpt.of(text) + "\" is no result",
                    "write passed or failed, or leave it empty");
            return Optional.empty();
        }
        return Optional.of(new FilledValue(passed ? 1 : 0, OptionalDouble.empty()));
    }

    private List<FilledValue> pairs(String text, Dimension beside) {
        List<FilledValue> all = new ArrayList<>();
        int from = 0;
        boolean sound = true;
        for (String one : text.split(",", -1)) {
            Optional<FilledValue> pair = pair(one, from, beside);
            pair.ifPresent(all::add);
            sound &= pair.isPresent();
            from += one.length() + 1;
        }
        return sound ? all : List.of();
    }

    private Optional<FilledValue> pair(String text, int from, Dimension beside) {
        int at = text.indexOf(AT);
        if (at < 0) {
            if (notation == Notation.AMPS_AT_VOLTS) {
                return quantity(text, from, notation.dimension())
                        .map(v -> new FilledValue(v, OptionalDouble.empty()));
            }
            faults.at(
                    from,
                    "\"" + Excerpt.of(text.strip()) + "\" does not say at which current",
                    "write it as " + notation.example());
            return Optional.empty();
        }
        int second = at + AT.length();
        Optional<Double> value = quantity(text.substring(0, at), from, notation.dimension());
        Optional<Double> other = quantity(text.substring(second), from + second, beside);
        if (other.isPresent() && !(other.get() > 0)) {
            faults.at(
                    from + second,
                    "\"" + Excerpt.of(text.substring(second)) + "\" is not above 0",
                    "write it as " + notation.example());
            return Optional.empty();
        }
        return value.isPresent() && other.isPresent()
                ? Optional.of(new FilledValue(value.get(), OptionalDouble.of(other.get())))
                : Optional.empty();
    }

    private Optional<Double> quantity(String text, int from, Dimension dimension) {
        String bare = text.strip();
        int start = from + text.indexOf(bare);
        try {
            double value = Quantity.parse(bare, dimension).si();
            if (value < 0 && !(notation == Notation.VOLTS || notation == Notation.AMPS)) {
                faults.at(
                        start,
                        "\"" + Excerpt.of(bare) + "\" is below 0",
                        "write it as " + notation.example());
                return Optional.empty();
            }
            return Optional.of(value);
        } catch (MalformedQuantity malformed) {
            faults.at(start, malformed);
            return Optional.empty();
        }
    }
}
