package stillturning.files.edit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.quantity.Dimension;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.notation.Given;

/** What a study's file says of its loads, zones and voltage, as far as it can be read. */
public final class StudyOutline {

    private static final double TWICE_ABOVE_VOLTS = 20;

    private final WrittenKeys study;

    public StudyOutline(YamlDocument study) {
        this.study = WrittenKeys.in(study);
    }

    /** The loads. */
    public Set<String> names() {
        return study.under("loads").fields().keySet();
    }

    /** The zones, in order. */
    public List<String> zones() {
        return List.copyOf(study.under("zones").fields().keySet());
    }

    /** Where a load is, if that is said. */
    public Optional<String> zone(String load) {
        return study.under("loads").under(load).text("zone");
    }

    /** Names of a load's supply inputs; one that has no names for them has one, if it is fed. */
    public List<String> inputs(String load) {
        if (study.under("loads")
                .under(load)
                .text("as")
                .filter("self-powered"::equals)
                .isPresent()) {
            return List.of();
        }
        List<String> inputs = study.under("loads").under(load).under("inputs").itemTexts();
        return inputs.isEmpty() ? List.of("plus") : inputs;
    }

    /** What a load draws (A), if that can be read. */
    public Optional<Double> amps(String load) {
        return study.under("loads")
                .under(load)
                .text("draws")
                .flatMap(text -> read(text, Dimension.CURRENT));
    }

    /** Whether a load cranks the engine. */
    public boolean isStarter(String load) {
        return study.under("engine").text("starter").filter(load::equals).isPresent();
    }

    /** Whether the aircraft has twice the voltage that the catalogue is for. */
    public boolean isTwiceTheVoltage() {
        return study.text("nominal")
                .flatMap(text -> read(text, Dimension.VOLTAGE))
                .filter(volts -> volts > TWICE_ABOVE_VOLTS)
                .isPresent();
    }

    private static Optional<Double> read(String text, Dimension dimension) {
        return Given.read(text, dimension, (offset, wrong, right) -> {})
                .map(given -> given.quantity().si());
    }

    /** All that stands in the file. */
    public WrittenKeys written() {
        return study;
    }
}
