package stillturning.report.sizes;

import stillturning.quantity.Formats;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizeFinding.Mend;

/** What mends a finding, in words. */
final class MendWords {

    private MendWords() {}

    /** What mends it. */
    static String of(SizeFinding f) {
        if (f.rule() == Rule.PROTECTS_NOTHING) {
            return "a smaller protector, or a thicker wire"
                    + f.mend().map(m -> ": " + sized(m)).orElse("");
        }
        if (f.mend().isPresent()) {
            Mend mend = f.mend().get();
            String of = mend.part().equals(f.part()) ? "" : "for " + mend.part() + ": ";
            return of + sized(mend);
        }
        if (FindingWords.tooHot(f)) {
            return "lead it through a cooler place, or take insulation that stands the heat";
        }
        return usual(f);
    }

    private static String usual(SizeFinding f) {
        return switch (f.rule()) {
            case PROTECTS_NOTHING, AMPACITY, CHART, DROP, MAIN_POWER ->
                    "no size of the table does: shorten it, split it, or use a smaller protector";
            case HEAT, HEAT_IF_SLOW -> "a faster protector, or thicker wire";
            case UNPROTECTED -> "put a protector where its current comes from";
            case STRAY_RETURN ->
                    "join its ground to the metal there, so that nothing returns through it, or keep"
                            + " it off the metal";
            case INTERRUPT -> "take a class that interrupts more, or a longer wire before it";
            case ENGINE_DUTY, ENGINE_MARGIN, DUTY, INRUSH ->
                    "take a channel or protector that carries it";
            case CRANKING_DUTY ->
                    "if the starter's current goes through it, take that from the battery's side of"
                            + " it; else take one that carries this, and a wire for it";
            case GUARD_LOW ->
                    "a limit above all that alternators hold and below what loads stand, as 16 V"
                            + " in a 14 V system (common practice)";
            case OVERCHARGED -> "a set point that the battery's maker states for one that stays on";
            case MINIMUM ->
                    FindingWords.backwards(f)
                            ? "look for a source whose plus and minus are exchanged"
                            : "look for the largest drop on its way";
            case OFF -> "none if it is meant to be off; else find what is open on its way";
            case CRANKING, CRANKING_COLD ->
                    f.other().isEmpty()
                            ? "thicker battery leads, or a larger battery"
                            : "keep what the starter draws out of "
                                    + f.other()
                                    + ", as by another battery lead, or a diode or a relay that"
                                    + " parts the buses while it turns";
            case CONTACT -> "take larger contacts, or let a relay switch it";
            case ALTERNATOR, ALTERNATOR_SHARE, CHARGE -> "a larger alternator, or less load";
            case ALTERNATOR_HELD, CHARGE_HELD ->
                    "alternators hold their set point, and larger ones would give no more: raise it"
                            + " as far as batteries and loads bear, or drop less on the way, as by"
                            + " a relay instead of a diode";
            case CHARGE_APART, EMPTIED ->
                    "no alternator charges it: give it a way to be charged, as by a diode or a relay"
                            + " from a bus that one feeds, or charge it before each flight";
            case CHARGE_CURRENT ->
                    "charge it before the flight, or limit what the alternator drives into it";
            case DUTY_AFTER_FAILURE -> "know that it may open then";
            case UNRATED -> "find out its rating";
            case UNPROTECTED_BY_CUSTOM ->
                    f.other().isEmpty()
                            ? "keep it short, tied down, and away from edges"
                            : "prevent that short, which is in "
                                    + f.other()
                                    + "; as a return this wire drives none by"
                                    + " chafing";
        };
    }

    private static String sized(Mend mend) {
        return mend.fold(
                gauge -> "AWG " + gauge.awg(),
                rating -> Formats.significant(rating.amps(), 2) + " A");
    }
}
