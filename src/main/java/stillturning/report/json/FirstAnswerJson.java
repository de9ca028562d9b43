package stillturning.report.json;

import stillturning.report.answer.FirstAnswer;
import stillturning.report.answer.FirstAnswer.AnswerFinding;
import stillturning.report.answer.FirstAnswer.AnswerTopic;
import stillturning.report.answer.FirstAnswer.LeftOut;
import stillturning.report.answer.FirstAnswer.NotAsked;

/** The answer on one screen. */
final class FirstAnswerJson {

    private static final JsonShape<AnswerFinding> FINDING =
            JsonShape.<AnswerFinding>named("finding")
                    .word("topic", AnswerTopic.class, AnswerFinding::topic)
                    .text("text", AnswerFinding::text);

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
