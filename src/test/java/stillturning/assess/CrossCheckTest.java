package stillturning.assess;

import java.util.*;
import org.junit.jupiter.api.Test;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.story.UntoldStory;
import stillturning.structure.*;

class CrossCheckTest {
    @Test
    void look() {
        Map<String, Integer> counts = new TreeMap<>();
        int shown = 0;
        for (long seed = 0; seed < 400; seed++) {
            Study study = new RandomShape(seed).study;
            Candidate c = study.candidates().get(0);
            try {
                var all = Assess.disagreements(study, c);
                var rem = Structure.removals(study.aircraft(), c);
                boolean s0 = rem.get(0).supplied();
                counts.merge("candidates supplied " + s0, 1, Integer::sum);
                if (s0)
                    counts.merge(
                            "removals supplied",
                            (int) rem.stream().filter(r -> r.supplied()).count(),
                            Integer::sum);
                if (s0)
                    counts.merge(
                            "removals not supplied",
                            (int) rem.stream().filter(r -> !r.supplied()).count(),
                            Integer::sum);
                for (var d : all) {
                    counts.merge(
                            d.structureSays()
                                    + "/"
                                    + d.storySays()
                                    + " "
                                    + (d.part().isEmpty() ? "NOTHING " : "")
                                    + d.because(),
                            1,
                            Integer::sum);
                    if (d.because().isEmpty() && shown++ < 12) System.err.println(seed + " " + d);
                }
            } catch (UntoldStory e) {
                counts.merge("untold " + String.valueOf(e.getMessage()).replaceAll("\\d.*", ""), 1, Integer::sum);
            }
        }
        counts.forEach((k, v) -> System.err.println(v + "  " + k));
    }
}
