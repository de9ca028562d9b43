package stillturning.files.entry;

import java.util.List;
import java.util.Optional;
import stillturning.parts.element.Demand;
import stillturning.model.Installation.Nature;
import stillturning.quantity.Dimension;
import stillturning.yaml.Bounds;
import stillturning.yaml.Default;
import stillturning.yaml.Given;
import stillturning.yaml.Unit;
import stillturning.yaml.Words;

/** A load as written in the study's file. */
@Words("Something that needs electricity.")
public record LoadEntry(
        @Words("What a person calls it.") Optional<String> label,
        @Words("Zone where it sits.") String zone,
        @Words("Current at the study's nominal voltage.")
                @Unit(value = Dimension.CURRENT, above = "0 A")
                Given draws,
        @Words("How its current answers to the voltage.") @Default("constant-power") Demand.Kind as,
        @Words("Works at or above this voltage.")
                @Default("9 V")
                @Unit(value = Dimension.VOLTAGE, above = "0 V")
                Given minimum,
        @Words("Once stopped, comes back at or above this voltage; its minimum if not written.")
                @Unit(value = Dimension.VOLTAGE, above = "0 V")
                Optional<Given> restart,
        @Words("Keeps working this long below its minimum.")
                @Default("20 ms")
                @Unit(value = Dimension.TIME, least = "0 s")
                Given rideThrough,
        @Words("Time from restart voltage to working again.")
                @Default("0 s")
                @Unit(value = Dimension.TIME, least = "0 s")
                Given boot,
        @Words("Is lost when its voltage exceeds this.")
                @Unit(value = Dimension.VOLTAGE, above = "0 V")
                Optional<Given> withstand,
        @Words("... for longer than this.")
                @Default("100 ms")
                @Unit(value = Dimension.TIME, least = "0 s")
                Given withstandFor,
        @Words("Names of its supply inputs, where it has more than one.") @Default("[plus]")
                List<String> inputs,
        @Words("Phases in which it runs; all of them if not written.") @Default("[]")
                List<String> phases,
        @Words("Share of the time that it runs in those phases.")
                @Default("100 %")
                @Unit(value = Dimension.RATIO, above = "0 %", most = "100 %")
                Given duty,
        @Words("Rank in which a pilot may switch it off, 1 first; never if not written.")
                @Bounds(least = 1, most = 99)
                Optional<Integer> shed,
        @Words("What it is to the contacts that switch it.") @Default("inductive")
                Nature switchedAs,
        @Words("Current when it is switched on, if more than it draws for long.")
                @Unit(value = Dimension.CURRENT, above = "0 A")
                Optional<Given> inrush,
        @Words("... for so long.") @Default("100 ms") @Unit(value = Dimension.TIME, above = "0 s")
                Given inrushFor,
        @Words("Whether a pilot notices without any lamp that it has stopped.") @Default("no")
                boolean noticed) {}
