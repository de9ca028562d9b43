package stillturning.desktop.view.window;

import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import stillturning.report.Cautions;

/** What the program is, and what must be known before anything of it is used in an aircraft. */
final class About {

    private About() {}

    /** Shows it beside the window; the window can still be used. */
    static void show(Stage owner) {
        Stage stage = new Stage();
        stage.initOwner(owner);
        stage.setTitle("About Stillturning");
        Label title = new Label("Stillturning");
        title.getStyleClass().add("title-2");
        VBox page =
                new VBox(
                        title,
                        wrapped(
                                "Compares electrical architectures of light aircraft whose engine"
                                        + " stops without electricity."));
        Label heading = new Label("Before you use anything of this");
        heading.getStyleClass().add("title-4");
        page.getChildren().add(heading);
        Cautions.inFull(false).stream()
                .map(line -> wrapped("\u2022 " + line))
                .forEach(page.getChildren()::add);
        page.getChildren()
                .add(
                        wrapped(
                                "Licence: Apache-2.0. The letters are DejaVu; the libraries and"
                                        + " their licences are listed in DEVELOPERS.md."));
        Button close = new Button("Close");
        close.setDefaultButton(true);
        close.setCancelButton(true);
        close.setOnAction(event -> stage.close());
        page.getChildren().add(close);
        page.getStyleClass().add("about");
        Scene scene = new Scene(page);
        scene.getStylesheets().setAll(owner.getScene().getStylesheets());
        page.setStyle(owner.getScene().getRoot().getStyle());
        scene.setOnKeyPressed(
                event -> {
                    if (event.getCode() == KeyCode.ESCAPE) {
                        stage.close();
                    }
                });
        stage.setScene(scene);
        stage.show();
    }

    private static Label wrapped(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }
}
