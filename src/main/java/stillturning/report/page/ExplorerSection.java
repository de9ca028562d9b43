package stillturning.report.page;

/**
 * What lets a reader ask the page.
 *
 * @param data results as JSON in which no character can end an element
 * @param script the text between the marks of its element
 * @param hash of the script, as a policy for content names it
 */
public record ExplorerSection(String data, String script, String hash) {}
