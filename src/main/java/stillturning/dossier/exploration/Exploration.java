package stillturning.dossier.exploration;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.front.Found;
import stillturning.assess.front.Found.Member;
import stillturning.assess.front.FrontSearch;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.assess.requirement.Survey;
import stillturning.dossier.RequirementSurvey;
import stillturning.dossier.exploration.BareStarts.BareStart;
import stillturning.dossier.redrawn.Service;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.move.Drawn;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.goal.CriterionName;
import stillturning.report.explored.ExploredFront;
import stillturning.report.explored.ExploredFront.ExploredLayout;
import stillturning.report.explored.ExploredFront.FurtherFigures;
import stillturning.report.explored.ExploredFront.SearchExtent;
import stillturning.report.explored.Yardstick;
import stillturning.sizing.Sizing;
import stillturning.story.UntoldStory;
import stillturning.yaml.YamlDocument;

/** Looks for layouts of a study that nothing outdoes. */
public final class Exploration {

    /** What is found first is named after this, with its place on the front. */
    public static final String NAME = "layout-";

    /** What layouts are compared by where nobody says. */
    public static final List<CriterionName> USUALLY_BY =
            List.of(CriterionName.COMPLEXITY, CriterionName.WEIGHT, CriterionName.ENDURANCE);

    private final Study study;
    private final List<Drawn> drawings;
    private final Yardstick by;

    private Exploration(Study study, List<Drawn> drawings, Yardstick by) {
        this.study = study;
        this.drawings = drawings;
        this.by = by;
    }

    /**
     * Searches from every candidate of a study, and from stripped layouts.
     *
     * @param read what the reader makes of the study, without a mistake
     * @param by what layouts are compared by
     * @throws ChangeRefused if a candidate's file cannot be changed
     */
    public static Explored of(
            StudyReader reader,
            ReadStudy read,
            List<CriterionName> by,
            SearchLimits limits,
            SearchWatch watch)
            throws ChangeRefused {
        return of(reader, read, by).explored(limits, watch);
    }

    private static Exploration of(StudyReader reader, ReadStudy read, List<CriterionName> by)
            throws ChangeRefused {
        Study study =
                read.study()
                        .orElseThrow(() -> new IllegalArgumentException("a study with mistakes"));
        List<Drawn> drawings = new ArrayList<>();
        for (Candidate candidate : study.candidates()) {
            drawings.add(Drawn.of(reader, read, candidate.id()));
        }
        return new Exploration(study, drawings, new Yardstick(by));
    }

    private Explored explored(SearchLimits limits, SearchWatch watch) {
        Service service = Service.of(drawings);
        List<BareStart> bare =
                BareStarts.of(baseline(), drawings, new LayoutSpace(drawings, by, service));
        List<Drawn> starts = new ArrayList<>(drawings);
        bare.forEach(start -> starts.add(start.drawn()));
        Found<Drawn> found = FrontSearch.in(new LayoutSpace(starts, by, service), limits, watch);
        List<Made> made = found.front().stream().map(member -> made(member, bare)).toList();
        return told(
                made, new SearchExtent(found.tally(), limits.steps(), bare.size(), found.whole()));
    }

    private Drawn baseline() {
        String from = study.goals().baseline().orElse(study.candidates().get(0).id());
        return drawings.stream()
                .filter(drawn -> drawn.candidate().id().equals(from))
                .findFirst()
                .orElse(drawings.get(0));
    }

    /**
     * Something on the front.
     *
     * @param from what it was made from, in words
     * @param asDrawn whether it is a candidate as it is
     */
    private record Made(Drawn drawn, String from, List<String> steps, boolean asDrawn) {}

    private Made made(Member<Drawn> member, List<BareStart> bare) {
        int stripped = member.start() - drawings.size();
        Drawn drawn = member.thing();
        return stripped < 0
                ? new Made(
                        drawn, drawn.candidate().title(), member.steps(), member.steps().isEmpty())
                : new Made(drawn, bare.get(stripped).from(), member.steps(), false);
    }

    private Explored told(List<Made> made, SearchExtent done) {
        List<ExploredLayout> front = new ArrayList<>();
        Map<String, Drawn> drawn = new LinkedHashMap<>();
        List<Candidate> candidates = new ArrayList<>(study.candidates());
        for (Made one : made) {
            Candidate origin = one.drawn.candidate();
            String name = one.asDrawn ? origin.id() : free(drawn.size() + 1);
            front.add(new ExploredLayout(name, one.from, one.steps));
            if (!one.asDrawn) {
                drawn.put(name, one.drawn);
                candidates.add(named(origin, name));
            }
        }
        Assessment assessment = assessed(candidates, drawn);
        List<ExploredLayout> all =
                study.candidates().stream()
                        .filter(c -> assessment.of(c.id()).isPresent())
                        .map(c -> new ExploredLayout(c.id(), c.title(), List.of()))
                        .toList();
        FurtherFigures beside = new FurtherFigures(brokenLimits(front, drawn), Map.of());
        return new Explored(new ExploredFront(assessment, by, front, all, done, beside), drawn);
    }

    /** How many limits of sizes each layout breaks; nothing of one whose sizes have no answer. */
    private Map<String, Integer> brokenLimits(
            List<ExploredLayout> front, Map<String, Drawn> drawn) {
        Map<String, Integer> broken = new LinkedHashMap<>();
        for (ExploredLayout layout : front) {
            Drawn file = drawn.getOrDefault(layout.id(), drawingOf(layout.id()));
            try {
                Candidate candidate = file.candidate();
                broken.put(
                        layout.id(),
                        Math.toIntExact(Sizing.of(study, candidate, file.installation()).wrong()));
            } catch (UntoldStory e) {
                // it stands without a number, which says that nobody knows
            }
        }
        return broken;
    }

    private Drawn drawingOf(String candidate) {
        return drawings.stream()
                .filter(drawn -> drawn.candidate().id().equals(candidate))
                .findFirst()
                .orElse(drawings.get(0));
    }

    /**
     * Tells again what an earlier search found: every layout is read from its text and assessed in
     * full.
     *
     * @param read what the reader makes of the study, without a mistake
     * @throws ChangeRefused if a layout cannot be read any more
     */
    public static Explored again(StudyReader reader, ReadStudy read, KeptFront kept)
            throws ChangeRefused {
        Exploration exploration = of(reader, read, kept.by());
        List<Made> made = new ArrayList<>();
        for (KeptFront.KeptLayout layout : kept.front()) {
            Drawn origin = Drawn.of(reader, read, layout.candidate());
            boolean asDrawn = layout.text().isEmpty();
            Drawn drawn =
                    asDrawn
                            ? origin
                            : origin.with(YamlDocument.of(origin.text().file(), layout.text()));
            made.add(new Made(drawn, layout.from(), layout.steps(), asDrawn));
        }
        return exploration.told(made, kept.search().done());
    }

    /** A name that no candidate has. */
    private String free(int number) {
        String name = NAME + number;
        return study.candidate(name).isEmpty() ? name : NAME + "found-" + number;
    }

    private static Candidate named(Candidate candidate, String name) {
        return new Candidate(
                name,
                candidate.title() + ", " + name,
                candidate.about(),
                candidate.parts(),
                candidate.joins(),
                candidate.cockpit());
    }

    private Assessment assessed(List<Candidate> candidates, Map<String, Drawn> drawn) {
        Study all =
                new Study(study.id(), study.heading(), study.aircraft(), study.goals(), candidates);
        Map<String, Drawn> files = new LinkedHashMap<>(drawn);
        drawings.forEach(drawing -> files.put(drawing.candidate().id(), drawing));
        Survey survey =
                (requirement, candidate) ->
                        Optional.ofNullable(files.get(candidate.id()))
                                .flatMap(
                                        file ->
                                                new RequirementSurvey(all, file.installation())
                                                        .of(requirement, file.candidate()));
        return Assess.of(all, survey, done -> {});
    }
}
