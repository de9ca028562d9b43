package stillturning.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.NothingBroken;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Burdens;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;
import stillturning.report.MoveTexts;
import stillturning.report.NormalFlightTexts;
import stillturning.report.StoryFacts;
import stillturning.report.ToleranceWords;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.layout.OneLine;
import stillturning.report.oneline.CandidateDrawing;
import stillturning.report.page.Page.CandidateSheet;
import stillturning.report.page.Page.CountList;
import stillturning.report.page.Page.Fact;
import stillturning.report.page.Page.FactGroup;
import stillturning.report.page.Page.Link;
import stillturning.report.page.Page.OutcomeList;
import stillturning.report.terminal.OtherFindings;
import stillturning.story.NormalFlight;

/** Each candidate on its own. */
final class CandidateSheets {

    private final Study study;
    private final StoryChapters stories;

    private CandidateSheets(Study study, StoryChapters stories) {
        this.study = study;
        this.stories = stories;
    }

    static List<CandidateSheet> of(Study study, List<Appraisal> appraisals, StoryChapters stories) {
        CandidateSheets sheets = new CandidateSheets(study, stories);
        List<CandidateSheet> all = new ArrayList<>();
        for (int i = 0; i < appraisals.size(); i++) {
            all.add(sheets.sheet(i, appraisals.get(i)));
        }
        return all;
    }

    private CandidateSheet sheet(int number, Appraisal appraisal) {
        Candidate candidate = appraisal.candidate();
        return new CandidateSheet(
                HtmlPage.anchor(number),
                candidate.title(),
                candidate.about(),
                drawing(number, candidate),
                grounds(candidate),
                burdens(appraisal.measures().burdens()),
                new CountList(
                        appraisal.measures().complexity().counts().entrySet().stream()
                                .map(
                                        e ->
                                                new Fact(
                                                        e.getKey().words(),
                                                        String.valueOf(e.getValue())))
                                .toList(),
                        Formats.fixed(
                                appraisal
                                        .measures()
                                        .complexity()
                                        .index(study.goals().preferences().complexity()),
                                1)),
                flight(appraisal.flight()),
                beside(appraisal),
                outcomes(number, appraisal),
                ToleranceWords.table(appraisal.selectivity()));
    }

    /** The drawing's names start with the candidate's number, so that two drawings never clash. */
    private String drawing(int number, Candidate candidate) {
        Diagram diagram = CandidateDrawing.of(candidate, study);
        return OneLine.of(
                        new Diagram(
                                "drawing-" + (number + 1),
                                diagram.title(),
                                diagram.symbols(),
                                diagram.lines()))
                .toSvg();
    }

    private static List<Fact> grounds(Candidate candidate) {
        return CandidateDrawing.grounds(candidate).stream()
                .map(line -> new Fact(line.ground(), line.leadsTo()))
                .toList();
    }

    private List<Fact> burdens(Burdens burdens) {
        return List.of(
                new Fact("weight", mass(burdens.kilograms())),
                new Fact("of this cable", mass(burdens.cableKilograms())),
                new Fact("cable", Formats.fixed(burdens.cableMetres(), 1) + " m"),
                new Fact(
                        "cost",
                        Formats.fixed(burdens.price(), 0) + " " + study.heading().currency()));
    }

    private static String mass(double kilograms) {
        return Formats.mass(kilograms, UnitSystem.METRIC);
    }

    private List<Fact> flight(NothingBroken flight) {
        NormalFlight normal = flight.normal();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("engine", normal.engineRuns() ? "runs" : "does not run"));
        facts.add(
                new Fact(
                        "buses",
                        normal.busVolts().entrySet().stream()
                                .map(e -> e.getKey() + " " + Formats.fixed(e.getValue(), 2) + " V")
                                .collect(Collectors.joining(", "))));
        facts.add(
                new Fact(
                        "sources",
                        normal.sourceAmps().entrySet().stream()
                                .map(e -> e.getKey() + " " + amps(e.getValue()))
                                .collect(Collectors.joining(", "))));
        facts.add(
                new Fact(
                        "signs that show",
                        normal.cuesShowing().isEmpty()
                                ? "none"
                                : String.join(", ", normal.cuesShowing())));
        List<String> findings = NormalFlightTexts.findings(flight);
        facts.add(
                new Fact(
                        "happens although nothing fails",
                        findings.isEmpty() ? "nothing" : String.join("; ", findings)));
        List<String> near = NormalFlightTexts.nearLimit(flight);
        if (!near.isEmpty()) {
            facts.add(new Fact("may happen although nothing fails", String.join("; ", near)));
        }
        return facts;
    }

    private static List<StoryFacts.StoryFact> moves(Appraisal appraisal) {
        return MoveTexts.findings(appraisal.candidate(), appraisal.cases().harmfulMoves()).stream()
                .map(words -> new StoryFacts.StoryFact("finding", words))
                .toList();
    }

    private static List<FactGroup> beside(Appraisal appraisal) {
        List<FactGroup> groups =
                List.of(
                        group(
                                "Charging lost: how long the engine runs",
                                StoryFacts.of(appraisal.cases().lasting())),
                        group(MoveTexts.HEADING, moves(appraisal)),
                        group("Starting on the ground", OtherFindings.starts(appraisal)),
                        group("Warnings to add", OtherFindings.missingWarnings(appraisal)),
                        group(
                                "Switches left wrong before flight",
                                OtherFindings.leftSwitches(appraisal)));
        return groups.stream().filter(group -> !group.facts().isEmpty()).toList();
    }

    private static FactGroup group(String heading, List<StoryFacts.StoryFact> facts) {
        return new FactGroup(
                heading, facts.stream().map(f -> new Fact(f.label(), f.value())).toList());
    }

    private static String amps(double amps) {
        String size = Formats.fixed(Math.abs(amps), 1) + " A";
        return amps < -0.05 ? "takes in " + size : "gives " + size;
    }

    private List<OutcomeList> outcomes(int number, Appraisal appraisal) {
        List<OutcomeList> lists = new ArrayList<>();
        for (Outcome outcome : Outcome.values()) {
            List<Verdict> verdicts = appraisal.with(outcome);
            if (!verdicts.isEmpty()) {
                lists.add(
                        new OutcomeList(
                                MatrixSection.mark(outcome),
                                outcome.words(),
                                verdicts.size(),
                                outcome.compareTo(Outcome.INTERRUPTED) > 0,
                                verdicts.stream().map(v -> link(number, v)).toList()));
            }
        }
        return lists;
    }

    private Link link(int number, Verdict verdict) {
        String name = verdict.failure().name();
        return new Link(name, stories.anchor(number, name).orElse(""));
    }
}
