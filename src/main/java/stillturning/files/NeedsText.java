package stillturning.files;

import stillturning.model.EngineLogic;

/** Engine logic written in one line, with the offset of each load's name for messages. */
public record NeedsText(EngineLogic logic, java.util.List<Mention> mentions) {

    /** A load's name at an offset of the text. */
    public record Mention(String load, int offset) {}

    public NeedsText {
        mentions = java.util.List.copyOf(mentions);
    }
}
