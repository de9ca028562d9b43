package stillturning.files;

import java.util.Optional;
import stillturning.files.entry.RunText.Item;
import stillturning.model.Terminal;

/**
 * Something that lies in a run.
 *
 * @param item what it is made from, if the run makes it
 */
record Stop(Terminal in, Terminal out, String zone, Optional<Item> item) {

    String id() {
        return in.part();
    }
}
