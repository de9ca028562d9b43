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
import stillturning.assess.front.Limits;
import stillturning.assess.front.Search;
import stillturning.assess.front.Watch;
import stillturning.assess.requirement.Survey;
import stillturning.dossier.RequirementSurvey;
import stillturning.dossier.redrawn.Service;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.move.Drawn;
import stillturning.model.Candidate;
import stillturning.model.CriterionName;
import stillturning.model.Study;
import stillturning.report.explored.ExploredFront;
import stillturning.report.explored.ExploredFront.Done;
import stillturning.report.explored.ExploredFront.Layout;
import stillturning.report.explored.Yardstick;

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
     * Searches from every candidate of a study, and from its baseline stripped bare.
     *
     * @param read what the reader makes of the study, without a mistake
     * @param by what layouts are compared by
     * @throws ChangeRefused if a candidate's file cannot be changed
     */
    public static Explored of(
            StudyReader reader, ReadStudy read, List<CriterionName> by, Limits limits, Watch watch)
            throws ChangeRefused {
        Study study =
                read.study()
                        .orElseThrow(() -> new IllegalArgumentException("a study with mistakes"));
        List<Drawn> drawings = new ArrayList<>();
        for (Candidate candidate : study.candidates()) {
            drawings.add(Drawn.of(reader, read, candidate.id()));
        }
        return new Exploration(study, drawings, new Yardstick(by)).explored(limits, watch);
    }

    private Explored explored(Limits limits, Watch watch) {
        Service service = Service.of(drawings);
        List<Drawn> starts = new ArrayList<>(drawings);
        bare(new LayoutSpace(drawings, by, service)).ifPresent(starts::add);
        Found<Drawn> found = Search.in(new LayoutSpace(starts, by, service), limits, watch);
        return told(found, starts.size() - drawings.size(), limits);
    }

    /** The baseline, or the first candidate where there is none, stripped. */
    private Optional<Drawn> bare(LayoutSpace space) {
        String from = study.goals().baseline().orElse(study.candidates().get(0).id());
        return drawings.stream()
                .filter(drawn -> drawn.candidate().id().equals(from))
                .findFirst()
                .flatMap(drawn -> BareLayout.of(drawn, space));
    }

    private Explored told(Found<Drawn> found, int bare, Limits limits) {
        List<Layout> front = new ArrayList<>();
        Map<String, Drawn> drawn = new LinkedHashMap<>();
        List<Candidate> candidates = new ArrayList<>(study.candidates());
        for (Member<Drawn> member : found.front()) {
            boolean stripped = member.start() >= drawings.size();
            Candidate origin = member.thing().candidate();
            String from = origin.title() + (stripped ? " stripped bare" : "");
            if (member.steps().isEmpty() && !stripped) {
                front.add(new Layout(origin.id(), from, List.of()));
            } else {
                String name = free(drawn.size() + 1);
                drawn.put(name, member.thing());
                candidates.add(named(origin, name));
                front.add(new Layout(name, from, member.steps()));
            }
        }
        Assessment assessment = assessed(candidates, drawn);
        List<Layout> drawings =
                study.candidates().stream()
                        .filter(c -> assessment.of(c.id()).isPresent())
                        .map(c -> new Layout(c.id(), c.title(), List.of()))
                        .toList();
        Done done = new Done(found.tally(), limits.steps(), bare, found.whole());
        return new Explored(new ExploredFront(assessment, by, front, drawings, done), drawn);
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
