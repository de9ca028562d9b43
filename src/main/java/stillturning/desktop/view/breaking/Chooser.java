package stillturning.desktop.view.breaking;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** One of several things, by its words. */
final class Chooser<T> extends ComboBox<T> {

    private boolean filling;

    /**
     * @param question what is chosen, for those who only hear
     * @param chosen told what the user chooses
     */
    Chooser(String question, Function<T, String> words, Consumer<T> chosen) {
        setAccessibleText(question);
        setConverter(
                new StringConverter<>() {
                    @Override
                    public String toString(@Nullable T value) {
                        return value == null ? "" : words.apply(value);
                    }

                    @Override
                    public @Nullable T fromString(String text) {
                        return null;
                    }
                });
        valueProperty()
                .addListener(
                        (of, before, now) -> {
                            if (now != null && !filling) {
                                chosen.accept(now);
                            }
                        });
    }

    /** Offers these, one of them chosen; nobody is told. */
    void offer(List<T> all, T chosen) {
        filling = true;
        if (!getItems().equals(all)) {
            getItems().setAll(all);
        }
        setValue(chosen);
        filling = false;
    }
}
