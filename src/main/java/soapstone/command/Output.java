package soapstone.command;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.PrintWriter;
import java.util.List;
import java.util.function.Supplier;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** How a command that gives data prints it. */
final class Output {

    @ArgGroup
    private Form form = new Form();

    /** JSON is the default, so that {@code --json} is there only to be said. */
    static final class Form {

        @Option(names = "--json", description = "Print JSON, which is what is printed anyway.")
        private boolean json;

        @Option(names = "--text", description = "Print text to read instead of JSON.")
        private boolean text;
    }

    void print(PrintWriter out, JsonNode data, Supplier<List<String>> lines) {
        if (form.text) {
            lines.get().forEach(l -> out.println(Json.plain(l)));
        } else {
            Json.print(out, data);
        }
    }
}
