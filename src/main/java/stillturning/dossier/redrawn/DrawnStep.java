package stillturning.dossier.redrawn;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.front.Space.Step;
import stillturning.assess.front.Space.StepEffect;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.move.Drawn;
import stillturning.files.move.Move;
import stillturning.files.move.MoveKind;
import stillturning.files.move.Moves;
import stillturning.model.Candidate;
import stillturning.parts.element.Protector;

/**
 * A step of a search from one drawing to another.
 *
 * @param words of the move; where two moves from one drawing have the same, the later is numbered
 */
public record DrawnStep(Drawn from, Move move, String words) implements Step<Drawn> {

    /** Every step from a drawing, in the order of the moves. */
    public static List<DrawnStep> all(Drawn from) {
        Map<String, Integer> named = new HashMap<>();
        List<DrawnStep> steps = new ArrayList<>();
        for (Move move : Moves.of(from)) {
            int nth = named.merge(move.words(), 1, Integer::sum);
            String words = nth == 1 ? move.words() : move.words() + " (" + nth + ")";
            steps.add(new DrawnStep(from, move, words));
        }
        return steps;
    }

    @Override
    public StepEffect turn() {
        return switch (move.kind()) {
            case BATTERY_REMOVED, PART_REMOVED, PATH_REMOVED -> StepEffect.LESS;
            case SECOND_PATH, SPLIT_BUS, SEPARATED, BATTERY_ADDED, OVER_VOLTAGE, WARNING_ADDED ->
                    StepEffect.MORE;
            case OTHER_SOURCE,
                    BATTERY_RESIZED,
                    CHARGING_PATH,
                    PROTECTOR,
                    SWITCHED_OTHERWISE,
                    ACT_CHANGED ->
                    StepEffect.OTHER;
        };
    }

    @Override
    public Optional<Drawn> taken() {
        try {
            return Optional.of(move.on(from)).filter(this::keepsProtection);
        } catch (ChangeRefused refused) {
            return Optional.empty();
        }
    }

    /** What burns where a wire has lost its protector, no story tells. */
    private boolean keepsProtection(Drawn after) {
        return move.kind() != MoveKind.PART_REMOVED
                || protectors(after.candidate()) >= protectors(from.candidate());
    }

    private static long protectors(Candidate candidate) {
        return candidate.parts().stream()
                .filter(part -> part.elements().stream().anyMatch(Protector.class::isInstance))
                .count();
    }
}
