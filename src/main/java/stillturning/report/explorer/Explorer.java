package stillturning.report.explorer;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.verdict.Outcome;
import stillturning.model.Study;
import stillturning.report.FailureRows;
import stillturning.report.OutcomeMark;
import stillturning.report.RankingOrder;
import stillturning.report.drawing.MarkState;
import stillturning.report.explorer.NumberedTexts.NumberedText;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.page.ExplorerSection;
import stillturning.story.Pilot;
import tools.jackson.databind.json.JsonMapper;

/** What a reader can ask the page of an assessment. */
public final class Explorer {

    private static final String SCRIPT = "explorer.js";

    private Explorer() {}

    /** Everything that the page needs for it; the same assessment, the same texts. */
    public static ExplorerSection of(Assessment assessment) {
        return of(assessment, List.of());
    }

    /**
     * The same with what two failures do together.
     *
     * @param together of the candidates of which that was asked, in any order
     */
    public static ExplorerSection of(Assessment assessment, List<CombinedFindings> together) {
        String script = script();
        return new ExplorerSection(
                embeddable(
                        JsonMapper.builder()
                                .build()
                                .writeValueAsString(
                                        NumberedTexts.numbered(tree(assessment, together)))),
                script,
                hash(script));
    }

    private static Map<String, Object> tree(
            Assessment assessment, List<CombinedFindings> together) {
        List<Appraisal> appraisals = RankingOrder.of(assessment);
        List<CandidateCode> candidates =
                appraisals.stream().map(a -> new CandidateCode(assessment.study(), a)).toList();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("outcomes", outcomes());
        tree.put("states", states());
        tree.put("pilots", Stream.of(Pilot.values()).map(Pilot::words).toList());
        tree.put("failures", failures(FailureRows.of(appraisals), candidates));
        List<Object> pairs =
                candidates.stream().map(c -> pairs(assessment.study(), c, together)).toList();
        List<Object> drawn = new ArrayList<>();
        for (int i = 0; i < candidates.size(); i++) {
            Map<String, Object> one = candidates.get(i).tree("drawing-" + (i + 1));
            one.put("pairs", pairs.get(i));
            drawn.add(one);
        }
        tree.put("candidates", drawn);
        assessment
                .ranking()
                .ifPresent(
                        ranking ->
                                tree.put(
                                        "weighing",
                                        Weighing.tree(assessment, ranking, appraisals)));
        return tree;
    }

    /** 0 where it was not asked. */
    private static Object pairs(
            Study study, CandidateCode candidate, List<CombinedFindings> together) {
        return together.stream()
                .filter(found -> candidate.isOf(found.candidate()))
                .findFirst()
                .<Object>map(found -> candidate.pairs(new PairCode(study, found)))
                .orElse(0);
    }

    /** Sign, word, style and meaning of each outcome, the gravest first. */
    private static List<Object> outcomes() {
        List<Object> outcomes = new ArrayList<>();
        for (Outcome outcome : Outcome.values()) {
            OutcomeMark mark = OutcomeMark.of(outcome);
            outcomes.add(
                    List.of(
                            mark.sign(),
                            mark.word(),
                            "o-" + mark.name().toLowerCase(Locale.ROOT),
                            outcome.words()));
        }
        return outcomes;
    }

    /** Words of each state of the drawing by its letter. */
    private static Map<String, Object> states() {
        Map<String, Object> states = new LinkedHashMap<>();
        for (MarkState state : MarkState.values()) {
            states.put(String.valueOf(DrawingCode.letter(state)), state.words());
        }
        return states;
    }

    /** Kind, name and label of each failure, and what it does to each candidate that has it. */
    private static List<Object> failures(
            List<FailureRows.FailureRow> rows, List<CandidateCode> candidates) {
        List<Object> failures = new ArrayList<>();
        for (FailureRows.FailureRow row : rows) {
            List<Object> cells = new ArrayList<>();
            String label = "";
            for (int i = 0; i < candidates.size(); i++) {
                CandidateCode candidate = candidates.get(i);
                if (row.byCandidate().get(i).isPresent()) {
                    cells.add(candidate.verdict(row.byCandidate().get(i).get()));
                    String here = candidate.called(row.byCandidate().get(i).get());
                    label = label.isEmpty() ? here : label;
                } else {
                    cells.add(0);
                }
            }
            failures.add(List.of(new NumberedText(row.kind()), row.failure(), label, cells));
        }
        return failures;
    }

    /** JSON in which nothing can end the element that it stands in, and that XML can hold. */
    private static String embeddable(String json) {
        return json.replace("&", "\\u0026").replace("<", "\\u003c").replace(">", "\\u003e");
    }

    /** The script in marks that both a browser and a reader of XML take for it. */
    private static String script() {
        try (InputStream in = requireNonNull(Explorer.class.getResourceAsStream(SCRIPT), SCRIPT)) {
            return "//<![CDATA[\n"
                    + new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    + "//]]>\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String hash(String script) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return "sha256-"
                    + Base64.getEncoder()
                            .encodeToString(digest.digest(script.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
