package hushmaze.store;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;

/**
 * Writes a file so that there is always either the whole old one or the whole new one: a temporary file in the same
 * folder is written, forced to the disk and moved over. After a failure the temporary file is gone and the old file is as
 * it was. What a process that was killed has left of a file is removed when that file is written again.
 */
final class AtomicFile {
    /** Puts the content into a stream. */
    @FunctionalInterface
    interface Content {
        void writeTo(OutputStream stream) throws IOException;
    }

    private static final long PROCESS = ProcessHandle.current().pid();
    private static final String ENDING = ".tmp";

    private AtomicFile() {}

    /**
     * Writes or replaces a file.
     *
     * @throws UnwritableFile if that is not possible, with the reason
     */
    static void write(Path file, Content content) {
        if (Files.isDirectory(file)) {
            throw refuse(file, "this is a folder; it must be a file");
        }
        if (Files.exists(file) && !Files.isWritable(file)) {
            throw refuse(file, "the file is write-protected");
        }
        try {
            // Of a link, the file it points to is replaced, not the link.
            Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
            Path folder = target.getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                throw refuse(file, "there is no folder " + folder);
            }
            removeLeftovers(target);
            replace(target, folder.resolve(start(target) + PROCESS + "-" + UUID.randomUUID() + ENDING), content);
            forceFolder(folder);
        } catch (IOException e) {
            throw refuse(file, "the file cannot be written: " + FileBytes.reason(e));
        }
    }

    private static void replace(Path target, Path temporary, Content content) throws IOException {
        try {
            fill(temporary, content);
            keepPermissions(target, temporary);
            move(temporary, target);
        } finally {
            Files.deleteIfExists(temporary);
        }
    }

    /** Of the names of a file's temporary files; the process that writes them follows. */
    private static String start(Path target) {
        String name = String.valueOf(target.getFileName());
        return ".hushmaze-" + Integer.toHexString(name.hashCode()) + "-";
    }

    /** Temporary files of this target whose process is gone: nobody else would ever remove them. */
    private static void removeLeftovers(Path target) throws IOException {
        String start = start(target);
        try (DirectoryStream<Path> files = Files.newDirectoryStream(target.getParent(), start + "*" + ENDING)) {
            for (Path file : files) {
                if (isGone(String.valueOf(file.getFileName()).substring(start.length()))) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (DirectoryIteratorException | AccessDeniedException e) {
            // A folder one may not list, or a file one may not remove: the new file can be written all the same.
            return;
        }
    }

    /** @param rest of a name, from the number of the process on */
    private static boolean isGone(String rest) {
        try {
            long process = Long.parseLong(rest.substring(0, rest.indexOf('-')));
            return ProcessHandle.of(process).isEmpty();
        } catch (NumberFormatException | IndexOutOfBoundsException e) {
            return false;
        }
    }

    private static void fill(Path temporary, Content content) throws IOException {
        try (FileChannel channel =
                FileChannel.open(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            OutputStream stream = new BufferedOutputStream(Channels.newOutputStream(channel));
            content.writeTo(stream);
            stream.flush();
            channel.force(true);
        }
    }

    private static void keepPermissions(Path target, Path temporary) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(target, PosixFileAttributeView.class);
        if (view != null && Files.exists(target)) {
            Files.setPosixFilePermissions(temporary, view.readAttributes().permissions());
        }
    }

    private static void move(Path temporary, Path target) throws IOException {
        try {
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Forces the move itself to the disk, where the system can do that for a folder. */
    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Some systems cannot do that for a folder; the file is complete and in its place all the same.
        }
    }

    private static UnwritableFile refuse(Path file, String text) {
        return new UnwritableFile(new FileProblem(file.toString(), "", text));
    }
}
