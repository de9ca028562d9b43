package stillturning.desktop.viewmodel.draw;

import java.util.Optional;
import stillturning.yaml.notation.Checked;
import stillturning.yaml.shape.FormField;

/**
 * One line of a form.
 *
 * @param field what it is about
 * @param inStudy whether it stands in the file that all candidates share
 * @param mapping place of what holds it
 * @param label name to be shown
 * @param text what is written, in the user's units; empty if nothing is
 * @param otherwise what holds where nothing is written; empty if that is nothing
 * @param fault what is wrong with a text that was typed and not taken
 */
public record FormRow(
        FormField field,
        boolean inStudy,
        String mapping,
        String label,
        String text,
        String otherwise,
        Optional<Checked.TextFault> fault) {

    /** What it means; empty if its name says it. */
    public String words() {
        return field.words().orElse("");
    }
}
