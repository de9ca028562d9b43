package stillturning.desktop.viewmodel.decide;

import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import stillturning.model.goal.CriterionName;
import stillturning.model.goal.ValueScale;
import stillturning.quantity.Dimension;
import stillturning.quantity.MalformedQuantity;
import stillturning.quantity.Quantity;
import stillturning.report.drawing.plot.Ticks;

/**
 * From where to where the values of one criterion run, as texts to be edited.
 *
 * @param before as the study has it, stated or usual
 * @param acceptable as bad as could be accepted
 * @param enough as good as is needed
 */
public record ScaleField(ValueScale before, StringProperty acceptable, StringProperty enough) {

    private static final double SECONDS_PER_MINUTE = 60;

    /** What a text comes to, or what is wrong with it. */
    private record Reading(Optional<Double> value, String refusal) {}

    static ScaleField of(ValueScale scale) {
        return new ScaleField(
                scale,
                new SimpleStringProperty(text(scale.criterion(), scale.acceptable())),
                new SimpleStringProperty(text(scale.criterion(), scale.enough())));
    }

    /** Whether a text differs from what the study has. */
    public boolean moved() {
        return !acceptable.get().equals(text(before.criterion(), before.acceptable()))
                || !enough.get().equals(text(before.criterion(), before.enough()));
    }

    void reset() {
        acceptable.set(text(before.criterion(), before.acceptable()));
        enough.set(text(before.criterion(), before.enough()));
    }

    /** What is wrong with the texts and what would be right; empty if nothing is. */
    public String refusal() {
        Reading worst = read(acceptable.get());
        Reading best = read(enough.get());
        if (!worst.refusal.isEmpty() || !best.refusal.isEmpty()) {
            return worst.refusal.isEmpty() ? best.refusal : worst.refusal;
        }
        boolean runs = worst.value.flatMap(a -> best.value.map(b -> runs(a, b))).orElse(false);
        return runs
                ? ""
                : before.criterion().words()
                        + ": what is enough is no better than what is acceptable; write "
                        + (before.criterion().moreIsBetter() ? "more" : "less")
                        + " for enough";
    }

    private boolean runs(double worst, double best) {
        return before.criterion().moreIsBetter() ? best > worst : best < worst;
    }

    /** The scale as edited; as the study has it where nothing is edited or something is wrong. */
    ValueScale now() {
        if (!moved() || !refusal().isEmpty()) {
            return before;
        }
        double worst = read(acceptable.get()).value.orElse(before.acceptable());
        double best = read(enough.get()).value.orElse(before.enough());
        Optional<Double> halfway =
                before.halfway()
                        .filter(h -> h > Math.min(worst, best) && h < Math.max(worst, best));
        return ValueScale.stated(before.criterion(), worst, halfway, best);
    }

    private Reading read(String text) {
        try {
            double value =
                    switch (before.criterion()) {
                        case ENDURANCE -> Quantity.parse(text.strip(), Dimension.TIME).si();
                        case WEIGHT -> Quantity.parse(text.strip(), Dimension.MASS).si();
                        case ENGINE_STOPS, PILOT_NEEDED, COMPLEXITY, COST ->
                                Double.parseDouble(text.strip());
                    };
            return value >= 0 && Double.isFinite(value)
                    ? new Reading(Optional.of(value), "")
                    : refused(text, "write a number of at least 0");
        } catch (MalformedQuantity malformed) {
            return refused(text, String.valueOf(malformed.getMessage()));
        } catch (NumberFormatException noNumber) {
            return refused(text, "write a number");
        }
    }

    private Reading refused(String text, String why) {
        return new Reading(
                Optional.empty(),
                before.criterion().words() + ": \"" + text.strip() + "\": " + why);
    }

    /** As it is written into the study. */
    static String text(CriterionName criterion, double value) {
        return switch (criterion) {
            case ENDURANCE -> Ticks.text(value / SECONDS_PER_MINUTE) + " min";
            case WEIGHT -> Ticks.text(value) + " kg";
            case ENGINE_STOPS, PILOT_NEEDED, COMPLEXITY, COST -> Ticks.text(value);
        };
    }
}
