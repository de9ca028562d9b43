package stillturning.yaml.notation;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a record, a component or an enum constant means, in one sentence for the schema and for
 * editors. On a method of an interface it speaks of the component of that name in every record that
 * has none of its own.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE, ElementType.RECORD_COMPONENT, ElementType.FIELD, ElementType.METHOD})
public @interface Describes {
    /** The sentence. */
    String value();
}
