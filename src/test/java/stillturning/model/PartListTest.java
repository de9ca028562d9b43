package stillturning.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.parts.Part;
import stillturning.parts.joining.Bus;

class PartListTest {

    private static final List<Part> PARTS = Shelf.everyKind().subList(0, 8);

    @Test
    void itIsTheListThatWasGiven() {
        PartList list = PartList.copyOf(PARTS);
        assertEquals(PARTS, list);
        assertEquals(PARTS.hashCode(), list.hashCode());
        assertEquals(PARTS, list.stream().toList());
        assertSame(list, PartList.copyOf(list));
        assertNotEquals(PARTS.subList(1, PARTS.size()), list);
    }

    @Test
    void whatIsDoneToTheGivenListLaterDoesNotReachIt() {
        List<Part> given = new ArrayList<>(PARTS);
        PartList list = PartList.copyOf(given);
        given.clear();
        assertEquals(PARTS, list);
        assertThrows(UnsupportedOperationException.class, () -> list.remove(0));
    }

    @Test
    void eachPartIsFoundByItsIdAndNoOther() {
        PartList list = PartList.copyOf(PARTS);
        PARTS.forEach(part -> assertEquals(Optional.of(part), list.find(part.id())));
        assertEquals(Optional.empty(), list.find("nothing"));
    }

    @Test
    void ofTwoThatAreCalledAlikeTheFirstIsFound() {
        Part first = new Bus(Bench.tag("bus"), List.of("feed"), 1e-4);
        Part second = new Bus(Bench.tag("bus"), List.of("feed"), 2e-4);
        assertEquals(Optional.of(first), PartList.copyOf(List.of(first, second)).find("bus"));
    }
}
