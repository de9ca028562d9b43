package stillturning.report;

import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.report.table.TerminalColour.Ink;

/** An outcome in the few letters that a table has room for; the sign tells it without colour. */
public enum OutcomeMark {
    LOST(Outcome.ENGINE_LOST, "\u2716", "engine lost", "LOST", Ink.ALARM),
    STOPS(Outcome.STOPS_UNTIL_PILOT_ACTS, "\u25A0", "stops, pilot", "STOPS", Ink.ALARM),
    ACT(Outcome.STOPS_UNLESS_PILOT_ACTS, "\u25B2", "act in time", "ACT", Ink.WARNING),
    DIPS(Outcome.INTERRUPTED, "\u2248", "interrupted", "DIPS", Ink.WARNING),
    SPARE(Outcome.REDUNDANCY_LOST, "\u25CB", "spare lost", "spare", Ink.PLAIN),
    LOADS(Outcome.LOADS_LOST, "\u2212", "loads lost", "loads", Ink.FAINT),
    NONE(Outcome.NO_EFFECT, "\u00B7", "no effect", "none", Ink.FAINT);

    /** Stands where a candidate has no such part. */
    public static final String ABSENT = "";

    private final Outcome outcome;
    private final String sign;
    private final String word;
    private final String code;
    private final Ink ink;

    OutcomeMark(Outcome outcome, String sign, String word, String code, Ink ink) {
        this.outcome = outcome;
        this.sign = sign;
        this.word = word;
        this.code = code;
        this.ink = ink;
    }

    /** Follows the code of what cannot be computed. */
    public static final String UNTOLD = "?";

    /** The code of a verdict, with a sign of its own where it cannot be computed. */
    public static String code(Verdict verdict) {
        return of(verdict.outcome()).code + (verdict.untold().isPresent() ? UNTOLD : "");
    }

    /** The mark of an outcome. */
    public static OutcomeMark of(Outcome outcome) {
        for (OutcomeMark mark : values()) {
            if (mark.outcome == outcome) {
                return mark;
            }
        }
        throw new IllegalArgumentException("no mark for " + outcome);
    }

    /** What it stands for. */
    public Outcome outcome() {
        return outcome;
    }

    /** One character. */
    public String sign() {
        return sign;
    }

    /** Two words at most. */
    public String word() {
        return word;
    }

    public String code() {
        return code;
    }

    public Ink ink() {
        return ink;
    }
}
