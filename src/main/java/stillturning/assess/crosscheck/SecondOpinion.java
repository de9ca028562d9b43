package stillturning.assess.crosscheck;

import java.util.List;

/**
 * What holding a candidate's shape against its stories has shown.
 *
 * @param disagreements in the order of the candidate's parts
 * @param untold parts without which there is no story to hold the shape against, each with the
 *     reason
 */
public record SecondOpinion(List<Disagreement> disagreements, List<String> untold) {
    public SecondOpinion {
        disagreements = List.copyOf(disagreements);
        untold = List.copyOf(untold);
    }
}
