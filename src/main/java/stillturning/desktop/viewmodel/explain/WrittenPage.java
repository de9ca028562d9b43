package stillturning.desktop.viewmodel.explain;

import java.net.URI;

/**
 * A page that was written.
 *
 * @param fingerprint of the study's files that it tells about
 * @param contents what it holds beside the comparison
 * @param at a file of it, which is gone when the program ends
 */
public record WrittenPage(String html, String fingerprint, Contents contents, URI at) {}
