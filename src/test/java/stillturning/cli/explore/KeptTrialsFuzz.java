package stillturning.cli.explore;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.front.Found;
import stillturning.assess.front.FrontSearch;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.assess.front.Space;
import stillturning.assess.front.TrialResult;
import stillturning.cli.terminal.ResumeFile;
import stillturning.fuzz.Promises;

/** Any text as what an exploration has kept; what is accepted is gone on with in a small space. */
public final class KeptTrialsFuzz {

    private static final int CRITERIA = 2;

    private KeptTrialsFuzz() {}

    public static void fuzzerTestOneInput(byte[] input) {
        ResumeFile.in(Promises.text(input), KeptTrials.TrialsFile.class)
                .flatMap(file -> file.trials(CRITERIA))
                .ifPresent(KeptTrialsFuzz::goOn);
    }

    private static void goOn(Map<String, TrialResult> trials) {
        Promises.isNumber(trials, "trials");
        SearchWatch watch =
                new SearchWatch() {
                    @Override
                    public Optional<TrialResult> known(String way) {
                        return Optional.ofNullable(trials.get(way));
                    }
                };
        Found<Integer> found = FrontSearch.in(new Seven(), new SearchLimits(4, 20), watch);
        Promises.hold(found.tally().left() >= 0, "steps left: " + found.tally());
        Promises.isNumber(found, "found");
    }

    /** A tree of seven. */
    private static final class Seven implements Space<Integer> {
        @Override
        public List<Integer> starts() {
            return List.of(1);
        }

        @Override
        public List<Step<Integer>> steps(Integer from) {
            return List.of(new Down("left", 2 * from), new Down("right", 2 * from + 1));
        }

        @Override
        public Object form(Integer thing) {
            return thing;
        }

        @Override
        public FirstLook look(Integer thing, List<String> evidence) {
            return new Looked(List.of((double) thing, 7.0 - thing), evidence);
        }
    }

    private record Looked(List<Double> atBest, List<String> evidence) implements Space.FirstLook {
        @Override
        public TrialResult trial() {
            return new TrialResult.Met(atBest, evidence);
        }
    }

    private record Down(String words, int to) implements Space.Step<Integer> {
        @Override
        public Space.StepEffect turn() {
            return Space.StepEffect.OTHER;
        }

        @Override
        public Optional<Integer> taken() {
            return Optional.of(to).filter(n -> n < 8);
        }
    }
}
