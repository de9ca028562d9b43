package stillturning.report.json;

import stillturning.report.answer.FirstAnswer;
import stillturning.report.answer.FirstAnswer.Finding;
import stillturning.report.answer.FirstAnswer.LeftOut;
import stillturning.report.answer.FirstAnswer.NotAsked;
import stillturning.report.answer.FirstAnswer.Topic;

/** The answer on one screen. */
final class FirstAnswerJson {

    private static final JsonShape<Finding> FINDING =
            JsonShape.<Finding>named("finding")
                    .word("topic", Topic.class, Finding::topic)
                    .text("text", Finding::text);

    private static final JsonShape<LeftOut> LEFT_OUT =
            JsonShape.<LeftOut>named("leftOut")
                    .text("candidate", LeftOut::candidate)
                    .text("reason", LeftOut::reason);

    private static final JsonShape<NotAsked> NOT_ASKED =
            JsonShape.<NotAsked>named("notAsked")
                    .text("what", NotAsked::what)
                    .text("command", NotAsked::how);

    static final JsonShape<FirstAnswer> ANSWER =
            JsonShape.<FirstAnswer>named("answer")
                    .text("scope", FirstAnswer::scope)
                    .says("For whom it holds.")
                    .text("lead", FirstAnswer::lead)
                    .says("Who comes first, also with equal batteries.")
                    .list("findings", FINDING, FirstAnswer::findings)
                    .says("What is said, in order; what the first one breaks is worst first.")
                    .list("leftOut", LEFT_OUT, FirstAnswer::leftOut)
                    .says("Candidates that it says nothing about.")
                    .list("notAsked", NOT_ASKED, FirstAnswer::notAsked)
                    .says("What takes longer, and the command that asks it.");

    private FirstAnswerJson() {}
}
