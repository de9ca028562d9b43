package stillturning.yaml.notation;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The range of a plain number without unit; a {@code double} component needs it, to say that it is
 * one.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT})
public @interface Bounds {
    /** Least value allowed. */
    double least();

    /** Greatest value allowed. */
    double most();
}
