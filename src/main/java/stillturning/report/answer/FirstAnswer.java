package stillturning.report.answer;

import java.util.List;

/**
 * The answer on one screen.
 *
 * @param title what the study is called
 * @param scope for whom the answer holds
 * @param lead who comes first, also with equal batteries, in one sentence
 * @param findings what is said, in order; several may be of one topic
 * @param matrix the candidates by requirement and criterion
 * @param leftOut candidates that the answer says nothing about
 * @param notAsked what else could be asked, and how
 */
public record FirstAnswer(
        String title,
        String scope,
        String lead,
        List<AnswerFinding> findings,
        CandidateTable matrix,
        List<LeftOut> leftOut,
        List<NotAsked> notAsked) {

    /** What a finding is about. */
    public enum AnswerTopic {
        FIRST("first"),
        FIRM("firm?"),
        UNLIKE("not alike"),
        EQUAL_BATTERIES("batteries"),
        BREAKS("it breaks"),
        NEXT("the next");

        private final String words;

        AnswerTopic(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** One thing to know, in one or two sentences. */
    public record AnswerFinding(AnswerTopic topic, String text) {}

    /**
     * The candidates, best first.
     *
     * @param requirements the hard requirements in words, in the study's order
     * @param criteria short names of the criteria, in the study's order
     */
    public record CandidateTable(
            List<String> requirements, List<String> criteria, List<CandidateLine> candidates) {
        public CandidateTable {
            requirements = List.copyOf(requirements);
            criteria = List.copyOf(criteria);
            candidates = List.copyOf(candidates);
        }
    }

    /**
     * One candidate.
     *
     * @param met by requirement
     * @param values by criterion, with their units
     */
    public record CandidateLine(
            int rank, String title, List<Boolean> met, double points, List<String> values) {
        public CandidateLine {
            met = List.copyOf(met);
            values = List.copyOf(values);
        }
    }

    /** A candidate that the answer says nothing about, and why. */
    public record LeftOut(String candidate, String reason) {}

    /** Something that takes longer than this answer, and the command that asks it. */
    public record NotAsked(String what, String how) {}

    public FirstAnswer {
        findings = List.copyOf(findings);
        leftOut = List.copyOf(leftOut);
        notAsked = List.copyOf(notAsked);
    }

    /** What is said of one topic. */
    public List<String> of(AnswerTopic topic) {
        return findings.stream().filter(f -> f.topic() == topic).map(AnswerFinding::text).toList();
    }
}
