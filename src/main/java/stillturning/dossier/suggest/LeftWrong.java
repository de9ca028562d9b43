package stillturning.dossier.suggest;

import java.util.List;
import java.util.stream.Stream;
import stillturning.assess.Scrutiny;
import stillturning.assess.verdict.LeftSwitch;
import stillturning.assess.verdict.Outcome;
import stillturning.files.move.Drawn;
import stillturning.model.failure.FailureCatalogue.Misplaced;

/** Switches left wrong before flight, which nothing shows and which then end the engine. */
public record LeftWrong(Misplaced switches) implements Aim {

    /** Those of a candidate. */
    static Stream<Aim> in(List<LeftSwitch> all) {
        return all.stream().filter(LeftWrong::ends).map(left -> new LeftWrong(left.switches()));
    }

    private static boolean ends(LeftSwitch left) {
        return !left.shows() && left.outcome().filter(Outcome.ENGINE_LOST::equals).isPresent();
    }

    @Override
    public String words() {
        return switches.words() + " left so before flight, which nothing shows (engine lost)";
    }

    @Override
    public List<String> parts() {
        return List.copyOf(switches.positions().keySet());
    }

    @Override
    public boolean isLeft(Drawn after, Scrutiny look) {
        return look.leftSwitches().stream()
                .filter(left -> left.switches().positions().equals(switches.positions()))
                .anyMatch(LeftWrong::ends);
    }
}
