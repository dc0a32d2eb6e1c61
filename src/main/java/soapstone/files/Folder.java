package soapstone.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Reads the text files below a folder on disk, or below one that comes inside of the program. */
public final class Folder {

    private static final int DEEPEST = 4;
    private static final long LARGEST = 2_000_000;

    private Folder() {}

    /**
     * The texts below a folder, by path with {@code /} between. Files of other endings are left aside.
     *
     * @throws IOException with a sentence, when the folder is not there, or a file is too large or not UTF-8
     */
    public static Map<String, String> read(Path folder, String... endings) throws IOException {
        if (!Files.isDirectory(folder)) {
            throw new IOException("there is no folder " + folder);
        }
        Map<String, String> texts = new TreeMap<>();
        // A folder may be a link to another; what lies below is taken as it is.
        Path real = folder.toRealPath();
        try (Stream<Path> files = Files.walk(real, DEEPEST)) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                String path = real.relativize(file).toString().replace('\\', '/');
                if (Stream.of(endings).anyMatch(path::endsWith)) {
                    texts.put(path, text(file));
                }
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        return texts;
    }

    private static String text(Path file) throws IOException {
        if (Files.size(file) > LARGEST) {
            throw new IOException(file + " has over " + LARGEST + " bytes");
        }
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (MalformedInputException e) {
            throw new IOException(file + " is not UTF-8 text", e);
        }
    }

    /** The texts below a folder that comes with the program. */
    public static Map<String, String> builtIn(String name, String... endings) throws IOException {
        URL url = Folder.class.getResource("/" + name);
        if (url == null) {
            throw new IOException("the program was built without its folder " + name);
        }
        try {
            URI uri = url.toURI();
            if (!uri.getScheme().equals("jar")) {
                return read(Path.of(uri), endings);
            }
            try (FileSystem jar = FileSystems.newFileSystem(URI.create(uri.toString().substring(0, uri.toString().indexOf('!'))), Map.of())) {
                return read(jar.getPath("/" + name), endings);
            }
        } catch (URISyntaxException e) {
            throw new IOException("the program's own folder " + name + " is not to be found", e);
        }
    }
}
