package hushmaze.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A file of lines that are written one by one as they are worked out, and can be gone on with after a stop at any moment:
 * what was written stays, a last line without its end is cut off. A side file beside it, {@code NAME.sweep}, says what the
 * lines are of; a file of something else is refused, not mended.
 *
 * <p>Whoever has it open holds a lock on it, so that no second run writes between the lines.
 */
public final class RowFile implements AutoCloseable {
    /** Added to the file's name for the side file's. */
    public static final String SIDE = ".sweep";

    private static final byte END = '\n';
    private static final String WAY_OUT =
            "allow overwriting to replace it (on the command line: --overwrite), or name another file";

    private final Path file;
    private final FileChannel channel;
    private int kept;

    private RowFile(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Opens a file, old or new.
     *
     * @param file of lines; its folder must be there
     * @param about what the lines are of, a text of lines {@code name: value}
     * @param head first line, with its end
     * @param starts what each further line starts with, in order
     * @param overwrite whether a file of something else, or one without its side file, is replaced; one that matches is
     *     replaced too
     * @throws UnwritableFile if it is of something else, is being written by another run, or cannot be written
     */
    public static RowFile open(Path file, String about, String head, List<String> starts, boolean overwrite) {
        if (file.toAbsolutePath().getParent() == null
                || !Files.isDirectory(file.toAbsolutePath().getParent())) {
            throw refuse(file, "there is no folder " + file.toAbsolutePath().getParent());
        }
        if (Files.isDirectory(file)) {
            throw refuse(file, "this is a folder; it must be a file");
        }
        try {
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            RowFile rows = new RowFile(file, channel);
            rows.lockAndTakeUp(about, head, starts, overwrite);
            return rows;
        } catch (IOException e) {
            throw unwritable(file, e);
        }
    }

    /** The side file of a file. */
    public static Path side(Path file) {
        return file.resolveSibling(file.getFileName() + SIDE);
    }

    /** How many lines after the first were there already. */
    public int kept() {
        return kept;
    }

    /**
     * Adds a line at the end; once this returns, it stays.
     *
     * @param line with its end, and no other line end in it
     */
    public void append(String line) {
        if (line.indexOf(END) != line.length() - 1) {
            throw new IllegalArgumentException("not one whole line: " + line);
        }
        try {
            write(line);
        } catch (IOException e) {
            throw unwritable(file, e);
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw unwritable(file, e);
        }
    }

    private void lockAndTakeUp(String about, String head, List<String> starts, boolean overwrite) throws IOException {
        boolean taken = false;
        try {
            if (channel.tryLock() == null) {
                throw refuse(file, "another run is writing it");
            }
            if (overwrite) {
                // The rows go before the side file changes: no stop in between may leave old rows beside a new one.
                channel.truncate(0);
            }
            if (channel.size() == 0) {
                AtomicFile.write(side(file), stream -> stream.write(about.getBytes(StandardCharsets.UTF_8)));
            } else {
                requireSame(file, about);
            }
            takeUp(head, starts);
            taken = true;
        } catch (OverlappingFileLockException e) {
            throw refuse(file, "another run is writing it");
        } finally {
            if (!taken) {
                channel.close();
            }
        }
    }

    /** Checks the lines that are there, cuts off what is no whole line, and writes the first where there is none. */
    private void takeUp(String head, List<String> starts) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        List<String> lines = wholeLines(bytes);
        if (!lines.isEmpty() && !lines.get(0).equals(head)) {
            throw refuse(file, "its first line has other columns; " + WAY_OUT);
        }
        for (int i = 1; i < lines.size(); i++) {
            if (i > starts.size() || !lines.get(i).startsWith(starts.get(i - 1))) {
                throw refuse(file, "its line " + (i + 1) + " is not the row that belongs there; " + WAY_OUT);
            }
        }
        int whole = bytes.length;
        while (whole > 0 && bytes[whole - 1] != END) {
            whole--;
        }
        channel.truncate(whole);
        channel.position(whole);
        if (lines.isEmpty()) {
            write(head);
        }
        kept = Math.max(0, lines.size() - 1);
    }

    private static List<String> wholeLines(byte[] bytes) {
        List<String> lines = new ArrayList<>();
        int start = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == END) {
                lines.add(new String(Arrays.copyOfRange(bytes, start, i + 1), StandardCharsets.UTF_8));
                start = i + 1;
            }
        }
        return lines;
    }

    private void write(String line) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(line.getBytes(StandardCharsets.UTF_8));
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
        channel.force(false);
    }

    private static void requireSame(Path file, String about) {
        if (Files.notExists(side(file))) {
            throw refuse(file, "there is a file of this name already, without " + side(file) + "; " + WAY_OUT);
        }
        List<String> there = FileBytes.text(side(file)).lines().toList();
        List<String> now = about.lines().toList();
        for (int i = 0; i < Math.max(there.size(), now.size()); i++) {
            String old = i < there.size() ? there.get(i) : "nothing";
            String wanted = i < now.size() ? now.get(i) : "nothing";
            if (!old.equals(wanted)) {
                throw refuse(file, "it is of something else (" + old + "; now " + wanted + "); " + WAY_OUT);
            }
        }
    }

    private static UnwritableFile unwritable(Path file, IOException e) {
        return refuse(file, "the file cannot be written: " + FileBytes.reason(e));
    }

    private static UnwritableFile refuse(Path file, String text) {
        return new UnwritableFile(new FileProblem(file.toString(), "", text));
    }
}
