package stillturning.files.entry;

import java.util.List;
import java.util.Optional;
import stillturning.model.Installation.Nature;
import stillturning.parts.element.Demand;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Bounds;
import stillturning.quantity.field.Default;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.MeasuredBy;
import stillturning.quantity.field.OfDimension;
import stillturning.yaml.notation.Given;

/** A load as written in the study's file. */
@Describes("Something that needs electricity.")
public record LoadEntry(
        @Describes("What a person calls it.") Optional<String> label,
        @Describes("Zone where it sits.") String zone,
        @Describes("Current at the study's nominal voltage; left out of what is self-powered.")
                @OfDimension(value = Dimension.CURRENT, above = "0 A")
                @MeasuredBy("a clamp meter on its feed at the voltage of the bus")
                Optional<Given> draws,
        @Describes("How its current answers to the voltage; or that it is self-powered.")
                @Default("constant-power")
                Demand.DemandKind as,
        @Describes("Works at or above this voltage.")
                @Default("9 V")
                @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                @MeasuredBy("lower a bench supply at its terminals until it stops working")
                Given minimum,
        @Describes("Once stopped, comes back at or above this voltage; its minimum if not written.")
                @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                @MeasuredBy("raise a bench supply from there until it works again")
                Optional<Given> restart,
        @Describes("Keeps working this long below its minimum.")
                @Default("20 ms")
                @OfDimension(value = Dimension.TIME, least = "0 s")
                @MeasuredBy(
                        "interrupt its bench supply for longer and longer until it stops working")
                Given rideThrough,
        @Describes("Keeps working this long on a battery of its own once its feed is lost.")
                @OfDimension(value = Dimension.TIME, above = "0 s")
                @MeasuredBy("take its feed away and time it")
                Optional<Given> ownBattery,
        @Describes("... and that is full again after this long with its feed; 3 h if not written.")
                @OfDimension(value = Dimension.TIME, above = "0 s")
                Optional<Given> recharges,
        @Describes("Time from restart voltage to working again.")
                @Default("0 s")
                @OfDimension(value = Dimension.TIME, least = "0 s")
                @MeasuredBy("switch it on and time it until it works")
                Given boot,
        @Describes("Is lost when its voltage exceeds this.")
                @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                @MeasuredBy("its maker's sheet: do not try it on the aircraft")
                Optional<Given> withstand,
        @Describes("... for longer than this.")
                @Default("100 ms")
                @OfDimension(value = Dimension.TIME, least = "0 s")
                @MeasuredBy("its maker's sheet: do not try it on the aircraft")
                Given withstandFor,
        @Describes("Names of its supply inputs, where it has more than one.") @Default("[plus]")
                List<String> inputs,
        @Describes("Phases in which it runs; all of them if not written.") @Default("[]")
                List<String> phases,
        @Describes("Share of the time that it runs in those phases.")
                @Default("100 %")
                @OfDimension(value = Dimension.RATIO, above = "0 %", most = "100 %")
                @MeasuredBy("note in a few flights how long it runs")
                Given duty,
        @Describes("Rank in which a pilot may switch it off, 1 first; never if not written.")
                @Bounds(least = 1, most = 99)
                Optional<Integer> shed,
        @Describes("What it is to the contacts that switch it.") @Default("inductive")
                Nature switchedAs,
        @Describes("Current when it is switched on, if more than it draws for long.")
                @OfDimension(value = Dimension.CURRENT, above = "0 A")
                @MeasuredBy("a clamp meter that holds the peak, while it is switched on")
                Optional<Given> inrush,
        @Describes("... for so long.")
                @Default("100 ms")
                @OfDimension(value = Dimension.TIME, above = "0 s")
                @MeasuredBy("a current probe and an oscilloscope, while it is switched on")
                Given inrushFor,
        @Describes(
                        "Whether a pilot notices without any lamp that it has stopped, or works on"
                                + " its own battery.")
                @Default("no")
                boolean noticed) {}
