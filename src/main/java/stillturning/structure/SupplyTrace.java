package stillturning.structure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stillturning.structure.Survival.SourceSpread;
import stillturning.structure.Survival.Surplus;
import stillturning.structure.Survival.SurvivingState;
import stillturning.structure.Wiring.GraphLine;
import stillturning.structure.Wiring.GraphLineKind;
import stillturning.structure.Wiring.Need;

/** Follows what is fed back to its sources, and what that needs, back to theirs. */
final class SupplyTrace {

    private final Wiring wiring;
    private final Survival survival;
    private final SurvivingState outcome;
    private final BitSet parts = new BitSet();
    private final BitSet seen = new BitSet();
    private final Deque<Integer> open = new ArrayDeque<>();

    SupplyTrace(Wiring wiring, Survival survival, SurvivingState outcome) {
        this.wiring = wiring;
        this.survival = survival;
        this.outcome = outcome;
    }

    BitSet all(Collection<Integer> needs) {
        needs.forEach(this::ask);
        while (!open.isEmpty()) {
            Need need = wiring.needs.get(open.remove());
            parts.set(need.part());
            for (SourceSpread spread : outcome.spreads()) {
                if (spread.feeds(need) && !need.ownSource()) {
                    follow(spread, need);
                    break;
                }
            }
        }
        return parts;
    }

    /** Parts on a way from a source to what is fed, the source first. */
    List<Integer> wayTo(int index) {
        Need need = wiring.needs.get(index);
        SourceSpread spread =
                outcome.spreads().stream()
                        .filter(s -> s.feeds(need))
                        .findFirst()
                        .orElseThrow(
                                () -> new IllegalArgumentException("need " + index + " is unfed"));
        Set<Integer> way = new LinkedHashSet<>(wiring.barsOn(need.from()));
        int at = need.from();
        while (spread.out()[at] != Survival.START) {
            int line = spread.out()[at];
            way.add(wiring.lines.get(line).part());
            at = survival.otherEnd(line, at);
            way.addAll(wiring.barsOn(at));
        }
        way.add(wiring.lines.get(spread.source()).part());
        way.remove(need.part());
        List<Integer> fromSource = new ArrayList<>(way);
        Collections.reverse(fromSource);
        return fromSource;
    }

    private void follow(SourceSpread spread, Need need) {
        trace(spread.out(), need.from());
        trace(spread.back(), need.to());
        pass(spread.source());
    }

    private void pass(int index) {
        GraphLine line = wiring.lines.get(index);
        parts.set(line.part());
        ask(line.need());
        if (line.kind() == GraphLineKind.GENERATOR_BESIDE_BATTERY) {
            survival.surplus(line, outcome).ifPresent(this::traceSurplus);
        }
    }

    private void traceSurplus(Surplus surplus) {
        parts.set(surplus.buffer().part());
        trace(surplus.out(), surplus.buffer().to());
        trace(surplus.back(), surplus.buffer().from());
    }

    private void trace(int[] via, int net) {
        int at = net;
        wiring.barsOn(at).forEach(parts::set);
        while (via[at] != Survival.START) {
            int line = via[at];
            pass(line);
            at = survival.otherEnd(line, at);
            wiring.barsOn(at).forEach(parts::set);
        }
    }

    private void ask(int need) {
        if (need != Wiring.NOTHING && !seen.get(need)) {
            seen.set(need);
            open.add(need);
        }
    }
}
