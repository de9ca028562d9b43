package stillturning.structure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import stillturning.structure.Wiring.GraphLine;
import stillturning.structure.Wiring.GraphLineKind;
import stillturning.structure.Wiring.Need;

/**
 * What is still fed once a part is gone.
 *
 * <p>Something is fed if current can come to it from a source and get back to the same source. A
 * contactor needs its coil fed, a channel its logic, a converter its input, an alternator its
 * field: everything is taken to hold at first, and let go until what holds, holds by itself. So a
 * contactor fed by what it feeds stays closed, as in flight.
 */
final class Survival {

    /** No part that is gone. */
    static final BitSet NOTHING_GONE = new BitSet();

    /** Stands for a line where there is none. */
    static final int NONE = -1;

    static final int UNREACHED = -1;
    static final int START = -2;

    private final Wiring wiring;
    private final int nets;
    private final int[][] leaving;
    private final int[][] arriving;

    /** The nets that a source's current can come to, and those it can return from. */
    @SuppressWarnings("ArrayRecordComponent") // never leaves the room, never written
    record SourceSpread(int source, int[] out, int[] back) {
        boolean feeds(Need need) {
            return out[need.from()] != UNREACHED && back[need.to()] != UNREACHED;
        }
    }

    /** What steadies a generator, and the ways out to it and back from it. */
    @SuppressWarnings("ArrayRecordComponent") // never leaves the room, never written
    record Surplus(GraphLine buffer, int[] out, int[] back) {}

    /**
     * What holds.
     *
     * @param open lines that conduct
     * @param fed needs that are met
     */
    record SurvivingState(BitSet gone, BitSet open, BitSet fed, List<SourceSpread> spreads) {
        /** Whether current from any source comes to it. */
        boolean comes(Need need) {
            return spreads.stream().anyMatch(s -> s.out[need.from()] != UNREACHED);
        }

        /** Whether current gets back from it to any source. */
        boolean returns(Need need) {
            return spreads.stream().anyMatch(s -> s.back[need.to()] != UNREACHED);
        }
    }

    Survival(Wiring wiring) {
        this.wiring = wiring;
        this.nets = wiring.circuit.nets();
        List<List<Integer>> out = new ArrayList<>();
        List<List<Integer>> in = new ArrayList<>();
        for (int net = 0; net < nets; net++) {
            out.add(new ArrayList<>());
            in.add(new ArrayList<>());
        }
        for (int i = 0; i < wiring.lines.size(); i++) {
            GraphLine line = wiring.lines.get(i);
            out.get(line.from()).add(i);
            in.get(line.to()).add(i);
            if (line.kind() == GraphLineKind.METAL) {
                out.get(line.to()).add(i);
                in.get(line.from()).add(i);
            }
        }
        leaving = arrays(out);
        arriving = arrays(in);
    }

    /** What holds without these parts, every lever standing wherever it helps. */
    SurvivingState without(BitSet gone) {
        return without(gone, anywhere());
    }

    /** What holds without these parts where the levers stand so that it is enough, if they can. */
    Optional<SurvivingState> enough(BitSet gone, Predicate<SurvivingState> isEnough) {
        return standing(gone, isEnough).map(StandingState::outcome);
    }

    /**
     * What holds, and how the levers stand for it.
     *
     * @param at which of its useful positions each part's lever stands in
     */
    @SuppressWarnings("ArrayRecordComponent") // never leaves the room, never written
    record StandingState(SurvivingState outcome, int[] at) {}

    /** How the levers can stand so that what holds without these parts is enough, if they can. */
    Optional<StandingState> standing(BitSet gone, Predicate<SurvivingState> isEnough) {
        SurvivingState best = without(gone);
        LeverCombinations stands = new LeverCombinations(wiring.stands);
        if (!isEnough.test(best) || stands.areOne()) {
            return Optional.of(new StandingState(best, stands.at()))
                    .filter(s -> isEnough.test(best));
        }
        do {
            SurvivingState outcome = without(gone, stands.masks());
            if (isEnough.test(outcome)) {
                return Optional.of(new StandingState(outcome, stands.at()));
            }
        } while (stands.advance());
        return Optional.empty();
    }

    /** What would still be fed without these parts if nothing that they held let go. */
    SurvivingState frozen(SurvivingState before, BitSet gone) {
        BitSet open = (BitSet) before.open.clone();
        for (int i = 0; i < wiring.lines.size(); i++) {
            if (gone.get(wiring.lines.get(i).part())) {
                open.clear(i);
            }
        }
        return fed(gone, open);
    }

    /**
     * Parts that suffice to feed these: with any other part gone, they are still fed at the same
     * stand of the levers.
     *
     * @param needs what is fed in the outcome
     */
    BitSet partsBehind(Collection<Integer> needs, SurvivingState outcome) {
        return new SupplyTrace(wiring, this, outcome).all(needs);
    }

    private SurvivingState without(BitSet gone, long[] stands) {
        BitSet open = new BitSet();
        for (int i = 0; i < wiring.lines.size(); i++) {
            GraphLine line = wiring.lines.get(i);
            open.set(i, !gone.get(line.part()) && (line.stands() & stands[line.part()]) != 0);
        }
        SurvivingState outcome = fed(gone, open);
        while (letGo(outcome)) {
            outcome = fed(gone, open);
        }
        return outcome;
    }

    private boolean letGo(SurvivingState outcome) {
        boolean changed = false;
        for (int i = outcome.open.nextSetBit(0); i >= 0; i = outcome.open.nextSetBit(i + 1)) {
            GraphLine line = wiring.lines.get(i);
            boolean unfed = line.need() != Wiring.NOTHING && !outcome.fed.get(line.need());
            if (unfed
                    || (line.kind() == GraphLineKind.GENERATOR_BESIDE_BATTERY
                            && surplus(line, outcome).isEmpty())) {
                outcome.open.clear(i);
                changed = true;
            }
        }
        return changed;
    }

    private SurvivingState fed(BitSet gone, BitSet open) {
        BitSet dead = bars(gone);
        BitSet fed = new BitSet();
        List<SourceSpread> spreads = new ArrayList<>();
        for (int i = open.nextSetBit(0); i >= 0; i = open.nextSetBit(i + 1)) {
            GraphLine line = wiring.lines.get(i);
            if (line.kind().isSource()) {
                SourceSpread spread =
                        new SourceSpread(
                                i,
                                flood(line.to(), leaving, dead, open),
                                flood(line.from(), arriving, dead, open));
                spreads.add(spread);
                mark(spread, gone, fed);
            }
        }
        markOwnSources(gone, fed);
        return new SurvivingState(gone, open, fed, spreads);
    }

    private void markOwnSources(BitSet gone, BitSet fed) {
        for (int n = 0; n < wiring.needs.size(); n++) {
            Need need = wiring.needs.get(n);
            if (need.ownSource() && !gone.get(need.part())) {
                fed.set(n);
            }
        }
    }

    private void mark(SourceSpread spread, BitSet gone, BitSet fed) {
        for (int n = 0; n < wiring.needs.size(); n++) {
            Need need = wiring.needs.get(n);
            if (!gone.get(need.part()) && spread.feeds(need)) {
                fed.set(n);
            }
        }
    }

    private BitSet bars(BitSet gone) {
        BitSet nets = new BitSet();
        gone.stream().map(wiring::barNet).filter(net -> net != Wiring.NO_NET).forEach(nets::set);
        return nets;
    }

    private int[] flood(int start, int[][] links, BitSet dead, BitSet open) {
        int[] via = new int[nets];
        Arrays.fill(via, UNREACHED);
        if (dead.get(start)) {
            return via;
        }
        int[] queue = new int[nets];
        queue[0] = start;
        via[start] = START;
        int found = 1;
        for (int i = 0; i < found; i++) {
            for (int link : links[queue[i]]) {
                int net = otherEnd(link, queue[i]);
                if (open.get(link) && via[net] == UNREACHED && !dead.get(net)) {
                    via[net] = link;
                    queue[found++] = net;
                }
            }
        }
        return via;
    }

    /** The net at the other end of a line. */
    int otherEnd(int link, int net) {
        GraphLine line = wiring.lines.get(link);
        return line.from() == net ? line.to() : line.from();
    }

    /**
     * Where what a generator gives too much can go: out to a battery's plus and back from its
     * minus, by metal and forwards through diodes; nowhere if there is none.
     */
    Optional<Surplus> surplus(GraphLine generator, SurvivingState outcome) {
        BitSet passing = new BitSet();
        outcome.open.stream().filter(i -> passes(wiring.lines.get(i).kind())).forEach(passing::set);
        BitSet dead = bars(outcome.gone);
        int[] out = flood(generator.to(), leaving, dead, passing);
        int[] back = flood(generator.from(), arriving, dead, passing);
        return wiring.buffers.stream()
                .filter(buffer -> !outcome.gone.get(buffer.part()))
                .filter(b -> out[b.to()] != UNREACHED && back[b.from()] != UNREACHED)
                .findFirst()
                .map(buffer -> new Surplus(buffer, out, back));
    }

    private static boolean passes(GraphLineKind kind) {
        return switch (kind) {
            case METAL, ONE_WAY -> true;
            case CONVERTER, CELL, GENERATOR, GENERATOR_BESIDE_BATTERY -> false;
        };
    }

    private long[] anywhere() {
        long[] masks = new long[wiring.stands.length];
        Arrays.fill(masks, PartGraph.ANY_STAND);
        return masks;
    }

    private static int[][] arrays(List<List<Integer>> lists) {
        return lists.stream()
                .map(list -> list.stream().mapToInt(i -> i).toArray())
                .toArray(int[][]::new);
    }
}
