package stillturning.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assessment;
import stillturning.assess.Guesses;
import stillturning.assess.exchange.EqualBatteries;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.model.Study;
import stillturning.model.Study.Weight;
import stillturning.reliability.runup.Card;
import stillturning.report.AnswerWords;
import stillturning.report.RankingOrder;
import stillturning.report.ResultText;
import stillturning.report.Spoken;
import stillturning.report.answer.FirstAnswer.AnswerFinding;
import stillturning.report.answer.FirstAnswer.AnswerTopic;
import stillturning.report.answer.FirstAnswer.CandidateLine;
import stillturning.report.answer.FirstAnswer.CandidateTable;
import stillturning.report.answer.FirstAnswer.LeftOut;
import stillturning.report.answer.FirstAnswer.NotAsked;
import stillturning.report.pair.ValueMarks;
import stillturning.sizing.result.SizingReport;

/**
 * All that the first answer is made of.
 *
 * @param equal what equal batteries change, if that was tried
 * @param sizes the sizes of the first one with nothing wrong, if they could be computed
 * @param guesses which guesses matter, if that was tried
 * @param mistaken candidates whose files have mistakes
 * @param marks how well the values of the first and the next are known, if somebody looked
 * @param runUp the checks that the first one needs before each flight, if that was asked
 */
public record FirstQuestion(
        Assessment assessment,
        Optional<EqualBatteries> equal,
        Optional<SizingReport> sizes,
        Optional<Guesses> guesses,
        List<LeftOut> mistaken,
        Optional<ValueMarks> marks,
        Optional<Card> runUp) {

    public FirstQuestion {
        mistaken = List.copyOf(mistaken);
    }

    /** Of which nobody knows how well the values are known. */
    public FirstQuestion(
            Assessment assessment,
            Optional<EqualBatteries> equal,
            Optional<SizingReport> sizes,
            Optional<Guesses> guesses,
            List<LeftOut> mistaken) {
        this(assessment, equal, sizes, guesses, mistaken, Optional.empty(), Optional.empty());
    }

    /** The same, with how well the values of the first and the next are known. */
    public FirstQuestion marked(Optional<ValueMarks> known) {
        return new FirstQuestion(assessment, equal, sizes, guesses, mistaken, known, runUp);
    }

    /** The same, with the checks that the first one needs before each flight. */
    public FirstQuestion checked(Optional<Card> card) {
        return new FirstQuestion(assessment, equal, sizes, guesses, mistaken, marks, card);
    }

    public FirstAnswer answer() {
        List<LeftOut> leftOut =
                Stream.concat(
                                mistaken.stream(),
                                assessment.unassessed().stream()
                                        .map(u -> new LeftOut(title(u.candidate()), u.reason())))
                        .toList();
        return new FirstAnswer(
                assessment.study().heading().title(),
                scope(leftOut.size()),
                assessment.ranking().map(this::lead).orElse(AnswerWords.lead(assessment)),
                assessment.ranking().map(this::findings).orElse(List.of()),
                matrix(),
                leftOut,
                assessment.ranking().map(this::notAsked).orElse(List.of()));
    }

    private String title(String candidate) {
        return assessment.study().candidate(candidate).map(c -> c.title()).orElse(candidate);
    }

    private String scope(int leftOut) {
        int assessed = assessment.appraisals().size();
        String holds =
                leftOut == 0
                        ? counted(assessed, "candidate")
                        : assessed + " of " + counted(assessed + leftOut, "candidate");
        return holds + (assessment.study().heading().invented() ? ", all data invented" : "");
    }

    private static String counted(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }

    private String lead(RankingResult ranking) {
        String lead = AnswerWords.lead(assessment);
        String equally = equally(ranking, "");
        return equally.isEmpty() ? lead : lead.substring(0, lead.length() - 1) + equally + ".";
    }

    /**
     * @param next who is named just before
     */
    private String equally(RankingResult ranking, String next) {
        List<String> first = ranking.first().stream().map(Standing::name).toList();
        return equal.map(tried -> new BatteryWords(assessment, tried).clause(first, next))
                .orElse("");
    }

    private static String next(RankingResult ranking) {
        return ranking.standings().stream()
                .skip(ranking.first().size())
                .map(Standing::name)
                .findFirst()
                .orElse("");
    }

    private List<AnswerFinding> findings(RankingResult ranking) {
        List<AnswerFinding> findings = new ArrayList<>();
        FirstWords first =
                new FirstWords(
                        assessment,
                        ranking,
                        assessment.study().goals().weights().stream()
                                .map(FirstQuestion::shortName)
                                .toList());
        add(findings, AnswerTopic.FIRST, List.of(first.who(equally(ranking, next(ranking)))));
        add(findings, AnswerTopic.FIRM, first.firm(guesses));
        add(findings, AnswerTopic.UNLIKE, new UnlikeWords(assessment, ranking, marks).sentences());
        equal.ifPresent(
                tried ->
                        add(
                                findings,
                                AnswerTopic.EQUAL_BATTERIES,
                                new BatteryWords(assessment, tried).sentences()));
        assessment.of(ranking.leader().name()).ifPresent(leader -> breaks(leader, findings));
        add(findings, AnswerTopic.NEXT, first.next());
        return findings;
    }

    private void breaks(Appraisal leader, List<AnswerFinding> findings) {
        Spoken spoken = new Spoken(leader.candidate());
        add(
                findings,
                AnswerTopic.BREAKS,
                new ShortcomingWords(leader, sizes, runUp)
                        .worstFirst().stream().map(spoken::sentence).toList());
    }

    private static void add(List<AnswerFinding> findings, AnswerTopic topic, List<String> texts) {
        texts.forEach(text -> findings.add(new AnswerFinding(topic, text)));
    }

    private CandidateTable matrix() {
        Study.Goals goals = assessment.study().goals();
        List<String> requirements =
                assessment.appraisals().stream()
                        .findFirst()
                        .map(a -> a.met().stream().map(RequirementMet::requirement).toList())
                        .orElse(List.of());
        return new CandidateTable(
                requirements,
                goals.weights().stream().map(FirstQuestion::shortName).toList(),
                RankingOrder.of(assessment).stream().flatMap(a -> line(a).stream()).toList());
    }

    private static String shortName(Weight weight) {
        return switch (weight.criterion()) {
            case ENGINE_STOPS -> "stops";
            case PILOT_NEEDED -> "pilot";
            case ENDURANCE, WEIGHT, COMPLEXITY, COST ->
                    weight.criterion().name().toLowerCase(Locale.ROOT);
        };
    }

    private Optional<CandidateLine> line(Appraisal appraisal) {
        return assessment
                .ranking()
                .map(
                        ranking -> {
                            Standing standing = ranking.standing(appraisal.candidate().id());
                            return new CandidateLine(
                                    standing.rank(),
                                    appraisal.candidate().title(),
                                    appraisal.met().stream().map(RequirementMet::met).toList(),
                                    standing.total(),
                                    values(appraisal));
                        });
    }

    private List<String> values(Appraisal appraisal) {
        Study study = assessment.study();
        return study.goals().weights().stream()
                .map(Weight::criterion)
                .map(
                        criterion ->
                                ResultText.value(
                                        criterion,
                                        appraisal
                                                .measures()
                                                .values()
                                                .getOrDefault(criterion, Double.NaN),
                                        study.heading().currency()))
                .toList();
    }

    private List<NotAsked> notAsked(RankingResult ranking) {
        String study = assessment.study().id();
        String leader = " --candidate " + ranking.leader().name();
        List<NotAsked> all = new ArrayList<>();
        if (guesses.isEmpty()) {
            all.add(new NotAsked("guesses that could unseat it", "decide " + study + " --guesses"));
        }
        if (runUp.isEmpty()) {
            all.add(
                    new NotAsked(
                            "how many run-up checks it needs", "decide " + study + " --run-up"));
        }
        all.add(new NotAsked("its sizes after failures", "size " + study + leader));
        if (ranking.standings().size() > 1) {
            all.add(
                    new NotAsked(
                            "what makes the difference to the next",
                            "decide "
                                    + study
                                    + " --between "
                                    + ranking.leader().name()
                                    + " "
                                    + ranking.standings().get(1).name()));
        }
        return all;
    }
}
