package stillturning.yaml.notation;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The value of a component that may be left out, as YAML text: {@code []}, {@code {}}, {@code 12
 * V}, {@code no}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT})
public @interface Default {
    /** The YAML text. */
    String value();
}
