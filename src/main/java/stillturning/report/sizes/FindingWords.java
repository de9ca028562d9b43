package stillturning.report.sizes;

import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;
import stillturning.report.table.Unit;
import stillturning.sizing.result.Carried;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizeFinding.Mend;
import stillturning.sizing.result.SizingReport;

/** A finding in words: what is wrong, and what mends it. */
public final class FindingWords {

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

    private static String about(SizeFinding f) {
        return switch (f.rule()) {
            case ALTERNATOR, ALTERNATOR_SHARE -> "alternators";
            case MAIN_POWER -> f.part() + " to " + f.other();
            default -> f.part();
        };
    }

    /** What is wrong. */
    public static String wrong(SizeFinding f) {
        String when = when(f.when());
        return switch (f.rule()) {
            case AMPACITY ->
                    "carries "
                            + amps(f.found())
                            + when
                            + "; where it lies it may carry "
                            + amps(f.allowed());
            case UNPROTECTED ->
                    "no protector ends a short in time: "
                            + amps(f.found())
                            + " flow"
                            + when
                            + "; it may carry "
                            + amps(f.allowed());
            case UNPROTECTED_BY_CUSTOM ->
                    "has no protector, by custom: "
                            + amps(f.found())
                            + " flow"
                            + when
                            + "; it may carry "
                            + amps(f.allowed());
            case CHART -> chart(f);
            case HEAT ->
                    "a short of "
                            + amps(f.found())
                            + when
                            + " makes it too hot before "
                            + f.other()
                            + " opens";
            case MAIN_POWER ->
                    "the wires drop "
                            + volts(f.found())
                            + " at "
                            + amps(f.when().amps())
                            + "; 2 % of the bus voltage are "
                            + volts(f.allowed());
            case DROP ->
                    "its wires drop "
                            + volts(f.found())
                            + ", warm; AC 43.13-1B table 11-6 allows "
                            + volts(f.allowed());
            case MINIMUM ->
                    "has "
                            + volts(f.found())
                            + when
                            + ", all loads running; it needs "
                            + volts(f.allowed());
            case CRANKING, CRANKING_COLD -> cranking(f);
            default -> more(f, when);
        };
    }

    private static String more(SizeFinding f, String when) {
        return switch (f.rule()) {
            case INTERRUPT ->
                    "a bolted short behind it drives "
                            + amps(f.found())
                            + "; it interrupts "
                            + amps(f.allowed());
            case DUTY, DUTY_AFTER_FAILURE ->
                    "carries " + amps(f.found()) + when + "; its rating is " + amps(f.allowed());
            case INRUSH ->
                    "its load takes "
                            + amps(f.found())
                            + " when it is switched on; for so long it surely lets through only "
                            + amps(f.allowed());
            case CONTACT ->
                    "needs contacts for "
                            + amps(f.found())
                            + " (AC 43.13-1B table 11-4) since they carry "
                            + amps(f.when().amps())
                            + when
                            + "; they have "
                            + amps(f.allowed());
            case ALTERNATOR ->
                    "everything takes "
                            + amps(f.found())
                            + " on average"
                            + when
                            + "; alternators give "
                            + amps(f.allowed())
                            + ", batteries the rest";
            case ALTERNATOR_SHARE ->
                    "everything takes "
                            + amps(f.found())
                            + " on average"
                            + when
                            + ", and nothing watches over it; AC 43.13-1B, 11-35, then advises at"
                            + " most "
                            + amps(f.allowed())
                            + ", 80 %";
            case CHARGE ->
                    "ends the flight at "
                            + Formats.percent(f.found())
                            + ", having started at "
                            + Formats.percent(f.allowed());
            default -> "nothing is known of its rating; it needs " + amps(f.found());
        };
    }

    private static String chart(SizeFinding f) {
        String guarded =
                f.other() + " (" + amps(f.found()) + ") guards it; AC 43.13-1B table 11-3 ";
        return f.allowed() > 0
                ? guarded + "has at most " + amps(f.allowed()) + " for this size"
                : guarded + "has none for this size";
    }

    private static String cranking(SizeFinding f) {
        String conditions = f.rule() == Rule.CRANKING ? "" : " (" + f.when().phase() + ")";
        return "stops while the starter turns"
                + conditions
                + ": down to "
                + volts(f.found())
                + ", and it needs "
                + volts(f.allowed());
    }

    /** What mends it. */
    public static String mend(SizeFinding f) {
        if (f.mend().isPresent()) {
            Mend mend = f.mend().get();
            String of = mend.part().equals(f.part()) ? "" : "for " + mend.part() + ": ";
            return of
                    + (mend instanceof Mend.Gauge gauge
                            ? "AWG " + gauge.awg()
                            : rating((Mend.Rating) mend));
        }
        return switch (f.rule()) {
            case AMPACITY, CHART, DROP, MAIN_POWER ->
                    "no size of the table does: shorten it, split it, or use a smaller protector";
            case HEAT -> "a faster protector, or thicker wire";
            case UNPROTECTED -> "put a protector where its current comes from";
            case INTERRUPT -> "take a class that interrupts more, or a longer wire before it";
            case DUTY, INRUSH -> "take a channel or protector that carries it";
            case MINIMUM -> "look for the largest drop on its way";
            case CRANKING, CRANKING_COLD -> "thicker battery leads, or a larger battery";
            case CONTACT -> "take larger contacts, or let a relay switch it";
            case ALTERNATOR, ALTERNATOR_SHARE, CHARGE -> "a larger alternator, or less load";
            case DUTY_AFTER_FAILURE -> "know that it may open then";
            case UNRATED -> "find out its rating";
            case UNPROTECTED_BY_CUSTOM -> "keep it short, tied down, and away from edges";
        };
    }

    private static String rating(Mend.Rating rating) {
        return Formats.significant(rating.amps(), 2) + " A";
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
