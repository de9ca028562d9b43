package stillturning.desktop.view.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import stillturning.desktop.view.Area;
import stillturning.desktop.view.OnStage;
import stillturning.desktop.viewmodel.Destination;
import stillturning.report.page.Block;

class BlockPaneTest {

    private final OnStage stage;

    BlockPaneTest() {
        OnStage.start();
        BlockPane pane =
                OnStage.on(() -> new BlockPane("said", text -> text.toUpperCase(Locale.ROOT)));
        stage =
                OnStage.show(
                        new Area() {
                            @Override
                            public BlockPane view() {
                                return pane;
                            }

                            @Override
                            public void show(Destination destination) {}
                        });
        OnStage.on(
                () -> {
                    pane.show(
                            List.of(
                                    new Block.Words("words"),
                                    new Block.Lines(List.of("time   event", "  5 ms stops"))));
                    pane.applyCss();
                    return true;
                });
    }

    @Test
    void linesThatKeepTheirShapeHaveLettersOfOneWidth() {
        Label lines = OnStage.on(() -> (Label) stage.scene().lookup(".monospaced"));
        assertEquals("DejaVu Sans Mono", lines.getFont().getFamily());
        stage.close();
    }

    @Test
    void namesInEveryTextAreSpoken() {
        List<String> said =
                OnStage.on(
                        () ->
                                stage.scene().getRoot().lookupAll(".label").stream()
                                        .map(n -> ((Label) n).getText())
                                        .toList());
        assertEquals(List.of("WORDS", "TIME   EVENT\n  5 MS STOPS"), said.subList(0, 2));
        stage.close();
    }
}
