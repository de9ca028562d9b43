package stillturning.quantity.field;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * How somebody at the aircraft finds a value out, to be read after "find out": a common practice of
 * the trade where no source is named.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface MeasuredBy {
    /** What to do, without a full stop. */
    String value();
}
