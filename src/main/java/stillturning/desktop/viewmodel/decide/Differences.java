package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.Assessment;
import stillturning.assess.CandidateDifferences;
import stillturning.assess.CandidateDifferences.Shift;
import stillturning.assess.ranking.Comparison;
import stillturning.assess.ranking.CriterionDifference;
import stillturning.assess.ranking.GateVerdict;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.desktop.viewmodel.decide.DifferenceRow.CandidateFailure;
import stillturning.desktop.viewmodel.decide.DifferenceRow.DifferenceGroup;
import stillturning.desktop.viewmodel.decide.DifferenceRow.Favours;
import stillturning.model.Candidate;
import stillturning.model.Study.Weight;
import stillturning.model.goal.CriterionName;
import stillturning.parts.Part;
import stillturning.quantity.UnitSystem;
import stillturning.report.OutcomeMark;
import stillturning.report.PartNames;
import stillturning.report.ResultText;
import stillturning.report.Spoken;

/** In what one candidate differs from another, row by row. */
final class Differences {

    private final Assessment assessment;
    private final CandidateDifferences contrast;
    private final UnitSystem units;
    private final List<DifferenceRow> rows = new ArrayList<>();

    private Differences(Assessment assessment, CandidateDifferences contrast, UnitSystem units) {
        this.assessment = assessment;
        this.contrast = contrast;
        this.units = units;
    }

    /** All of them, by group. */
    static List<DifferenceRow> of(
            Assessment assessment, CandidateDifferences contrast, UnitSystem units) {
        Differences differences = new Differences(assessment, contrast, units);
        assessment.ranking().ifPresent(differences::ranked);
        differences.parts();
        differences.failures();
        return List.copyOf(differences.rows);
    }

    private void ranked(RankingResult ranking) {
        Comparison comparison = ranking.compare(here(), contrast.reference().candidate().id());
        comparison.better().forEach(d -> criterion(d, Favours.FOR));
        comparison.worse().forEach(d -> criterion(d, Favours.AGAINST));
        comparison.gatesReferenceMissed().forEach(g -> requirement(g, Favours.FOR));
        comparison.gatesMissed().forEach(g -> requirement(g, Favours.AGAINST));
    }

    private void criterion(CriterionDifference d, Favours favours) {
        add(
                DifferenceGroup.CRITERIA,
                d.criterion(),
                value(d.criterion(), d.value()),
                value(d.criterion(), d.referenceValue()),
                favours);
    }

    private String value(String criterion, double value) {
        String currency = assessment.study().heading().currency();
        CriterionName name =
                assessment.study().goals().weights().stream()
                        .map(Weight::criterion)
                        .filter(c -> c.words().equals(criterion))
                        .findFirst()
                        .orElseThrow();
        return ResultText.value(name, value, currency, units);
    }

    private void requirement(GateVerdict missed, Favours favours) {
        String reason = "missed: " + missed.reason();
        boolean other = favours == Favours.FOR;
        add(
                DifferenceGroup.REQUIREMENTS,
                missed.gate(),
                other ? "met" : reason,
                other ? reason : "met",
                favours);
    }

    private void parts() {
        Candidate here = contrast.candidate().candidate();
        Candidate there = contrast.reference().candidate();
        byKind(contrast.added(), here).forEach((kind, names) -> part(kind, names, ""));
        byKind(contrast.leftOut(), there).forEach((kind, names) -> part(kind, "", names));
        byKind(contrast.altered(), here)
                .forEach((kind, names) -> part(kind, names, "another kind or value"));
    }

    private void part(String kind, String here, String there) {
        add(DifferenceGroup.PARTS, kind, here, there, Favours.NEITHER);
    }

    private static Map<String, String> byKind(List<Part> parts, Candidate of) {
        Spoken spoken = new Spoken(of);
        return PartNames.byKind(
                parts, names -> String.join(", ", names.stream().map(spoken::of).toList()));
    }

    private void failures() {
        contrast.shifts().stream()
                .filter(Shift::better)
                .forEach(s -> shift(s, DifferenceGroup.BETTER));
        contrast.shifts().stream()
                .filter(s -> !s.better())
                .forEach(s -> shift(s, DifferenceGroup.WORSE));
        contrast.own().forEach(v -> only(DifferenceGroup.OWN, v));
        contrast.spared().forEach(v -> only(DifferenceGroup.SPARED, v));
    }

    private void shift(Shift shift, DifferenceGroup group) {
        rows.add(
                new DifferenceRow(
                        group,
                        new Spoken(contrast.candidate().candidate()).failure(shift.failure()),
                        marked(shift.after()),
                        marked(shift.before()),
                        shift.better() ? Favours.FOR : Favours.AGAINST,
                        Optional.of(new CandidateFailure(here(), shift.failure()))));
    }

    /** A failure that only one of the two can have, if it reaches the engine. */
    private void only(DifferenceGroup group, Verdict verdict) {
        if (verdict.outcome().compareTo(Outcome.REDUNDANCY_LOST) < 0) {
            boolean own = group == DifferenceGroup.OWN;
            String failure = verdict.failure().name();
            String marked = marked(verdict.outcome());
            Candidate of =
                    own ? contrast.candidate().candidate() : contrast.reference().candidate();
            rows.add(
                    new DifferenceRow(
                            group,
                            new Spoken(of).failure(failure),
                            own ? marked : "",
                            own ? "" : marked,
                            own ? Favours.AGAINST : Favours.FOR,
                            Optional.of(new CandidateFailure(of.id(), failure))));
        }
    }

    private String here() {
        return contrast.candidate().candidate().id();
    }

    private static String marked(Outcome outcome) {
        OutcomeMark mark = OutcomeMark.of(outcome);
        return mark.sign() + " " + mark.word();
    }

    private void add(
            DifferenceGroup group, String what, String here, String there, Favours favours) {
        rows.add(new DifferenceRow(group, what, here, there, favours, Optional.empty()));
    }
}
