package hushmaze.document;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Writes files into a folder, each first under a temporary name and moved when it is complete. */
final class Outbox {
    /** What is written into a file. */
    interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    private final Path folder;

    /** Makes the folder if it is not there yet. */
    Outbox(Path folder) {
        this.folder = folder;
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException e) {
            throw new ExportFailure(folder, "this is a file, not a folder", e);
        } catch (IOException e) {
            throw new ExportFailure(folder, "the folder cannot be made (" + reason(e) + ")", e);
        }
    }

    /**
     * Refuses to go on if a file of that name is there and is another one.
     *
     * @return whether the very same file is there already
     */
    boolean hasOrRequireFree(String name, Content content) {
        Path there = folder.resolve(name);
        if (!Files.exists(there)) {
            return false;
        }
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            content.writeTo(bytes);
            if (Files.isRegularFile(there) && Arrays.equals(Files.readAllBytes(there), bytes.toByteArray())) {
                return true;
            }
        } catch (IOException e) {
            throw new ExportFailure(there, "it cannot be read (" + reason(e) + ")", e);
        }
        throw new ExportFailure(
                there,
                "there is another file of this name already; allow overwriting to replace it (on the command line: --overwrite)",
                null);
    }

    /** Writes a text in UTF-8. */
    Path write(String name, String text) {
        return write(name, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Writes a file; what was there under its name is replaced only once the new one is complete. */
    Path write(String name, Content content) {
        Path target = folder.resolve(name);
        Path temporary = null;
        try {
            temporary = folder.resolve("." + UUID.randomUUID() + ".part");
            try (OutputStream out = new BufferedOutputStream(
                    Files.newOutputStream(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE))) {
                content.writeTo(out);
            }
            move(temporary, target);
            return target;
        } catch (IOException e) {
            remove(temporary);
            throw new ExportFailure(target, "the file cannot be written (" + reason(e) + ")", e);
        } catch (RuntimeException e) {
            remove(temporary);
            throw e;
        }
    }

    /**
     * Removes files of an earlier run that this run did not write again, so that nobody cuts by them.
     *
     * @param ofOurs full names of files that can only be ours
     * @param written names of this run
     */
    void removeStale(Pattern ofOurs, Set<String> written) {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = file.getFileName().toString();
                if (ofOurs.matcher(name).matches() && !written.contains(name)) {
                    Files.delete(file);
                }
            }
        } catch (IOException e) {
            throw new ExportFailure(folder, "drawings of an earlier run cannot be removed (" + reason(e) + ")", e);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void remove(Path temporary) {
        if (temporary == null) {
            return;
        }
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException e) {
            // The failure that led here is reported; a leftover with a leading dot is the lesser trouble.
            return;
        }
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "no permission to write here";
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }
}
