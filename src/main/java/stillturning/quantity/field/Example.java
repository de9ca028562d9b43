package stillturning.quantity.field;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a new part is given where no class of the catalogue can know it, as YAML text: {@code 10 A
 * (guess)}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT})
public @interface Example {
    /** The YAML text. */
    String value();
}
