package soapstone.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Runs commands inside of the test, with what they print caught. */
final class Shell {

    /** A bank of three exercises, made for these tests. */
    static final Path SMALL = Path.of("src/test/resources/small/exercise-bank");

    private Shell() {}

    /** What came of a command. */
    record Result(int code, String out, String err) {

        JsonNode json() {
            try {
                return new ObjectMapper().readTree(out);
            } catch (JsonProcessingException e) {
                throw new AssertionError("no JSON: " + out + err, e);
            }
        }
    }

    static Result run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Soapstone.run(new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8), args);
        return new Result(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** The command with the small bank. */
    static Result small(String command, String... args) {
        List<String> all = new ArrayList<>(List.of(command, "--bank", SMALL.toString()));
        all.addAll(List.of(args));
        return run(all.toArray(new String[0]));
    }

    /** The small bank's data of a command that has to succeed. */
    static JsonNode json(String command, String... args) {
        Result result = small(command, args);
        if (result.code() != 0) {
            throw new AssertionError("ended with " + result.code() + ": " + result.err());
        }
        return result.json();
    }

    static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }
}
