package stillturning.desktop.view.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.testfx.api.FxToolkit;
import stillturning.report.guide.Guide;
import stillturning.report.guide.GuidePage;

class GuideWindowTest {

    static List<GuidePage> pages() {
        return Guide.pages();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void aPageIsSetWithItsQuestionItsExampleAndNoMarks(GuidePage page) {
        String html = GuideSheet.html(page, false);
        assertTrue(html.contains("<h1>"), html);
        assertTrue(html.contains("<pre><code class=\"language-console\">$ stillturning"), html);
        assertFalse(html.contains("<p>|"), "a table is not set: " + html);
        assertFalse(html.contains("<script"), html);
    }

    @Test
    void whatLooksLikeMarkupIsText() {
        GuidePage page = new GuidePage("x", "# Why?\n\n<script>alert(1)</script>\n");
        assertFalse(GuideSheet.html(page, true).contains("<script>alert"));
    }

    @Test
    void theWindowListsEveryQuestion() throws Exception {
        FxToolkit.registerPrimaryStage();
        CompletableFuture<Integer> listed = new CompletableFuture<>();
        Platform.runLater(
                () -> {
                    Stage owner = new Stage();
                    owner.setScene(new Scene(new Label("work")));
                    owner.show();
                    GuideWindow.show(owner, false);
                    listed.complete(
                            javafx.stage.Window.getWindows().stream()
                                    .map(w -> w.getScene().lookup("#guide-questions"))
                                    .filter(ListView.class::isInstance)
                                    .mapToInt(l -> ((ListView<?>) l).getItems().size())
                                    .sum());
                    owner.close();
                });
        assertEquals(Guide.pages().size(), listed.get(60, TimeUnit.SECONDS));
    }
}
