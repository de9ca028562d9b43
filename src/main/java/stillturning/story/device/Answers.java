package stillturning.story.device;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * What has been worked out of states of one candidate's network, kept for all its runs. An answer
 * hangs on nothing but what is asked about. May be asked by several threads at once.
 */
public final class Answers {

    /** More are not kept: usual are some hundred. */
    private static final int MOST = 2000;

    private final Map<Object, List<Double>> known = new ConcurrentHashMap<>();

    /**
     * The answer that is known, or that is worked out.
     *
     * @param state all that the answer hangs on, compared by its content
     */
    public List<Double> about(Object state, Supplier<List<Double>> work) {
        List<Double> answer = known.get(state);
        if (answer == null) {
            answer = List.copyOf(work.get());
            if (known.size() < MOST) {
                known.put(state, answer);
            }
        }
        return answer;
    }
}
