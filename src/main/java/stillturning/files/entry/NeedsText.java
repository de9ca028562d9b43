package stillturning.files.entry;

import java.util.List;
import stillturning.model.EngineLogic;

/** Engine logic written in one line, with the offset of each load's name for messages. */
public record NeedsText(EngineLogic logic, List<LoadMention> mentions) {

    /** A load's name at an offset of the text. */
    public record LoadMention(String load, int offset) {}

    public NeedsText {
        mentions = List.copyOf(mentions);
    }
}
