package stillturning.quantity.field;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A quantity that is another one in a part of another size: with a power of what is said under
 * another key, so 1 with the voltage and -1 with the capacity for the resistance of a battery.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT})
@Repeatable(GoesWith.All.class)
public @interface GoesWith {
    /** The other's key. */
    String value();

    /** The power of the other. */
    int power() default 1;

    /** Where it goes with several. */
    @Retention(RetentionPolicy.RUNTIME)
    @Target({ElementType.RECORD_COMPONENT})
    @interface All {
        GoesWith[] value();
    }
}
