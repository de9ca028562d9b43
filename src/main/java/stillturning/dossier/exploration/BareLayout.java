package stillturning.dossier.exploration;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import stillturning.assess.front.Space.Step;
import stillturning.assess.front.Space.Turn;
import stillturning.files.move.Drawn;

/** Takes out of a drawing whatever it does its service without, nothing failing. */
final class BareLayout {

    private final LayoutSpace space;
    private final Set<String> needed = new HashSet<>();

    private BareLayout(LayoutSpace space) {
        this.space = space;
    }

    /** What is left; empty if nothing can be taken out. */
    static Optional<Drawn> of(Drawn drawn, LayoutSpace space) {
        BareLayout bare = new BareLayout(space);
        Optional<Drawn> left = Optional.empty();
        Optional<Drawn> barer = bare.barer(drawn);
        while (barer.isPresent()) {
            left = barer;
            barer = bare.barer(barer.get());
        }
        return left;
    }

    /** What was needed once is not tried again, though something else may have taken its place. */
    private Optional<Drawn> barer(Drawn drawn) {
        for (Step<Drawn> step : space.steps(drawn)) {
            if (step.turn() == Turn.LESS && !needed.contains(step.words())) {
                Optional<Drawn> taken = step.taken().filter(space::serves);
                if (taken.isPresent()) {
                    return taken;
                }
                needed.add(step.words());
            }
        }
        return Optional.empty();
    }
}
