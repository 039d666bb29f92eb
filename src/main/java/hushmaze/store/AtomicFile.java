package hushmaze.store;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;

/**
 * Writes a file so that there is always either the whole old one or the whole new one: a temporary file in the same
 * folder is written, forced to the disk and moved over. After a failure the temporary file is gone and the old file is as
 * it was.
 */
final class AtomicFile {
    /** Puts the content into a stream. */
    @FunctionalInterface
    interface Content {
        void writeTo(OutputStream stream) throws IOException;
    }

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
            replace(target, folder.resolve(".hushmaze-" + UUID.randomUUID() + ".tmp"), content);
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
