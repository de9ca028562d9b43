package stillturning.yaml.notation;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The word in the file, where it is not the Java name in lower case with hyphens; on a record, its
 * word as one kind of a sealed interface.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE, ElementType.RECORD_COMPONENT, ElementType.FIELD})
public @interface Key {
    /** The word. */
    String value();
}
