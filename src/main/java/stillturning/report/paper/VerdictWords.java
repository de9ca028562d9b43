package stillturning.report.paper;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.quantity.Formats;
import stillturning.report.StoryFacts;
import stillturning.report.terminal.CaseTexts;

/** What a failure comes to, in a sentence. */
final class VerdictWords {

    private VerdictWords() {}

    /** The outcome, for how long the engine runs, and by when the pilot must act. */
    static String sentence(Verdict verdict) {
        List<String> clauses = new ArrayList<>();
        clauses.add(verdict.outcome().words());
        CaseTexts.interrupted(verdict)
                .filter(words -> verdict.outcome() == Outcome.INTERRUPTED)
                .ifPresent(words -> clauses.add("interrupted for " + words));
        clauses.add(lasts(verdict));
        verdict.actBySeconds().ifPresent(by -> clauses.add(actBy(verdict, by)));
        return String.join("; ", clauses);
    }

    private static String actBy(Verdict verdict, double by) {
        return verdict.outcome() == Outcome.STOPS_UNTIL_PILOT_ACTS
                ? "it stands from " + Formats.lasting(by) + " until he acts"
                : "he must act within " + Formats.lasting(by);
    }

    /** How long the engine runs, with each pilot where they differ. */
    static String lasts(Verdict verdict) {
        String planned = StoryFacts.endurance(verdict.planned());
        String late = StoryFacts.endurance(verdict.late());
        String never = StoryFacts.endurance(verdict.unaided());
        String base = "engine runs: " + planned;
        if (planned.equals(never) && planned.equals(late)) {
            return base;
        }
        return base
                + " with a pilot as planned, "
                + (late.equals(planned) ? "" : late + " with a slow one, ")
                + never
                + " with one who does nothing";
    }
}
