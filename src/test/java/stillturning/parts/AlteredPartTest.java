package stillturning.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class AlteredPartTest {

    /** A question that is forgotten would be answered as for a part of no kind. */
    @Test
    void everyQuestionIsPassedOnToThePart() {
        Set<String> asked =
                Arrays.stream(Part.class.getDeclaredMethods())
                        .filter(method -> !method.isSynthetic() && !method.getName().equals("id"))
                        .map(AlteredPartTest::named)
                        .collect(Collectors.toCollection(TreeSet::new));
        asked.removeAll(
                Arrays.stream(AlteredPart.class.getDeclaredMethods())
                        .map(AlteredPartTest::named)
                        .collect(Collectors.toSet()));
        assertEquals(Set.of(), asked);
    }

    private static String named(Method method) {
        return method.getName() + Arrays.toString(method.getParameterTypes());
    }
}
