package stillturning.dossier.exploration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stillturning.dossier.exploration.KeptFront.KeptSearch;
import stillturning.dossier.exploration.KeptFront.SearchReach;

/** What is kept of a search. */
class KeptFrontTest {

    /** A file that is kept beside others must not differ from run to run. */
    @Test
    void refusalsAreWrittenInOneOrder() {
        Map<String, Integer> counted = new LinkedHashMap<>();
        IntStream.range(0, 20).forEach(n -> counted.put("requirement " + (7 * n % 20), n));
        KeptSearch search = new KeptSearch(20, 0, counted, 0, 0, 0, new SearchReach(0, 1, 0, true));
        List<String> sorted = counted.keySet().stream().sorted().toList();
        assertEquals(sorted, List.copyOf(search.missed().keySet()));
    }
}
