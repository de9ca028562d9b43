package stillturning.cli.terminal;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/**
 * A stream that remembers why it could not be written, since those who print to it are not told.
 * After the first failure nothing more is tried: half a line more would only hide where it ended.
 */
public final class KeptFailure extends FilterOutputStream {

    private Optional<IOException> failure = Optional.empty();

    public KeptFailure(OutputStream out) {
        super(out);
    }

    /** Why it could not be written. */
    public synchronized Optional<IOException> failure() {
        return failure;
    }

    /** Whether it failed since the reader had seen enough ({@code | head}), which is no fault. */
    public boolean readerIsGone() {
        return failure()
                .map(f -> String.valueOf(f.getMessage()).toLowerCase(Locale.ROOT))
                .filter(m -> m.contains("broken pipe") || m.contains("pipe is being closed"))
                .isPresent();
    }

    @Override
    public synchronized void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public synchronized void write(byte[] bytes, int from, int count) throws IOException {
        if (failure.isPresent()) {
            return;
        }
        try {
            out.write(bytes, from, count);
        } catch (IOException e) {
            failure = Optional.of(e);
            throw e;
        }
    }

    @Override
    public synchronized void flush() throws IOException {
        if (failure.isPresent()) {
            return;
        }
        try {
            out.flush();
        } catch (IOException e) {
            failure = Optional.of(e);
            throw e;
        }
    }
}
