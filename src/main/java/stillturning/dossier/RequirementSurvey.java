package stillturning.dossier;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.requirement.Survey;
import stillturning.model.Candidate;
import stillturning.model.Installation;
import stillturning.model.Requirement;
import stillturning.model.Study;
import stillturning.reliability.runup.Latent;
import stillturning.reliability.runup.LatentPairs;
import stillturning.report.joint.LatentPairWords;
import stillturning.sizing.Sizing;
import stillturning.sizing.SurveyDepth;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizingReport;
import stillturning.sizing.result.WeightSheet;
import stillturning.sizing.result.WireSchedule;
import stillturning.story.UntoldStory;

/** Looks at sizes, arms and pairs of failures where a study requires something of them. */
public final class RequirementSurvey implements Survey {

    /** At most so many parts are named. */
    private static final int NAMED = 3;

    private final Study study;
    private final Installation installation;

    /** A survey of a study. */
    public RequirementSurvey(Study study, Installation installation) {
        this.study = study;
        this.installation = installation;
    }

    @Override
    public Optional<RequirementMet> of(Requirement requirement, Candidate candidate) {
        return requirement.accept(new Looking(candidate));
    }

    private RequirementMet sizes(Requirement requirement, Candidate candidate) {
        Optional<SizingReport> report = report(candidate, SurveyDepth.SINGLE_FAILURES);
        if (report.isEmpty()) {
            return uncomputed(requirement);
        }
        List<String> wrong =
                report.get().findings().stream()
                        .filter(f -> f.rule().gravity() == Rule.Gravity.WRONG)
                        .map(SizeFinding::part)
                        .distinct()
                        .toList();
        List<String> untold = report.get().untold();
        String found =
                wrong.isEmpty() ? "none is" : report.get().wrong() + " are, at " + first(wrong);
        String doubt =
                untold.isEmpty()
                        ? ""
                        : "; the currents of " + untold.size() + " failures are missing";
        return new RequirementMet(
                requirement.inWords(),
                wrong.isEmpty() && untold.isEmpty(),
                found + doubt,
                List.of(),
                wrong.isEmpty() ? fullest(report.get()) : report.get().wrong() + " too many");
    }

    /** The circuit that drops most of what it may. */
    private static String fullest(SizingReport report) {
        return report.wires().circuits().stream()
                .max(Comparator.comparingDouble(RequirementSurvey::used))
                .map(
                        c ->
                                String.format(
                                        Locale.ROOT,
                                        "the fullest circuit, %s, drops %.0f %% of what it may",
                                        c.name(),
                                        100 * used(c)))
                .orElse("");
    }

    private static double used(WireSchedule.LoadCircuit circuit) {
        return circuit.drop().volts() / circuit.drop().limitVolts();
    }

    private static String first(List<String> parts) {
        int left = parts.size() - NAMED;
        return String.join(", ", parts.subList(0, Math.min(NAMED, parts.size())))
                + (left > 0 ? " and " + left + " more" : "");
    }

    private RequirementMet arm(Requirement.ArmBetween requirement, Candidate candidate) {
        Optional<SizingReport> report = report(candidate, SurveyDepth.NOTHING_WRONG);
        if (report.isEmpty()) {
            return uncomputed(requirement);
        }
        WeightSheet sheet = report.get().purchase().weight();
        double without = sheet.withoutArmKilograms();
        double known = sheet.kilograms() - without;
        if (!(known > 0)) {
            return new RequirementMet(
                    requirement.inWords(), false, "no part has an arm", List.of());
        }
        double arm = sheet.momentKilogramMetres() / known;
        double spare = Math.min(arm - requirement.leastMetres(), requirement.mostMetres() - arm);
        String rest =
                without > 0
                        ? String.format(
                                Locale.ROOT, "; %.1f kg have no arm and are left out", without)
                        : "";
        return new RequirementMet(
                requirement.inWords(),
                spare >= 0,
                String.format(Locale.ROOT, "they balance at %.2f m", arm) + rest,
                List.of(),
                String.format(
                        Locale.ROOT,
                        spare >= 0 ? "%.2f m to spare" : "%.2f m outside",
                        Math.abs(spare)));
    }

    private static RequirementMet uncomputed(Requirement requirement) {
        return new RequirementMet(
                requirement.inWords(), false, "its sizes cannot be computed", List.of());
    }

    private RequirementMet latentPairs(Requirement.NoLatentPair requirement, Candidate candidate) {
        try {
            LatentPairs found = LatentPairs.of(study, candidate);
            List<Latent> breaking =
                    switch (requirement.unseen()) {
                        case IN_FLIGHT -> found.latents();
                        case IN_FLIGHT_AND_RUN_UP -> found.unchecked();
                    };
            LatentPairWords words = new LatentPairWords(found);
            return new RequirementMet(
                    requirement.inWords(),
                    breaking.isEmpty(),
                    words.reason(breaking),
                    List.of(),
                    words.margin(breaking));
        } catch (UntoldStory e) {
            return new RequirementMet(
                    requirement.inWords(),
                    false,
                    "its pairs cannot be computed: " + e.getMessage(),
                    List.of());
        }
    }

    private Optional<SizingReport> report(Candidate candidate, SurveyDepth depth) {
        try {
            return Optional.of(Sizing.of(study, candidate, installation, depth));
        } catch (UntoldStory e) {
            return Optional.empty();
        }
    }

    /** Only what is of sizes is looked at here. */
    private final class Looking implements Requirement.Visitor<Optional<RequirementMet>> {

        private final Candidate candidate;

        Looking(Candidate candidate) {
            this.candidate = candidate;
        }

        @Override
        public Optional<RequirementMet> visit(Requirement.NoSizeLimitBroken requirement) {
            return Optional.of(sizes(requirement, candidate));
        }

        @Override
        public Optional<RequirementMet> visit(Requirement.ArmBetween requirement) {
            return Optional.of(arm(requirement, candidate));
        }

        @Override
        public Optional<RequirementMet> visit(Requirement.NoLatentPair requirement) {
            return Optional.of(latentPairs(requirement, candidate));
        }

        @Override
        public Optional<RequirementMet> visit(Requirement.NoSingleFailureStopsEngine requirement) {
            return Optional.empty();
        }

        @Override
        public Optional<RequirementMet> visit(Requirement.RunsWithMasterOff requirement) {
            return Optional.empty();
        }

        @Override
        public Optional<RequirementMet> visit(Requirement.EnduranceWithoutCharging requirement) {
            return Optional.empty();
        }

        @Override
        public Optional<RequirementMet> visit(Requirement.InterruptionBelow requirement) {
            return Optional.empty();
        }

        @Override
        public Optional<RequirementMet> visit(Requirement.RestartsInFlight requirement) {
            return Optional.empty();
        }

        @Override
        public Optional<RequirementMet> visit(Requirement.StartsCold requirement) {
            return Optional.empty();
        }

        @Override
        public Optional<RequirementMet> visit(Requirement.WeightAtMost requirement) {
            return Optional.empty();
        }

        @Override
        public Optional<RequirementMet> visit(Requirement.NoSingleFailureDarkens requirement) {
            return Optional.empty();
        }

        @Override
        public Optional<RequirementMet> visit(Requirement.ActsAtMost requirement) {
            return Optional.empty();
        }

        @Override
        public Optional<RequirementMet> visit(Requirement.CostAtMost requirement) {
            return Optional.empty();
        }

        @Override
        public Optional<RequirementMet> visit(Requirement.DeparturesAtMost requirement) {
            return Optional.empty();
        }
    }
}
