package stillturning.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.report.drawing.plot.Series.Sample;

class SampleThinningTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void noSampleLiesFartherFromTheThinnedLineThanTheTolerance(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Sample> samples = new ArrayList<>();
        double seconds = 0;
        double volts = 12;
        for (int i = 0; i < 300; i++) {
            seconds += random.nextInt(4) == 0 ? 0 : random.nextDouble();
            volts += random.nextInt(20) == 0 ? random.nextDouble() * 4 - 2 : 0.01;
            samples.add(new Sample(seconds, volts));
        }
        List<Sample> thinned = SampleThinning.of(samples, 0.05);
        assertTrue(thinned.size() < samples.size(), "seed " + seed);
        assertEquals(samples.get(0), thinned.get(0));
        assertEquals(samples.get(299), thinned.get(thinned.size() - 1));
        int next = 0;
        for (int i = 0; i + 1 < thinned.size(); i++) {
            Sample from = thinned.get(i);
            Sample to = thinned.get(i + 1);
            next = samples.subList(next, 300).indexOf(from) + next;
            for (int k = next; !samples.get(k).equals(to); k++) {
                Sample at = samples.get(k);
                double span = to.seconds() - from.seconds();
                double share = span > 0 ? (at.seconds() - from.seconds()) / span : 0;
                double line = from.value() + share * (to.value() - from.value());
                assertEquals(line, at.value(), 0.05 + 1e-12, "seed " + seed);
            }
        }
    }

    @Test
    void aStraightLineKeepsItsEndsOnly() {
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i <= 100; i++) {
            samples.add(new Sample(i, 14 - 0.02 * i));
        }
        assertEquals(List.of(samples.get(0), samples.get(100)), SampleThinning.of(samples, 1e-6));
        assertEquals(List.of(), SampleThinning.of(List.of(), 1e-6));
    }
}
