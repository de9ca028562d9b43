package stillturning.assess;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.ToleranceOutcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Burdens;
import stillturning.model.Requirement;
import stillturning.model.Study;
import stillturning.quantity.Formats;
import stillturning.story.StartAttempt;
import stillturning.story.StoryEvent;

/** Holds a candidate's verdicts against the hard requirements. */
final class Requirements implements Requirement.Visitor<RequirementMet> {

    private final Study.Goals goals;
    private final List<Verdict> singles;
    private final Optional<Verdict> masterOff;
    private final Verdict chargingLost;
    private final Burdens burdens;
    private final Starts beside;

    /**
     * How the engine starts.
     *
     * @param notRestartedAfter failures after which it cannot be started again in flight, if that
     *     is asked
     */
    record Starts(Optional<StartAttempt> coldStart, List<String> notRestartedAfter) {}

    Requirements(
            Study.Goals goals,
            List<Verdict> singles,
            Optional<Verdict> masterOff,
            Verdict chargingLost,
            Burdens burdens,
            Starts beside) {
        this.goals = goals;
        this.singles = singles.stream().filter(v -> !v.engineOwn()).toList();
        this.masterOff = masterOff;
        this.chargingLost = chargingLost;
        this.burdens = burdens;
        this.beside = beside;
    }

    RequirementMet check(Requirement requirement) {
        return requirement.accept(this);
    }

    @Override
    public RequirementMet visit(Requirement.NoSingleFailureStopsEngine requirement) {
        return noneOf(requirement, v -> v.outcome() == Outcome.ENGINE_LOST, "do");
    }

    @Override
    public RequirementMet visit(Requirement.EnduranceWithoutCharging requirement) {
        double seconds = lasts(chargingLost);
        boolean met = seconds >= requirement.seconds() && chargingLost.untold().isEmpty();
        String from =
                Double.isInfinite(seconds) ? "" : ", counted from " + goals.countsFrom().words();
        String runs = "it runs on for " + inWords(seconds) + from;
        return met(requirement, met, untold(chargingLost).orElse(runs));
    }

    @Override
    public RequirementMet visit(Requirement.InterruptionBelow requirement) {
        double seconds = requirement.seconds();
        return noneOf(requirement, v -> interrupts(v, seconds), "do, or stop it");
    }

    @Override
    public RequirementMet visit(Requirement.RestartsInFlight requirement) {
        List<String> names = beside.notRestartedAfter();
        String reason =
                names.isEmpty()
                        ? "it can after each of " + singles.size()
                        : "it cannot after " + names.size() + " of " + singles.size();
        return new RequirementMet(requirement.inWords(), names.isEmpty(), reason, names);
    }

    @Override
    public RequirementMet visit(Requirement.StartsCold requirement) {
        Optional<StartAttempt> cold = beside.coldStart();
        return met(
                requirement,
                cold.filter(StartAttempt::runs).isPresent(),
                cold.map(start -> start.conditions() + ": " + started(start))
                        .orElse("the study has no starter"));
    }

    private static String started(StartAttempt start) {
        return start.runs()
                ? "it runs after " + Formats.duration(start.seconds())
                : start.happenings().stream()
                        .filter(h -> h.kind() == StoryEvent.Kind.CRANKING_FAILS)
                        .findFirst()
                        .map(h -> "it " + h.words())
                        .orElse("nothing turns it");
    }

    @Override
    public RequirementMet visit(Requirement.WeightAtMost requirement) {
        double kilograms = burdens.kilograms();
        return met(
                requirement,
                kilograms <= requirement.kilograms(),
                String.format(Locale.ROOT, "it weighs %.1f kg", kilograms));
    }

    @Override
    public RequirementMet visit(Requirement.RunsWithMasterOff requirement) {
        if (masterOff.isEmpty()) {
            return met(requirement, false, "it has no master-off positions to try");
        }
        Verdict drill = masterOff.get();
        boolean runs = drill.outcome().compareTo(Outcome.STOPS_UNTIL_PILOT_ACTS) > 0;
        return met(
                requirement,
                runs,
                runs
                        ? "it runs on for " + inWords(lasts(drill))
                        : untold(drill).orElse("the drill stops it"));
    }

    private double lasts(Verdict verdict) {
        return verdict.planned().engine().lastsFrom(goals.countsFrom());
    }

    private RequirementMet noneOf(Requirement requirement, Predicate<Verdict> bad, String words) {
        List<String> names = singles.stream().filter(bad).map(v -> v.failure().name()).toList();
        List<String> doubtful =
                singles.stream()
                        .filter(bad.negate())
                        .filter(v -> v.inBand().map(ToleranceOutcome::then).filter(bad).isPresent())
                        .map(v -> v.failure().name())
                        .toList();
        String may = " may by the tolerance of protectors";
        if (names.isEmpty()) {
            String doubt = doubtful.isEmpty() ? "" : "; " + doubtful.size() + may;
            String reason = "none of " + singles.size() + " does" + doubt;
            return new RequirementMet(requirement.inWords(), true, reason, doubtful);
        }
        String doubt = doubtful.isEmpty() ? "" : ", and " + doubtful.size() + " more" + may;
        long untold = singles.stream().filter(bad).filter(v -> v.untold().isPresent()).count();
        String so = untold == 0 ? "" : ", " + untold + " of them because it cannot be computed";
        String reason = names.size() + " of " + singles.size() + " " + words + so + doubt;
        return new RequirementMet(requirement.inWords(), false, reason, names);
    }

    private static Optional<String> untold(Verdict verdict) {
        return verdict.untold().map(why -> "it counts as stopping: cannot be computed, " + why);
    }

    private static String inWords(double seconds) {
        return Double.isInfinite(seconds)
                ? "as long as the rest of the aircraft"
                : Formats.lasting(seconds);
    }

    private static boolean interrupts(Verdict verdict, double seconds) {
        return verdict.planned().engine().longestInterruptionSeconds() >= seconds
                || verdict.outcome().compareTo(Outcome.STOPS_UNTIL_PILOT_ACTS) <= 0
                || verdict.planned().engine().stoppedAndCameBack();
    }

    private static RequirementMet met(Requirement requirement, boolean met, String reason) {
        return new RequirementMet(requirement.inWords(), met, reason, List.of());
    }
}
