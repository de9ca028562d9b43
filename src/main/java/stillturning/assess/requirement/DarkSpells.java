package stillturning.assess.requirement;

import stillturning.story.Story;
import stillturning.story.StoryEvent;

/** How long a load is without its supply until it works again. */
final class DarkSpells {

    private DarkSpells() {}

    /** The longest time from its stopping to its restart (s); 0 for never stopping. */
    static double longestSeconds(Story story, String load) {
        double longest = 0;
        double since = Double.NaN;
        for (StoryEvent event : story.happenings()) {
            if (!event.part().equals(load)) {
                continue;
            }
            if (event.kind() == StoryEvent.Kind.LOAD_STOPS) {
                since = event.seconds();
            }
            if (event.kind() == StoryEvent.Kind.LOAD_RESTARTS && since <= event.seconds()) {
                longest = Math.max(longest, event.seconds() - since);
                since = Double.NaN;
            }
        }
        return longest;
    }
}
