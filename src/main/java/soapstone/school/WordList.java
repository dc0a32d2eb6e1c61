package soapstone.school;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The lists of words that come with the program, a word a line; a line with a number sign before it tells where they are from. */
final class WordList {

    private WordList() {}

    /** The words of {@code soapstone/school/<name>.txt}, in the order of the file. */
    static List<String> of(String name) {
        String path = "/soapstone/school/" + name + ".txt";
        try (InputStream in = WordList.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException(path + " is not in the program");
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(path, e);
        }
    }
}
