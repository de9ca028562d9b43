package stillturning.desktop.view.guide;

import java.util.List;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import stillturning.report.guide.GuidePage;

/** A page of the guide, set for reading. */
final class GuideSheet {

    private static final List<TablesExtension> TABLES =
            List.of((TablesExtension) TablesExtension.create());

    private static final String STYLE =
            """
            body { font: 15px/1.5 "DejaVu Sans", sans-serif; margin: 1.2em 1.6em; max-width: 58em; }
            h1 { font-size: 1.5em; line-height: 1.25; }
            pre { font: 11px/1.45 "DejaVu Sans Mono", monospace; padding: .8em 1em; overflow-x: auto; }
            code { font-family: "DejaVu Sans Mono", monospace; font-size: .88em; }
            pre code { font-size: 1em; }
            table { border-collapse: collapse; }
            th, td { border: 1px solid; padding: .25em .6em; text-align: left; vertical-align: top; }
            """;
    private static final String LIGHT =
            """
            body { background: #ffffff; color: #1b1f24; }
            pre { background: #f1f3f5; }
            th, td { border-color: #8b949e; }
            """;
    private static final String DARK =
            """
            body { background: #161b22; color: #e6edf3; }
            pre { background: #0d1117; }
            th, td { border-color: #6e7681; }
            """;

    private GuideSheet() {}

    /** HTML without script; what looks like markup in a page is text. */
    static String html(GuidePage page, boolean dark) {
        String body =
                HtmlRenderer.builder()
                        .extensions(TABLES)
                        .escapeHtml(true)
                        .build()
                        .render(Parser.builder().extensions(TABLES).build().parse(page.text()));
        return "<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>Guide</title>"
                + "<style>"
                + STYLE
                + (dark ? DARK : LIGHT)
                + "</style></head><body>"
                + body
                + "</body></html>";
    }
}
