package soapstone.school;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import soapstone.source.Issues;
import soapstone.source.Source;
import soapstone.source.Text;
import soapstone.source.Yaml;

/** Reads trade frames from their files, and tells whatever does not fit with its line. */
public final class FrameReader {

    private static final String RULE = "frame";
    private static final List<String> KEYS = List.of("frame", "owner", "edition", "codes");
    private static final List<String> CODE_KEYS = List.of("code", "title", "known", "skills");
    /** As long as the record of a signature has room. */
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_TITLE = 200;

    private final Issues issues = new Issues();

    private FrameReader() {}

    /** Frames, or why some are missing. */
    public record Result(List<TradeFrame> frames, Issues issues) {

        public Result {
            frames = List.copyOf(frames);
        }
    }

    /** @param texts the files by path; the frames come in the order of the paths */
    public static Result read(Map<String, String> texts) {
        FrameReader reader = new FrameReader();
        List<TradeFrame> frames = new ArrayList<>();
        new TreeMap<>(texts).forEach((path, text) -> reader.frame(new Source(path, text)).ifPresent(frames::add));
        return new Result(frames, reader.issues);
    }

    private Optional<TradeFrame> frame(Source source) {
        Optional<Yaml.Entries> file = Yaml.read(source, issues).map(f -> f.only(KEYS));
        if (file.isEmpty()) {
            return Optional.empty();
        }
        String name = fitting(file.get().need("frame"), LONGEST_NAME);
        String owner = fitting(file.get().need("owner"), LONGEST_TITLE);
        String edition = fitting(file.get().need("edition"), LONGEST_NAME);
        List<TradeFrame.Code> codes = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Yaml.Value value : file.get().items("codes")) {
            value.map().map(c -> c.only(CODE_KEYS)).ifPresent(c -> {
                TradeFrame.Code code = code(name, edition, c);
                if (!seen.add(code.name().code())) {
                    issues.add(RULE, value.place(), "the code " + code.name().code() + " stands twice", "Keep one");
                }
                codes.add(code);
            });
        }
        return Optional.of(new TradeFrame(name, owner, edition, codes));
    }

    private TradeFrame.Code code(String frame, String edition, Yaml.Entries c) {
        String code = fitting(c.need("code"), LONGEST_NAME);
        String title = fitting(c.need("title"), LONGEST_TITLE);
        Optional<Text> known = c.need("known");
        if (known.isPresent() && !known.get().value().equals("read") && !known.get().value().equals("memory")) {
            issues.add(RULE, known.get().place(), "'known' is " + known.get().value(), "read or memory");
        }
        List<String> skills = c.items("skills").stream().flatMap(s -> s.text().stream()).map(Text::value).toList();
        return new TradeFrame.Code(new TradeCode(frame, edition, code, title), skills, known.map(k -> k.value().equals("read")).orElse(false));
    }

    private String fitting(Optional<Text> text, int most) {
        if (text.isPresent() && (text.get().value().isBlank() || text.get().value().length() > most)) {
            issues.add(RULE, text.get().place(), "this text has " + text.get().value().length() + " characters", "1 to " + most);
        }
        return text.map(Text::value).orElse("");
    }
}
