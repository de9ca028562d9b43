package stillturning.yaml.shape;

import java.util.Optional;
import stillturning.yaml.notation.TextForm;

/**
 * How a type is written as one text.
 *
 * @param example a text that would be right, if the type is never written any other way
 */
record TextNotation(TextForm<?> form, Optional<String> example) {}
