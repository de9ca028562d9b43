package stillturning.cli.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class KeptFailureTest {

    /** A disk with room for so many bytes. */
    private static final class Disk extends OutputStream {
        private final String refusal;
        private int room;

        Disk(int room, String refusal) {
            this.room = room;
            this.refusal = refusal;
        }

        @Override
        public void write(int b) throws IOException {
            if (room-- <= 0) {
                throw new IOException(refusal);
            }
        }
    }

    private static KeptFailure printed(int room, String refusal, int characters) {
        KeptFailure stream = new KeptFailure(new Disk(room, refusal));
        PrintWriter out =
                new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), false);
        out.print("x".repeat(characters));
        out.flush();
        out.print("more");
        out.flush();
        return stream;
    }

    @Test
    void whatFitsLeavesNothingToTell() {
        assertTrue(printed(100_000, "No space left on device", 50_000).failure().isEmpty());
    }

    @Test
    void aFullDiskIsRemembered() {
        KeptFailure stream = printed(10_000, "No space left on device", 50_000);
        assertEquals("No space left on device", stream.failure().orElseThrow().getMessage());
        assertFalse(stream.readerIsGone());
    }

    @Test
    void aReaderThatHasSeenEnoughIsNoFault() {
        assertTrue(printed(0, "Broken pipe", 1).readerIsGone());
    }
}
