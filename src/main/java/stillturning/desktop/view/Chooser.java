package stillturning.desktop.view;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** One of several things, by its words. */
public final class Chooser<T> extends ComboBox<T> {

    private final Function<T, String> words;
    private boolean filling;

    /**
     * @param question what is chosen, for a screen reader
     * @param chosen told what the user chooses
     */
    public Chooser(String question, Function<T, String> words, Consumer<T> chosen) {
        setAccessibleText(question);
        this.words = words;
        setConverter(converter());
        valueProperty()
                .addListener(
                        (of, before, now) -> {
                            if (now != null && !filling) {
                                chosen.accept(now);
                            }
                        });
    }

    private StringConverter<T> converter() {
        return new StringConverter<>() {
            @Override
            public String toString(@Nullable T value) {
                return value == null ? "" : words.apply(value);
            }

            @Override
            public @Nullable T fromString(String text) {
                return null;
            }
        };
    }

    /** Offers these, one of them chosen, in the words of now; nobody is told. */
    public void offer(List<T> all, @Nullable T chosen) {
        filling = true;
        if (!getItems().equals(all)) {
            getItems().setAll(all);
        }
        setConverter(converter());
        setValue(chosen);
        filling = false;
    }
}
