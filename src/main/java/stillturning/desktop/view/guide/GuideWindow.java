package stillturning.desktop.view.guide;

import javafx.scene.Scene;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.SplitPane;
import javafx.scene.input.KeyCode;
import javafx.scene.web.WebView;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import stillturning.report.guide.Guide;
import stillturning.report.guide.GuidePage;

/** The questions that people ask, and the answer to the chosen one; stays open beside the work. */
public final class GuideWindow {

    private final ListView<GuidePage> questions = new ListView<>();
    private final WebView answer = new WebView();
    private final Stage stage = new Stage();

    private GuideWindow(Stage owner, boolean dark) {
        stage.initOwner(owner);
        stage.setTitle("Questions and answers");
        questions.setId("guide-questions");
        questions.getItems().setAll(Guide.pages());
        questions.setCellFactory(list -> new Question());
        questions.setAccessibleText("Questions");
        answer.setId("guide-answer");
        answer.setAccessibleText("The answer");
        answer.getEngine().setJavaScriptEnabled(false);
        answer.getEngine().setCreatePopupHandler(wish -> null);
        questions
                .getSelectionModel()
                .selectedItemProperty()
                .addListener(
                        (of, before, now) ->
                                answer.getEngine().loadContent(GuideSheet.html(now, dark)));
        questions.getSelectionModel().selectFirst();
        SplitPane both = new SplitPane(questions, answer);
        both.setDividerPositions(0.32);
        both.setPrefSize(1080, 700);
        Scene scene = new Scene(both);
        scene.getStylesheets().setAll(owner.getScene().getStylesheets());
        both.setStyle(owner.getScene().getRoot().getStyle());
        scene.setOnKeyPressed(
                event -> {
                    if (event.getCode() == KeyCode.ESCAPE) {
                        stage.close();
                    }
                });
        stage.setScene(scene);
    }

    /** Shows it; the window can still be used. */
    public static void show(Stage owner, boolean dark) {
        GuideWindow guide = new GuideWindow(owner, dark);
        guide.stage.show();
        guide.questions.requestFocus();
    }

    private static final class Question extends ListCell<GuidePage> {
        Question() {
            setWrapText(true);
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(@Nullable GuidePage page, boolean empty) {
            super.updateItem(page, empty);
            setText(empty || page == null ? "" : page.question());
        }
    }
}
