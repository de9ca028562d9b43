package stillturning.report.json;

import java.util.List;
import stillturning.model.Study;

/**
 * What was found in a study.
 *
 * @param found usually one for each candidate
 * @param untold what could not be computed, each with its reason
 */
record StudyAnswer<T>(Study study, List<T> found, List<String> untold) {

    /** The start of a document about a study. */
    static <T> JsonShape<StudyAnswer<T>> start() {
        return JsonDocument.<StudyAnswer<T>>start().text("study", a -> a.study().id());
    }

    /** A document about a study: one list, and what could not be computed. */
    static <T> JsonShape<StudyAnswer<T>> list(String key, JsonShape<T> of) {
        return StudyAnswer.<T>start()
                .field(key, JsonTypes.list(of), StudyAnswer::found)
                .texts("untold", StudyAnswer::untold)
                .says("What could not be computed, each with its reason.");
    }
}
