package stillturning.assess;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stillturning.assess.Elsewhere.WorseInPhase;
import stillturning.assess.verdict.Judge;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.story.Moment;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** Tries every single failure of every candidate at every moment of the flight. */
final class EveryPhase {

    private static final Comparator<WorseInPhase> WORST_FIRST =
            Comparator.comparing(WorseInPhase::there).thenComparing(WorseInPhase::seconds);

    private final Assessment basis;

    EveryPhase(Assessment basis) {
        this.basis = basis;
    }

    /** In parallel; the result does not depend on who is done first. */
    Elsewhere all(Consumer<String> progress) {
        Study study = basis.study();
        List<Job> jobs =
                basis.appraisals().stream()
                        .flatMap(
                                a ->
                                        OtherConditions.moments(study).stream()
                                                .map(m -> new Job(a, m)))
                        .toList();
        List<Told> told =
                jobs.parallelStream()
                        .map(
                                job -> {
                                    Told done = tell(study, job);
                                    progress.accept(job.candidate());
                                    return done;
                                })
                        .toList();
        List<WorseInPhase> worse = new ArrayList<>();
        for (Appraisal appraisal : basis.appraisals()) {
            worse.addAll(worst(appraisal, jobs, told));
        }
        return new Elsewhere(worse, told.stream().flatMap(one -> one.untold.stream()).toList());
    }

    private record Job(Appraisal appraisal, Moment moment) {
        String candidate() {
            return appraisal.candidate().id();
        }
    }

    private record Told(List<WorseInPhase> worse, Optional<String> untold) {}

    private static Told tell(Study study, Job job) {
        Candidate candidate = job.appraisal.candidate();
        List<WorseInPhase> worse = new ArrayList<>();
        try {
            Judge judge = new Judge(study, Timeline.quick(study, candidate, job.moment));
            for (Verdict usual : job.appraisal.singles()) {
                Verdict there = judge.typically(usual.failure());
                if (there.outcome().compareTo(usual.outcome()) < 0) {
                    worse.add(
                            new WorseInPhase(
                                    candidate.id(),
                                    usual.failure().name(),
                                    usual.outcome(),
                                    job.moment,
                                    there.outcome(),
                                    there.planned().engine().endurance().seconds()));
                }
            }
            return new Told(worse, Optional.empty());
        } catch (UntoldStory e) {
            String where = candidate.id() + " in " + job.moment.phase() + ": ";
            return new Told(List.of(), Optional.of(where + e.getMessage()));
        }
    }

    private static List<WorseInPhase> worst(Appraisal appraisal, List<Job> jobs, List<Told> told) {
        List<WorseInPhase> all = new ArrayList<>();
        for (int i = 0; i < jobs.size(); i++) {
            if (jobs.get(i).candidate().equals(appraisal.candidate().id())) {
                all.addAll(told.get(i).worse);
            }
        }
        List<WorseInPhase> worst = new ArrayList<>();
        for (Verdict single : appraisal.singles()) {
            all.stream()
                    .filter(e -> e.failure().equals(single.failure().name()))
                    .min(Comparator.comparing(WorseInPhase::there))
                    .ifPresent(worst::add);
        }
        worst.sort(WORST_FIRST);
        return worst;
    }
}
