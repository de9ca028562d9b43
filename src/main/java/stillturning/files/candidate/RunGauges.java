package stillturning.files.candidate;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import stillturning.files.candidate.CableSizes.Duty;
import stillturning.files.candidate.RunBuilder.PlannedRun;
import stillturning.files.candidate.RunBuilder.RunContext;
import stillturning.files.candidate.RunBuilder.Stop;
import stillturning.files.candidate.RunBuilder.WireUse;
import stillturning.files.entry.PartEntry;
import stillturning.files.entry.RunText.NewWire;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.Terminal;
import stillturning.parts.Cable;
import stillturning.parts.Protection;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.quantity.WireGauge;

/** Chooses the gauges of one run's wires. */
final class RunGauges {

    private final RunContext site;
    private final PlannedRun line;
    private final WireUse use;
    private final List<Stop> stops;
    private final Map<String, PartEntry> entries;

    /**
     * @param entries what the run makes, by name; gets the gauges that are chosen
     */
    RunGauges(
            RunContext site,
            PlannedRun line,
            WireUse use,
            List<Stop> stops,
            Map<String, PartEntry> entries) {
        this.site = site;
        this.line = line;
        this.use = use;
        this.stops = stops;
        this.entries = entries;
    }

    /** Chooses the gauges that are open; false after a problem was told. */
    boolean choose() {
        List<Stop> open = stops.stream().filter(s -> gaugeOf(s).isEmpty() && isWire(s)).toList();
        if (open.isEmpty()) {
            return true;
        }
        Optional<WireGauge> gauge = use.gauge().or(() -> automaticGauge(open.get(0)));
        for (Stop stop : open) {
            if (gauge.isPresent()) {
                entries.computeIfPresent(
                        stop.id(), (id, entry) -> RunBuilder.ofGauge(entry, gauge.get()));
            }
        }
        return gauge.isPresent();
    }

    private Optional<WireGauge> automaticGauge(Stop first) {
        Duty duty = duty();
        Spot at = line.spot(first.item().orElseThrow());
        if (!duty.isBounded()) {
            site.report()
                    .problem(
                            at,
                            "nothing limits the current of this run, so its gauge cannot be chosen",
                            "write it, such as wire AWG 4");
            return Optional.empty();
        }
        Optional<Cable> size = CableSizes.thinnest(duty);
        if (size.isEmpty()) {
            String bounds =
                    Stream.concat(
                                    duty.protector().stream().map(CableSizes::inWords),
                                    duty.amps().stream()
                                            .map(
                                                    a ->
                                                            "current of "
                                                                    + Quantity.of(
                                                                                    a,
                                                                                    Dimension
                                                                                            .CURRENT)
                                                                            .written()))
                            .reduce((one, other) -> one + " and " + other)
                            .orElse("");
            site.report()
                    .problem(
                            at,
                            "no wire of the table suits a " + bounds,
                            "write the gauge, such as wire AWG 2/0");
        }
        return size.map(CableSizes::gauge);
    }

    private Duty duty() {
        double metres =
                stops.stream().filter(RunGauges::isWire).mapToDouble(this::metresOf).sum()
                        + use.backMetres().orElse(0.0);
        OptionalDouble sourceAmps =
                site.assembly()
                        .part(line.from().part())
                        .map(p -> p.mostAmps(line.from().name()))
                        .orElse(OptionalDouble.empty());
        return new Duty(
                protection(),
                use.amps().or(() -> sourceAmps.stream().boxed().findFirst()),
                use.backMetres().isPresent() ? metres : 0,
                site.frame().aircraft().nominalVolts());
    }

    /** The smallest protector of the run, or what it starts from. */
    private Optional<Protection> protection() {
        Stream<Protection> inside =
                stops.stream()
                        .flatMap(
                                s ->
                                        s.item().isPresent()
                                                ? made(s).stream()
                                                : standing(s.out()).stream());
        return Stream.concat(standing(line.from()).stream(), inside)
                .min(Comparator.comparingDouble(Protection::ratedAmps));
    }

    private Optional<Protection> made(Stop stop) {
        return Optional.ofNullable(entries.get(stop.id()))
                .filter(entry -> entry.open().isEmpty())
                .flatMap(entry -> entry.complete().protection());
    }

    private Optional<Protection> standing(Terminal terminal) {
        return site.assembly()
                .part(terminal.part())
                .flatMap(part -> part.protection(terminal.name()));
    }

    /** Remarks on wires that their protector does not protect, and on a feed without any. */
    void remarkThinWires() {
        Optional<Protection> protection = protection();
        for (Stop stop : stops) {
            Optional<Cable> size = gaugeOf(stop).flatMap(Cable::of);
            if (size.isPresent() && protection.filter(p -> !p.suits(size.get())).isPresent()) {
                site.report()
                        .remark(
                                line.spot(stop.item().orElseThrow()),
                                "the wire is thinner than AC 43.13-1B table 11-3 has it for a "
                                        + CableSizes.inWords(protection.get()));
            }
        }
        if (use.backMetres().isPresent() && protection.isEmpty() && !endsAtTheStarter()) {
            site.report().remark(new Spot(line.path(), 0), "nothing protects this feed");
        }
    }

    /** The main circuit of the starter goes without protector by custom: 14 CFR 23.1357. */
    private boolean endsAtTheStarter() {
        return site.frame()
                .aircraft()
                .engine()
                .starting()
                .starter()
                .filter(line.to().part()::equals)
                .isPresent();
    }

    /** Gauge of each wire. */
    List<WireGauge> all() {
        return stops.stream().map(this::gaugeOf).flatMap(Optional::stream).toList();
    }

    private static boolean isWire(Stop stop) {
        return stop.item().filter(NewWire.class::isInstance).isPresent();
    }

    private Optional<WireGauge> gaugeOf(Stop stop) {
        return Optional.ofNullable(entries.get(stop.id())).flatMap(RunBuilder::gaugeOf);
    }

    private double metresOf(Stop stop) {
        return Optional.ofNullable(entries.get(stop.id()))
                .flatMap(entry -> entry.values().si("length"))
                .orElse(0.0);
    }
}
