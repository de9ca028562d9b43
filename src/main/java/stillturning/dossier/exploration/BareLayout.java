package stillturning.dossier.exploration;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import stillturning.assess.front.Space.Step;
import stillturning.assess.front.Space.StepEffect;
import stillturning.files.move.Drawn;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;

/** Takes out of a drawing whatever it does its service without, nothing failing. */
final class BareLayout {

    private final LayoutSpace space;
    private final Predicate<Drawn> wanted;
    private final Set<String> needed = new HashSet<>();

    private BareLayout(LayoutSpace space, Predicate<Drawn> wanted) {
        this.space = space;
        this.wanted = wanted;
    }

    /** What is left; empty if nothing can be taken out. */
    static Optional<Drawn> of(Drawn drawn, LayoutSpace space) {
        return of(drawn, space, any -> true);
    }

    /** What is left, all its batteries among it; empty if nothing can be taken out. */
    static Optional<Drawn> withBatteries(Drawn drawn, LayoutSpace space) {
        long batteries = batteries(drawn);
        return of(drawn, space, left -> batteries(left) == batteries);
    }

    private static Optional<Drawn> of(Drawn drawn, LayoutSpace space, Predicate<Drawn> wanted) {
        BareLayout bare = new BareLayout(space, wanted);
        Optional<Drawn> left = Optional.empty();
        Optional<Drawn> barer = bare.barer(drawn);
        while (barer.isPresent()) {
            left = barer;
            barer = bare.barer(barer.get());
        }
        return left;
    }

    /** How many batteries a drawing has. */
    static long batteries(Drawn drawn) {
        return drawn.candidate().parts().stream().filter(BareLayout::isBattery).count();
    }

    private static boolean isBattery(Part part) {
        return part.elements().stream().anyMatch(Cell.class::isInstance);
    }

    /** What was needed once is not tried again, though something else may have taken its place. */
    private Optional<Drawn> barer(Drawn drawn) {
        for (Step<Drawn> step : space.steps(drawn)) {
            if (step.turn() == StepEffect.LESS && !needed.contains(step.words())) {
                Optional<Drawn> taken = step.taken().filter(wanted).filter(space::serves);
                if (taken.isPresent()) {
                    return taken;
                }
                needed.add(step.words());
            }
        }
        return Optional.empty();
    }
}
