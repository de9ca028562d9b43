package stillturning.yaml.notation;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** On a sealed interface of records: the key that says which kind is written. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE})
public @interface Discriminator {
    /** The key, such as {@code is}. */
    String value();
}
