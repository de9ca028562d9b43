package stillturning.report.json;

import stillturning.assess.ranges.EnduranceRange;
import stillturning.assess.ranges.EnduranceRange.Contributor;
import stillturning.story.Endurance;

/** How sure an endurance is. */
final class RangeJson {

    private static final JsonShape<Endurance> ENDURANCE =
            JsonShape.<Endurance>named("endurance")
                    .number("seconds", Endurance::seconds)
                    .says("Null where nothing ends it.")
                    .flag("limited", JsonNumbers::limited)
                    .flag("isAtLeast", Endurance.AtLeast.class::isInstance)
                    .says("Whether the computation ended before the engine.");

    private static final JsonShape<Contributor> CONTRIBUTOR =
            JsonShape.<Contributor>named("contributor")
                    .text("file", c -> c.input().file())
                    .text("path", c -> c.input().name())
                    .text("value", c -> c.input().text())
                    .number("share", Contributor::share)
                    .says("Share of the variance of the endurance's ranks, 0 to 1.")
                    .flag("lengthens", Contributor::lengthens)
                    .says("Whether more of it means longer.");

    static final JsonDocument<EnduranceRange> RANGE =
            new JsonDocument<>(
                    "How sure an endurance is",
                    "One failure in one candidate, told with every uncertain value anywhere in its"
                            + " range.",
                    JsonDocument.<EnduranceRange>start()
                            .text("failure", EnduranceRange::failure)
                            .whole("samples", EnduranceRange::told)
                            .says("Samples that could be computed.")
                            .whole("inputs", EnduranceRange::inputs)
                            .says("Values that were varied.")
                            .field("low", ENDURANCE, r -> r.quantiles().low())
                            .says("One sample in twenty lasts no longer.")
                            .field("median", ENDURANCE, r -> r.quantiles().median())
                            .says("Half of the samples last no longer.")
                            .field("high", ENDURANCE, r -> r.quantiles().high())
                            .says("Nineteen samples in twenty last no longer.")
                            .map(
                                    "outcomes",
                                    JsonTypes.WHOLE,
                                    r -> JsonNumbers.byWord(r.outcomes(), n -> n))
                            .says("Number of samples by outcome, worst first.")
                            .whole("notLimited", EnduranceRange::notLimited)
                            .says("Samples in which nothing ends the engine.")
                            .list("contributors", CONTRIBUTOR, EnduranceRange::contributors)
                            .says("Values that the endurance hangs on, the greatest share first.")
                            .texts("untold", EnduranceRange::untold)
                            .says("Samples that could not be computed, each with its reason.")
                            .texts("brokenOff", EnduranceRange::brokenOff)
                            .says(
                                    "Samples that could only be computed up to a moment, each with"
                                            + " its reason; they count as engine lost."));

    private RangeJson() {}
}
