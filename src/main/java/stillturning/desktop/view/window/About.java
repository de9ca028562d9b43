package stillturning.desktop.view.window;

import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.report.Cautions;

/** What the program is, and what must be known before anything of it is used in an aircraft. */
final class About {

    private About() {}

    /** Shows it beside the window; the window can still be used. */
    static void show(Stage owner) {
        Stage stage = new Stage();
        stage.initOwner(owner);
        stage.setTitle("About Stillturning");
        VBox page =
                new VBox(
                        Labels.of("Stillturning", "title-2"),
                        Labels.wrapped(
                                "Compares electrical architectures of light aircraft whose engine"
                                        + " stops without electricity."),
                        Labels.title("Before you use anything of this"));
        Cautions.inFull(false).stream()
                .map(line -> Labels.wrapped("\u2022 " + line))
                .forEach(page.getChildren()::add);
        Button close = Controls.button("Close", "about-close", stage::close);
        close.setDefaultButton(true);
        close.setCancelButton(true);
        page.getChildren()
                .addAll(
                        Labels.wrapped(
                                "Licence: Apache-2.0. The letters are DejaVu; the libraries and"
                                        + " their licences are listed in DEVELOPERS.md."),
                        close);
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
}
