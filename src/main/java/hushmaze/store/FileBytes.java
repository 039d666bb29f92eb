package hushmaze.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a whole text file, within a limit, as UTF-8. */
final class FileBytes {
    /** Largest file that is read or written: 4 000 000 bytes. A project with twelve paths has some 50 000. */
    static final int MAX_BYTES = 4_000_000;

    private static final char BYTE_ORDER_MARK = '\ufeff';

    private FileBytes() {}

    /**
     * The text of a file.
     *
     * @throws UnreadableFile if there is none, or it is a folder, too large, or no UTF-8 text
     */
    static String text(Path file) {
        String name = file.toString();
        if (Files.isDirectory(file)) {
            throw Problems.whole(name, "this is a folder; it must be a file");
        }
        if (Files.notExists(file)) {
            throw Problems.whole(name, "there is no such file");
        }
        try (InputStream stream = Files.newInputStream(file)) {
            return text(name, stream.readNBytes(MAX_BYTES + 1));
        } catch (IOException e) {
            throw Problems.whole(name, "the file cannot be read: " + reason(e));
        }
    }

    /** The text in some bytes. */
    static String text(String name, byte[] bytes) {
        if (bytes.length > MAX_BYTES) {
            throw Problems.whole(name, "the file is too large; it must be at most " + MAX_BYTES + " bytes");
        }
        String text;
        try {
            // A new decoder reports what is malformed instead of replacing it.
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw Problems.whole(name, "this is not a text in UTF-8; save it as UTF-8");
        }
        if (text.indexOf('\0') >= 0) {
            throw Problems.whole(name, "this is not a text in UTF-8: it has zero bytes; save it as UTF-8");
        }
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    /** Why reading or writing failed, in words. */
    static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "access is denied";
        }
        if (e instanceof FileSystemException refused && refused.getReason() != null) {
            return refused.getReason();
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }
}
