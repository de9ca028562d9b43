package stillturning.desktop.view.picture;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.transform.Scale;
import javafx.scene.transform.Translate;
import stillturning.report.drawing.Picture;

/** Pictures on real paper: strokes and letters, not pixels, on one page. */
public final class Printing {
    private static final String FAMILY = "DejaVu Sans";
    private static final double HEAD = 22;
    private static final double SMALL = 7;

    /**
     * What stands on the page beside the picture.
     *
     * @param caution what must stand on everything that is printed for use in an aircraft
     */
    public record PageWords(String title, LocalDate date, String caution) {}

    private Printing() {}

    /** A job at the usual printer, if there is one. */
    public static Optional<PrinterJob> job() {
        return Printer.getDefaultPrinter() == null
                ? Optional.empty()
                : Optional.ofNullable(PrinterJob.createPrinterJob());
    }

    /** What to tell a user for whom there is no {@link #job()}. */
    public static String withoutPrinter() {
        return "There is no printer. Set one up in the system's settings, or export the page and"
                + " print it from a browser.";
    }

    /**
     * Prints a picture, scaled to one page that lies as the picture does.
     *
     * @return whether it went to the printer
     */
    public static boolean print(Picture picture, PageWords words, PrinterJob job) {
        PageLayout page =
                job.getPrinter()
                        .createPageLayout(
                                paper(job),
                                picture.width() > picture.height()
                                        ? PageOrientation.LANDSCAPE
                                        : PageOrientation.PORTRAIT,
                                Printer.MarginType.DEFAULT);
        Node sheet = page(picture, words, page.getPrintableWidth(), page.getPrintableHeight());
        return job.printPage(page, sheet) && job.endJob();
    }

    private static Paper paper(PrinterJob job) {
        return job.getJobSettings().getPageLayout().getPaper();
    }

    /** One page of the size given (points). */
    static Node page(Picture picture, PageWords words, double width, double height) {
        Pane page = new Pane();
        page.setPrefSize(width, height);
        page.resize(width, height);
        Text title = text(words.title(), 12, FontWeight.BOLD, 0, 12);
        Text date = text(words.date().toString(), SMALL, FontWeight.NORMAL, 0, 12);
        date.setX(width - date.getLayoutBounds().getWidth());
        title.setWrappingWidth(Math.max(40, date.getX() - 12));
        Text caution = text(words.caution(), SMALL, FontWeight.NORMAL, 0, 0);
        caution.setWrappingWidth(width);
        double foot = caution.getLayoutBounds().getHeight();
        caution.setY(height - foot + SMALL);
        double head = Math.max(HEAD, title.getLayoutBounds().getHeight() + 6);
        double room = height - head - foot - 6;
        double fit = Math.min(width / picture.width(), room / picture.height());
        PictureNodes nodes = new PictureNodes(UnaryOperator.identity());
        nodes.show(picture);
        nodes.root().getChildren().forEach(part -> part.setCache(false));
        Group drawn = new Group(nodes.root());
        drawn.getTransforms()
                .addAll(
                        new Translate((width - picture.width() * fit) / 2, head),
                        new Scale(fit, fit));
        page.getChildren().addAll(drawn, title, date, caution);
        return page;
    }

    private static Text text(String words, double size, FontWeight weight, double x, double y) {
        Text text = new Text(x, y, words);
        text.setFont(Font.font(FAMILY, weight, size));
        text.setFill(Color.BLACK);
        return text;
    }
}
