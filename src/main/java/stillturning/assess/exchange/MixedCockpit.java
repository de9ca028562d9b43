package stillturning.assess.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.model.Candidate;
import stillturning.model.Cockpit;
import stillturning.model.Cue;
import stillturning.model.Procedure;
import stillturning.model.Procedure.Execution;
import stillturning.model.Reach;
import stillturning.parts.Lever;

/**
 * The cockpit of a mix. What a pilot does is that of one candidate; where a lever of his is not
 * there, he moves those that the other candidate has in the same procedure.
 *
 * @param led whose procedures they are
 * @param other the other candidate
 * @param mix the parts that there are
 */
record MixedCockpit(Candidate led, Candidate other, Candidate mix) {

    Cockpit cockpit() {
        Cockpit ours = led.cockpit();
        Cockpit theirs = other.cockpit();
        Map<String, Reach> reach = new LinkedHashMap<>(theirs.reach());
        reach.putAll(ours.reach());
        reach.keySet().removeIf(lever -> mix.lever(lever).isEmpty());
        List<Cue> cues = ours.cues().stream().filter(this::canBeSeen).toList();
        return new Cockpit(
                moves(ours.flight(), theirs.flight()),
                moves(ours.masterOff(), theirs.masterOff()),
                moves(ours.starting(), theirs.starting()),
                cues,
                procedures(cues),
                reach);
    }

    /** Moves of levers that there are: our own, and theirs of levers that we never had. */
    private Map<String, String> moves(Map<String, String> ours, Map<String, String> theirs) {
        Map<String, String> moves = new LinkedHashMap<>();
        ours.forEach((lever, to) -> put(moves, lever, to));
        theirs.forEach(
                (lever, to) -> {
                    if (led.lever(lever).isEmpty()) {
                        put(moves, lever, to);
                    }
                });
        return moves;
    }

    private void put(Map<String, String> moves, String lever, String to) {
        Optional<Lever> there = mix.lever(lever);
        if (there.isPresent() && there.get().positions().contains(to)) {
            moves.put(lever, to);
        }
    }

    private boolean canBeSeen(Cue cue) {
        return cue.sign().watchedPart().stream().allMatch(part -> mix.part(part).isPresent());
    }

    private List<Procedure> procedures(List<Cue> cues) {
        Set<String> seen = cues.stream().map(Cue::name).collect(Collectors.toSet());
        List<Procedure> procedures = new ArrayList<>();
        for (Procedure one : led.cockpit().procedures()) {
            List<String> when = one.when().stream().filter(seen::contains).toList();
            if (!when.isEmpty()) {
                procedures.add(
                        new Procedure(
                                one.name(),
                                when,
                                one.responseSeconds(),
                                moves(one.moves(), inOther(one.name())),
                                one.sheds(),
                                doing(one.execution())));
            }
        }
        return List.copyOf(procedures);
    }

    private Map<String, String> inOther(String procedure) {
        return other.cockpit().procedures().stream()
                .filter(p -> p.name().equals(procedure))
                .map(Procedure::moves)
                .findFirst()
                .orElse(Map.of());
    }

    /** What is no longer there does nothing by itself; then it is the pilot who does it. */
    private Execution doing(Execution doing) {
        Optional<String> automatic = doing.automatic().filter(a -> mix.part(a).isPresent());
        return new Execution(automatic, doing.eachSeconds(), doing.pressesStarter());
    }
}
