package stillturning.desktop.draft;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.ScheduledExecutorService;

/**
 * Where and when unsaved work is kept, so that nothing is lost when the program is killed.
 *
 * @param folder a folder of the user's, outside the study; made if it is not there
 * @param executor writes in the background; the caller ends it after closing the draft
 * @param clock tells when something was kept, and when typing paused
 */
public record JournalPolicy(Path folder, ScheduledExecutorService executor, Clock clock) {}
