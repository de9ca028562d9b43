package stillturning.report.json;

import static stillturning.report.json.JsonTypes.MAYBE;

import java.util.List;
import stillturning.model.Installation.Nature;
import stillturning.parts.Cable;
import stillturning.quantity.UnitSystem;
import stillturning.report.sizes.FindingWords;
import stillturning.report.sizes.LoadTables;
import stillturning.report.sizes.Purchases;
import stillturning.report.sizes.RouteTables;
import stillturning.report.sizes.WireTables;
import stillturning.sizing.result.Carried;
import stillturning.sizing.result.ContactSize;
import stillturning.sizing.result.CrankingSupply;
import stillturning.sizing.result.CrankingSupply.Fed;
import stillturning.sizing.result.LoadAnalysis;
import stillturning.sizing.result.LoadAnalysis.LoadRow;
import stillturning.sizing.result.LoadAnalysis.PhaseBalance;
import stillturning.sizing.result.LoadAnalysis.Sum;
import stillturning.sizing.result.LoadAnalysis.Taken;
import stillturning.sizing.result.ProtectorSize;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizingReport;
import stillturning.sizing.result.SizingReport.Purchase;
import stillturning.sizing.result.WireSchedule;
import stillturning.sizing.result.WireSize;
import stillturning.sizing.result.WireSize.WireGuard;

/** A check of sizes. */
final class SizesJson {

    /** Reports of some candidates of a study. */
    record Sized(String study, List<SizingReport> reports) {}

    private static final JsonShape<SizeFinding> FINDING =
            JsonShape.<SizeFinding>named("finding")
                    .word("gravity", Rule.Gravity.class, f -> f.rule().gravity())
                    .word("rule", Rule.class, SizeFinding::rule)
                    .text("part", SizeFinding::part)
                    .text("other", SizeFinding::other)
                    .says("What else has to do with it; may be empty.")
                    .number("found", SizeFinding::found)
                    .number("allowed", SizeFinding::allowed)
                    .text("words", FindingWords::wrong)
                    .text("mend", FindingWords::mend);

    private static final JsonShape<Taken> TAKEN =
            JsonShape.<Taken>named("taken")
                    .number("amps", Taken::amps)
                    .number("volts", Taken::volts)
                    .number("seconds", Taken::seconds);

    private static final JsonShape<LoadRow> DEMAND =
            JsonShape.<LoadRow>named("demand")
                    .text("load", LoadRow::load)
                    .number("duty", LoadRow::duty)
                    .number("nominalAmps", LoadRow::nominalAmps)
                    .map("byPhase", TAKEN, LoadRow::at);

    private static final JsonShape<Sum> SUM =
            JsonShape.<Sum>named("sum")
                    .number("nameplateAmps", Sum::nameplateAmps)
                    .number("loadAmps", Sum::loadAmps)
                    .number("alternatorAmps", Sum::generatedAmps)
                    .number("batteryAmps", Sum::batteryAmps)
                    .number("loadWatts", s -> s.watts().loads())
                    .number("lostWatts", s -> s.watts().lost());

    private static final JsonShape<PhaseBalance> PHASE =
            JsonShape.<PhaseBalance>named("phase")
                    .text("phase", b -> b.phase().name())
                    .field("average", SUM, PhaseBalance::average)
                    .field("allOn", SUM, PhaseBalance::full)
                    .number("alternatorsCanAmps", PhaseBalance::alternatorAmps)
                    .number("batteryOnlySeconds", b -> b.batteryOnly().unaidedSeconds())
                    .says("0 while the engine is started; null where nothing limits it.")
                    .number("batteryOnlyAsPlannedSeconds", b -> b.batteryOnly().plannedSeconds());

    private static final JsonShape<LoadAnalysis> LOADS =
            JsonShape.<LoadAnalysis>named("loads")
                    .list("demands", DEMAND, LoadAnalysis::loads)
                    .list("phases", PHASE, LoadAnalysis::phases)
                    .rows("charge", LoadTables.CHARGE, LoadAnalysis::charge);

    private static final JsonShape<Carried> CURRENT =
            JsonShape.<Carried>named("current")
                    .number("amps", Carried::amps)
                    .text("phase", Carried::phase)
                    .text("failure", Carried::failure)
                    .says("Empty with nothing wrong.");

    private static final JsonShape<WireSize> MAY =
            JsonShape.<WireSize>named("may")
                    .number("amps", w -> w.can().amps())
                    .number("conductorCelsius", w -> w.can().conductorCelsius())
                    .text("guard", w -> w.guard().map(WireGuard::part).orElse(""))
                    .maybe("guardAmps", JsonTypes.NUMBER, w -> w.guard().map(WireGuard::ratedAmps))
                    .flag("guardSuits", w -> w.guard().filter(WireGuard::suits).isPresent());

    private static final JsonShape<WireSize> WIRE =
            JsonShape.<WireSize>named("wire")
                    .text("wire", w -> w.wire().id())
                    .text("from", w -> w.ends().from().toString())
                    .text("to", w -> w.ends().to().toString())
                    .text("awg", w -> w.wire().cable().awg())
                    .number("metres", w -> w.wire().metres())
                    .field("worst", CURRENT, WireSize::worst)
                    .field("may", MAY, w -> w)
                    .maybe("needsAwg", JsonTypes.TEXT, w -> w.smallest().map(Cable::awg))
                    .says("The thinnest size that meets every rule; null where none does.");

    private static final JsonShape<WireSchedule> WIRES =
            JsonShape.<WireSchedule>named("wires")
                    .list("wires", WIRE, WireSchedule::wires)
                    .rows("circuits", WireTables.DROPS, WireSchedule::circuits)
                    .rows("mains", WireTables.MAINS, WireSchedule::mains)
                    .rows("passages", RouteTables.PASSAGES, WireSchedule::passages);

    private static final JsonShape<ProtectorSize> PROTECTOR =
            JsonShape.<ProtectorSize>named("protector")
                    .text("protector", ProtectorSize::name)
                    .word("kind", ProtectorSize.ProtectorKind.class, ProtectorSize::kind)
                    .number("ratedAmps", ProtectorSize::ratedAmps)
                    .field("normal", CURRENT, ProtectorSize::normal)
                    .field("worst", CURRENT, ProtectorSize::worst)
                    .field("boltedShortAmps", MAYBE, p -> p.fault().amps())
                    .field("interruptsAmps", MAYBE, p -> p.fault().canInterruptAmps())
                    .texts("wires", ProtectorSize::wires);

    private static final JsonShape<ContactSize> CONTACTS =
            JsonShape.<ContactSize>named("contacts")
                    .text("contacts", ContactSize::name)
                    .field("carried", CURRENT, ContactSize::carried)
                    .word("nature", Nature.class, ContactSize::nature)
                    .number("neededAmps", ContactSize::neededAmps)
                    .field("ratedAmps", MAYBE, ContactSize::ratedAmps);

    private static final JsonShape<Fed> FED =
            JsonShape.<Fed>named("fed")
                    .text("load", Fed::load)
                    .number("lowestVolts", Fed::volts)
                    .number("minimumVolts", Fed::minimumVolts)
                    .flag("stops", Fed::stops);

    private static final JsonShape<CrankingSupply> START =
            JsonShape.<CrankingSupply>named("start")
                    .text("conditions", CrankingSupply::conditions)
                    .flag("hard", CrankingSupply::hard)
                    .flag("runs", CrankingSupply::runs)
                    .number("starterAmps", CrankingSupply::starterAmps)
                    .list("loads", FED, CrankingSupply::loads);

    private static final JsonShape<Purchase> CARRY =
            JsonShape.<Purchase>named("carry")
                    .number("kilograms", p -> p.weight().kilograms())
                    .number("momentKilogramMetres", p -> p.weight().momentKilogramMetres())
                    .number("withoutArmKilograms", p -> p.weight().withoutArmKilograms())
                    .rows("bill", Purchases.billColumns(UnitSystem.METRIC), Purchase::bill);

    private static final JsonShape<SizingReport> CANDIDATE =
            JsonShape.<SizingReport>named("candidate")
                    .text("id", r -> r.candidate().id())
                    .list("findings", FINDING, SizingReport::findings)
                    .says("Gravest first; found and allowed carry the unit of the rule.")
                    .field("loads", LOADS, SizingReport::loads)
                    .field("wires", WIRES, SizingReport::wires)
                    .list("protectors", PROTECTOR, r -> r.devices().protectors())
                    .list("contacts", CONTACTS, r -> r.devices().contacts())
                    .list("cranking", START, SizingReport::cranking)
                    .field("carry", CARRY, SizingReport::purchase);

    static final JsonDocument<Sized> SIZES =
            new JsonDocument<>(
                    "The sizes of candidates",
                    "Load analysis, wires, protectors, contacts, starting, weight and what to buy."
                            + " SI units stand in the names.",
                    JsonDocument.<Sized>start()
                            .text("study", Sized::study)
                            .list("candidates", CANDIDATE, Sized::reports));

    private SizesJson() {}
}
