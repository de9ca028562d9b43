package stillturning.desktop.view;

import static java.util.Objects.requireNonNull;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import javafx.application.Application;
import javafx.css.PseudoClass;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.text.Font;
import stillturning.desktop.viewmodel.Settings;
import stillturning.report.drawing.Paper;
import stillturning.report.fonts.Letters;

/** Colours, letters and their size. */
public final class Theme {

    private static final double USUAL_PIXELS = 13;
    private static final String SHEET = "desktop.css";
    private static final PseudoClass DARK = PseudoClass.getPseudoClass("dark");

    private Theme() {}

    /** Loads the letters that the program brings along, so that screens look alike everywhere. */
    public static void loadFonts() {
        for (Letters letters : Letters.all()) {
            try (InputStream in = letters.open()) {
                Font.loadFont(in, USUAL_PIXELS);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
    }

    /** Puts the chosen colours and the chosen size on everything that the program shows. */
    public static void apply(Scene scene, Settings settings) {
        boolean dark = settings.paper() == Paper.DARK;
        Application.setUserAgentStylesheet(
                dark
                        ? new PrimerDark().getUserAgentStylesheet()
                        : new PrimerLight().getUserAgentStylesheet());
        String sheet = requireNonNull(Theme.class.getResource(SHEET), SHEET).toExternalForm();
        if (!scene.getStylesheets().contains(sheet)) {
            scene.getStylesheets().add(sheet);
        }
        Parent root = scene.getRoot();
        root.pseudoClassStateChanged(DARK, dark);
        root.setStyle(
                String.format(
                        Locale.ROOT,
                        "-fx-font-size: %.1fpx;",
                        USUAL_PIXELS * settings.scalePercent() / 100));
    }
}
