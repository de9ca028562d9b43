package stillturning.yaml;

import java.util.List;
import java.util.Optional;

/**
 * What came of binding a document.
 *
 * @param value present exactly if there is no problem
 * @param problems every mistake in the document, in order of place
 * @param asFarAsRead what can be made of a half-written document with its mistakes left out: to be
 *     shown, never to be computed with
 * @param places where each value stands, for what later rooms have to say about it
 */
public record BindResult<T>(
        Optional<T> value, Optional<T> asFarAsRead, List<Problem> problems, DocumentPlaces places) {
    public BindResult {
        problems = List.copyOf(problems);
    }
}
