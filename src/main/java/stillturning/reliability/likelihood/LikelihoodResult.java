package stillturning.reliability.likelihood;

import java.util.List;

/**
 * How likely it is that the engine ends in a flight, and what that hangs on. It compares
 * candidates, and certifies nothing. Numbers of events are those of the joint.
 *
 * @param sets the cut sets that count: the joint's without {@code engineOwn}, and without switches
 *     left so that the engine does not even run on the ground
 * @param engineOwn cut sets left out: the engine's own failures alone, which stop it whatever its
 *     supply and so in every candidate
 * @param checked the run-up card gone through before every flight
 * @param unchecked never gone through: what nobody sees is found by inspections alone
 * @param parts importance of every part that is in a set, all its failure modes as one, for {@code
 *     checked}; the largest criticality first
 * @param causes the same for every common cause, left switch and idle pilot
 * @param worst every cut set, for {@code checked}, the likeliest first
 * @param inspections what to inspect: latent failures that end the engine with one more and that no
 *     check reveals
 * @param supposed what is supposed, in sentences, with the side on which it errs
 */
public record LikelihoodResult(
        List<List<Integer>> sets,
        List<List<Integer>> engineOwn,
        ChanceEstimate checked,
        ChanceEstimate unchecked,
        List<Share> parts,
        List<Share> causes,
        List<SetShare> worst,
        List<Inspection> inspections,
        List<String> supposed) {
    public LikelihoodResult {
        sets = sets.stream().map(List::copyOf).toList();
        engineOwn = engineOwn.stream().map(List::copyOf).toList();
        parts = List.copyOf(parts);
        causes = List.copyOf(causes);
        worst = List.copyOf(worst);
        inspections = List.copyOf(inspections);
        supposed = List.copyOf(supposed);
    }
}
