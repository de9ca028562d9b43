package stillturning.report.sizes;

import java.util.Locale;
import stillturning.model.Candidate;
import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;
import stillturning.report.table.Unit;
import stillturning.sizing.result.Carried;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizingReport;

/** A finding in words: what is wrong, and what mends it. */
public final class FindingWords {

    private static final String HOTTER =
            "; where it lies it is hotter than its insulation stands, without any current";

    private FindingWords() {}

    /** How grave it is, in one word. */
    public static String gravity(Rule.Gravity gravity) {
        return switch (gravity) {
            case WRONG -> "WRONG";
            case LOOK -> "look";
            case NOTE -> "note";
        };
    }

    /** What it is about; a wire with its size and length in metres. */
    public static String about(SizingReport report, SizeFinding f) {
        return about(report, f, UnitSystem.METRIC);
    }

    /** What it is about; a wire with its size and length. */
    public static String about(SizingReport report, SizeFinding f, UnitSystem system) {
        return report.wires().wires().stream()
                .filter(w -> w.wire().id().equals(f.part()))
                .map(
                        w ->
                                f.part()
                                        + ", AWG "
                                        + w.wire().cable().awg()
                                        + ", "
                                        + Unit.LENGTH.withSign(w.wire().metres(), system))
                .findFirst()
                .orElseGet(() -> about(f));
    }

    /** What it is about, where no wire has been laid yet; a wire with its size. */
    public static String about(Candidate candidate, SizeFinding f) {
        return candidate
                .wire(f.part())
                .map(wire -> f.part() + ", AWG " + wire.cable().awg())
                .orElseGet(() -> about(f));
    }

    private static String about(SizeFinding f) {
        return switch (f.rule()) {
            case ALTERNATOR, ALTERNATOR_HELD, ALTERNATOR_SHARE -> "alternators";
            case MAIN_POWER -> f.part() + " to " + f.other();
            case ENGINE_DUTY,
                    ENGINE_MARGIN,
                    PROTECTS_NOTHING,
                    AMPACITY,
                    UNPROTECTED,
                    STRAY_RETURN,
                    CHART,
                    HEAT,
                    INTERRUPT,
                    DUTY,
                    INRUSH,
                    CRANKING_DUTY,
                    DROP,
                    MINIMUM,
                    OFF,
                    CRANKING,
                    CONTACT,
                    CRANKING_COLD,
                    CHARGE,
                    CHARGE_HELD,
                    CHARGE_APART,
                    EMPTIED,
                    GUARD_LOW,
                    OVERCHARGED,
                    CHARGE_CURRENT,
                    HEAT_IF_SLOW,
                    DUTY_AFTER_FAILURE,
                    UNRATED,
                    UNPROTECTED_BY_CUSTOM ->
                    f.part();
        };
    }

    /** What is wrong. */
    public static String wrong(SizeFinding f) {
        String when = when(f.when());
        String found = amps(f.found());
        String allowed = amps(f.allowed());
        return switch (f.rule()) {
            case PROTECTS_NOTHING -> protectsNothing(f);
            case AMPACITY ->
                    tooHot(f)
                            ? "carries " + found + when + HOTTER
                            : "carries " + found + when + "; where it lies it may carry " + allowed;
            case UNPROTECTED -> "no protector ends a short in time: " + flows(f);
            case STRAY_RETURN -> strayReturn(f);
            case UNPROTECTED_BY_CUSTOM -> "has no protector, by custom: " + flows(f);
            case CHART -> chart(f);
            case HEAT -> shortHeats(f);
            case HEAT_IF_SLOW ->
                    shortHeats(f)
                            + ", if that is as slow as its class allows"
                            + (f.allowed() > 1 ? others(f.allowed() - 1) : "");
            case MAIN_POWER -> mainPower(f);
            case DROP -> drop(f);
            case GUARD_LOW -> actsAnyway(f);
            case OVERCHARGED -> overcharged(f);
            case MINIMUM -> minimum(f);
            case OFF -> "gets nothing" + when + ": what leads to it is switched off or open";
            case CRANKING, CRANKING_COLD -> cranking(f);
            case INTERRUPT ->
                    "a bolted short behind it drives " + found + "; it interrupts " + allowed;
            case ENGINE_DUTY -> overRating(f) + ", and the engine stops when it opens";
            case ENGINE_MARGIN -> nearRating(f);
            case DUTY, DUTY_AFTER_FAILURE -> overRating(f);
            case INRUSH, CRANKING_DUTY -> letsThrough(f);
            case CONTACT -> contact(f);
            case ALTERNATOR ->
                    averages(f) + "; alternators give " + allowed + ", batteries the rest";
            case ALTERNATOR_HELD ->
                    averages(f)
                            + "; alternators give "
                            + allowed
                            + " and could give more, batteries the rest";
            case ALTERNATOR_SHARE ->
                    averages(f)
                            + ", and nothing watches over it; AC 43.13-1B, 11-35, then advises at"
                            + " most "
                            + allowed
                            + ", 80 %";
            case CHARGE, CHARGE_HELD, CHARGE_APART, EMPTIED ->
                    "ends the flight at "
                            + Formats.percent(f.found())
                            + ", having started at "
                            + Formats.percent(f.allowed());
            case CHARGE_CURRENT -> chargesTooFast(f);
            case UNRATED -> "nothing is known of its rating; it needs " + found;
        };
    }

    private static String shortHeats(SizeFinding f) {
        return "a short of "
                + amps(f.found())
                + when(f.when())
                + " makes it too hot before "
                + f.other()
                + " opens";
    }

    private static String letsThrough(SizeFinding f) {
        String taken =
                f.rule() == Rule.INRUSH
                        ? "its load takes %s when it is switched on; for so long it"
                        : "carries %s while the starter turns; for as long as the study lets it"
                                + " turn the protector";
        return taken.formatted(amps(f.found())) + " surely lets through only " + amps(f.allowed());
    }

    private static String strayReturn(SizeFinding f) {
        return "is a return, carries what others return once it is chafed, and no protector ends"
                + " that: "
                + flows(f);
    }

    private static String overRating(SizeFinding f) {
        return "carries "
                + amps(f.found())
                + when(f.when())
                + "; its rating is "
                + amps(f.allowed());
    }

    private static String nearRating(SizeFinding f) {
        return "carries "
                + amps(f.found())
                + when(f.when())
                + ", "
                + Formats.percent(f.found() / f.allowed())
                + " of its "
                + amps(f.allowed())
                + ", and the engine stops when it opens; above 80 % heat and age are"
                + " left no room (common practice)";
    }

    private static String chargesTooFast(SizeFinding f) {
        return "takes in "
                + amps(f.found())
                + when(f.when())
                + " if it comes nearly empty; its management allows "
                + amps(f.allowed())
                + ", and then disconnects it";
    }

    /** Whether the place is too hot for the insulation without any current. */
    static boolean tooHot(SizeFinding f) {
        return (f.rule() == Rule.AMPACITY && f.allowed() <= 0)
                || (f.rule() == Rule.DROP && !Double.isFinite(f.found()));
    }

    /** Whether a load has its voltage the wrong way round, by more than a diode's drop. */
    static boolean backwards(SizeFinding f) {
        return f.found() < -1;
    }

    private static String minimum(SizeFinding f) {
        return backwards(f)
                ? "has " + volts(-f.found()) + when(f.when()) + ", the wrong way round"
                : "has "
                        + volts(f.found())
                        + when(f.when())
                        + ", all loads running; it needs "
                        + volts(f.allowed());
    }

    private static String drop(SizeFinding f) {
        return tooHot(f)
                ? "what its wires drop cannot be told: where one lies it is hotter than its insulation"
                        + " stands, without any current"
                : "its wires drop "
                        + volts(f.found())
                        + ", warm; AC 43.13-1B table 11-6 allows "
                        + volts(f.allowed());
    }

    private static String flows(SizeFinding f) {
        return amps(f.found()) + " flow" + when(f.when()) + "; it may carry " + amps(f.allowed());
    }

    private static String others(double wires) {
        return wires == 1
                ? "; so with 1 other wire"
                : String.format(Locale.ROOT, "; so with %.0f other wires", wires);
    }

    private static String mainPower(SizeFinding f) {
        return "the wires drop "
                + volts(f.found())
                + " at "
                + amps(f.when().amps())
                + "; 2 % of the bus voltage are "
                + volts(f.allowed());
    }

    private static String contact(SizeFinding f) {
        return "needs contacts for "
                + amps(f.found())
                + " (AC 43.13-1B table 11-4) since they carry "
                + amps(f.when().amps())
                + when(f.when())
                + "; they have "
                + amps(f.allowed());
    }

    private static String averages(SizeFinding f) {
        return "everything takes " + amps(f.found()) + " on average" + when(f.when());
    }

    private static String chart(SizeFinding f) {
        String guarded =
                f.other() + " (" + amps(f.found()) + ") guards it; AC 43.13-1B table 11-3 ";
        return f.allowed() > 0
                ? guarded + "has at most " + amps(f.allowed()) + " for this size"
                : guarded + "has none for this size";
    }

    private static String protectsNothing(SizeFinding f) {
        return f.other()
                + " ("
                + amps(f.found())
                + ") protects nothing here: alone in free air at 20 °C the wire carries "
                + amps(f.allowed())
                + " until its insulation is at 150 °C, and the protector never opens at "
                + Formats.fixed(f.found() / f.allowed(), 1)
                + " times that";
    }

    private static String actsAnyway(SizeFinding f) {
        return "acts at "
                + volts(f.found())
                + ", and alternators hold "
                + volts(f.allowed())
                + ": with little on its bus, or full batteries, it acts with nothing wrong";
    }

    private static String overcharged(SizeFinding f) {
        return "alternators hold it at "
                + volts(f.found())
                + "; makers' sheets charge such a battery with "
                + volts(f.allowed())
                + " at most, and that for hours only";
    }

    private static String cranking(SizeFinding f) {
        String conditions = f.rule() == Rule.CRANKING ? "" : " (" + f.when().phase() + ")";
        return "stops while the starter turns"
                + conditions
                + ": down to "
                + volts(f.found())
                + ", and it needs "
                + volts(f.allowed())
                + (f.other().isEmpty() ? "" : "; " + f.other() + " opens meanwhile");
    }

    /** What mends it. */
    public static String mend(SizeFinding f) {
        return MendWords.of(f);
    }

    private static String when(Carried carried) {
        String phase = carried.phase().isEmpty() ? "" : " in " + carried.phase();
        return carried.failure().isEmpty() ? phase : phase + " (" + carried.failure() + ")";
    }

    static String amps(double amps) {
        return Formats.amps(amps);
    }

    static String volts(double volts) {
        return Formats.fixed(volts, 2) + " V";
    }
}
