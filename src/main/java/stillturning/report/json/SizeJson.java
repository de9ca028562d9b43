package stillturning.report.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import stillturning.parts.Cable;
import stillturning.report.Cautions;
import stillturning.report.sizes.FindingWords;
import stillturning.sizing.BillRow;
import stillturning.sizing.Carried;
import stillturning.sizing.ContactSize;
import stillturning.sizing.CrankingSupply;
import stillturning.sizing.LoadAnalysis.Balance;
import stillturning.sizing.LoadAnalysis.ChargeStep;
import stillturning.sizing.LoadAnalysis.LoadRow;
import stillturning.sizing.LoadAnalysis.Sum;
import stillturning.sizing.ProtectorSize;
import stillturning.sizing.SizeFinding;
import stillturning.sizing.SizingReport;
import stillturning.sizing.WeightSheet;
import stillturning.sizing.WireSchedule.Circuit;
import stillturning.sizing.WireSchedule.Main;
import stillturning.sizing.WireSize;

/** The shape of a check of sizes in JSON. */
record SizeJson(int schemaVersion, String caution, String study, List<Sized> candidates) {

    /** One candidate. */
    record Sized(
            String id,
            List<Found> findings,
            Loads loads,
            Wires wires,
            List<Guarding> protectors,
            List<Contacts> contacts,
            List<Start> cranking,
            Carry carry) {}

    /** Something that is not as it should be; its numbers have the unit of the rule. */
    record Found(
            String gravity,
            String rule,
            String part,
            String other,
            @Nullable Double found,
            @Nullable Double allowed,
            String words,
            String mend) {}

    /** Loads and sources. */
    record Loads(List<Demand> demands, List<Phase> phases, List<Charge> charge) {}

    /** A load, and what it takes in each phase in which it runs. */
    record Demand(
            String load,
            @Nullable Double duty,
            @Nullable Double nominalAmps,
            Map<String, Taken> byPhase) {}

    /** What a load takes while it runs. */
    record Taken(@Nullable Double amps, @Nullable Double volts, @Nullable Double seconds) {}

    /** A phase; times are null where nothing limits them. */
    record Phase(
            String phase,
            Amount average,
            Amount allOn,
            @Nullable Double alternatorsCanAmps,
            @Nullable Double batteryOnlySeconds,
            @Nullable Double batteryOnlyAsPlannedSeconds) {}

    /** A sum over the aircraft. */
    record Amount(
            @Nullable Double nameplateAmps,
            @Nullable Double loadAmps,
            @Nullable Double alternatorAmps,
            @Nullable Double batteryAmps,
            @Nullable Double loadWatts,
            @Nullable Double lostWatts) {}

    /** A battery in a phase, charges from 0 to 1. */
    record Charge(String battery, String phase, @Nullable Double start, @Nullable Double end) {}

    /** Wires and what they drop. */
    record Wires(List<Line> wires, List<Drop> circuits, List<MainPower> mains) {}

    /** A wire; {@code needsAwg} is null where no size of the table does. */
    record Line(
            String wire,
            String from,
            String to,
            String awg,
            @Nullable Double metres,
            Current worst,
            May may,
            @Nullable String needsAwg) {}

    /** A current, and when it flows. */
    record Current(@Nullable Double amps, String phase, String failure) {}

    /** What a wire may carry and what guards it; empty and null where nothing does. */
    record May(
            @Nullable Double amps,
            @Nullable Double conductorCelsius,
            String guard,
            @Nullable Double guardAmps,
            boolean guardSuits) {}

    /** Drop of a circuit. */
    record Drop(
            String load,
            @Nullable Double amps,
            @Nullable Double metres,
            @Nullable Double volts,
            @Nullable Double limitVolts,
            @Nullable Double supplyVolts,
            @Nullable Double minimumVolts) {}

    /** Drop of main power wires. */
    record MainPower(
            String source,
            String bus,
            @Nullable Double amps,
            @Nullable Double volts,
            @Nullable Double limitVolts) {}

    /** A protector. */
    record Guarding(
            String protector,
            String kind,
            @Nullable Double ratedAmps,
            Current normal,
            Current worst,
            @Nullable Double boltedShortAmps,
            @Nullable Double interruptsAmps,
            List<String> wires) {}

    /** Contacts. */
    record Contacts(
            String contacts,
            Current carried,
            String nature,
            @Nullable Double neededAmps,
            @Nullable Double ratedAmps) {}

    /** The starting of the engine. */
    record Start(
            String conditions,
            boolean hard,
            boolean runs,
            @Nullable Double starterAmps,
            List<Fed> loads) {}

    /** A load while the starter turns. */
    record Fed(
            String load,
            @Nullable Double lowestVolts,
            @Nullable Double minimumVolts,
            boolean stops) {}

    /** Weight, moment and what to buy. */
    record Carry(
            @Nullable Double kilograms,
            @Nullable Double momentKilogramMetres,
            @Nullable Double withoutArmKilograms,
            List<Bill> bill) {}

    /** A line of the bill of materials. */
    record Bill(
            String item,
            String detail,
            @Nullable Double quantity,
            String unit,
            @Nullable Double spares,
            @Nullable Double kilograms,
            @Nullable Double price) {}

    static SizeJson of(String study, List<SizingReport> reports) {
        return new SizeJson(
                JsonReport.SCHEMA_VERSION,
                Cautions.SHORT,
                study,
                reports.stream().map(SizeJson::sized).toList());
    }

    private static Sized sized(SizingReport r) {
        return new Sized(
                r.candidate().id(),
                r.findings().stream().map(SizeJson::found).toList(),
                new Loads(
                        r.loads().loads().stream().map(SizeJson::demand).toList(),
                        r.loads().phases().stream().map(SizeJson::phase).toList(),
                        r.loads().charge().stream().map(SizeJson::charge).toList()),
                new Wires(
                        r.wires().wires().stream().map(SizeJson::line).toList(),
                        r.wires().circuits().stream().map(SizeJson::drop).toList(),
                        r.wires().mains().stream().map(SizeJson::main).toList()),
                r.devices().protectors().stream().map(SizeJson::guarding).toList(),
                r.devices().contacts().stream().map(SizeJson::contacts).toList(),
                r.cranking().stream().map(SizeJson::start).toList(),
                carry(r.purchase()));
    }

    private static Found found(SizeFinding f) {
        return new Found(
                JsonNumbers.kebab(f.rule().gravity()),
                JsonNumbers.kebab(f.rule()),
                f.part(),
                f.other(),
                number(f.found()),
                number(f.allowed()),
                FindingWords.wrong(f),
                FindingWords.mend(f));
    }

    private static Demand demand(LoadRow row) {
        Map<String, Taken> byPhase = new LinkedHashMap<>();
        row.at()
                .forEach(
                        (phase, t) ->
                                byPhase.put(
                                        phase,
                                        new Taken(
                                                number(t.amps()),
                                                number(t.volts()),
                                                number(t.seconds()))));
        return new Demand(row.load(), number(row.duty()), number(row.nominalAmps()), byPhase);
    }

    private static Phase phase(Balance b) {
        return new Phase(
                b.phase().name(),
                amount(b.average()),
                amount(b.full()),
                number(b.alternatorAmps()),
                number(b.batteryOnly().unaidedSeconds()),
                number(b.batteryOnly().plannedSeconds()));
    }

    private static Amount amount(Sum s) {
        return new Amount(
                number(s.nameplateAmps()),
                number(s.loadAmps()),
                number(s.generatedAmps()),
                number(s.batteryAmps()),
                number(s.watts().loads()),
                number(s.watts().lost()));
    }

    private static Charge charge(ChargeStep s) {
        return new Charge(s.battery(), s.phase(), number(s.start()), number(s.end()));
    }

    private static Line line(WireSize w) {
        return new Line(
                w.wire().id(),
                w.ends().from().toString(),
                w.ends().to().toString(),
                w.wire().cable().awg(),
                number(w.wire().metres()),
                current(w.worst()),
                new May(
                        number(w.can().amps()),
                        number(w.can().conductorCelsius()),
                        w.guard().map(WireSize.Guard::part).orElse(""),
                        w.guard().map(g -> number(g.ratedAmps())).orElse(null),
                        w.guard().map(WireSize.Guard::suits).orElse(false)),
                w.smallest().map(Cable::awg).orElse(null));
    }

    private static Current current(Carried c) {
        return new Current(number(c.amps()), c.phase(), c.failure());
    }

    private static Drop drop(Circuit c) {
        return new Drop(
                c.name(),
                number(c.amps()),
                number(c.metres()),
                number(c.drop().volts()),
                number(c.drop().limitVolts()),
                number(c.supply().volts()),
                number(c.supply().minimumVolts()));
    }

    private static MainPower main(Main m) {
        return new MainPower(
                m.source(),
                m.bus(),
                number(m.amps()),
                number(m.drop().volts()),
                number(m.drop().limitVolts()));
    }

    private static Guarding guarding(ProtectorSize p) {
        return new Guarding(
                p.name(),
                JsonNumbers.kebab(p.kind()),
                number(p.ratedAmps()),
                current(p.normal()),
                current(p.worst()),
                number(p.fault().amps()),
                number(p.fault().canInterruptAmps()),
                p.wires());
    }

    private static Contacts contacts(ContactSize c) {
        return new Contacts(
                c.name(),
                current(c.carried()),
                JsonNumbers.kebab(c.nature()),
                number(c.neededAmps()),
                number(c.ratedAmps()));
    }

    private static Start start(CrankingSupply c) {
        return new Start(
                c.conditions(),
                c.hard(),
                c.runs(),
                number(c.starterAmps()),
                c.loads().stream().map(SizeJson::fed).toList());
    }

    private static Fed fed(CrankingSupply.Fed f) {
        return new Fed(f.load(), number(f.volts()), number(f.minimumVolts()), f.stops());
    }

    private static Carry carry(SizingReport.Purchase p) {
        WeightSheet weight = p.weight();
        return new Carry(
                number(weight.kilograms()),
                number(weight.momentKilogramMetres()),
                number(weight.withoutArmKilograms()),
                p.bill().stream().map(SizeJson::bill).toList());
    }

    private static Bill bill(BillRow b) {
        return new Bill(
                b.item(),
                b.detail(),
                number(b.quantity()),
                JsonNumbers.kebab(b.unit()),
                number(b.spares()),
                number(b.kilograms()),
                number(b.price()));
    }

    private static @Nullable Double number(double value) {
        return JsonNumbers.number(value);
    }

    private static @Nullable Double number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : null;
    }
}
