package soapstone.web;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A form with files in it (RFC 7578), read strictly: as browsers send it, or not at all. File names are looked at by
 * nobody.
 */
final class Multipart {

    private static final Pattern TYPE = Pattern.compile("multipart/form-data; ?boundary=(\"?)([0-9A-Za-z'()+_,./:=?-]{1,70})\\1", Pattern.CASE_INSENSITIVE);
    private static final Pattern DISPOSITION = Pattern.compile("Content-Disposition: form-data; name=\"([^\"\r\n]{1,200})\"(; filename=\"[^\"\r\n]*\")?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern CONTENT_TYPE = Pattern.compile("Content-Type: [!-~ ]{1,200}", Pattern.CASE_INSENSITIVE);
    private static final String LINE = "\r\n";

    private Multipart() {}

    /** One field or one file. */
    record Part(String name, boolean isFile, byte[] bytes) {}

    /** What stands between the parts; empty when the form is of another kind. */
    static Optional<String> boundary(String contentType) {
        Matcher type = TYPE.matcher(contentType);
        return type.matches() ? Optional.of(type.group(2)) : Optional.empty();
    }

    /**
     * The parts in order.
     *
     * @param form one sign for each byte
     * @throws Trouble 400 when it is not well formed, 413 when it has more parts than that
     */
    static List<Part> parse(String form, String boundary, int most) {
        String between = LINE + "--" + boundary;
        String text = LINE + form;
        List<Part> parts = new ArrayList<>();
        int at = after(text, between, 0);
        while (!text.startsWith("--", at)) {
            at = after(text, LINE, at);
            int end = text.indexOf(between, at - LINE.length());
            if (end < at) {
                throw Trouble.of(400);
            }
            if (parts.size() == most) {
                throw Trouble.of(413);
            }
            parts.add(part(text.substring(at, end)));
            at = end + between.length();
        }
        String rest = text.substring(at + 2);
        if (!rest.isEmpty() && !rest.equals(LINE)) {
            throw Trouble.of(400);
        }
        return parts;
    }

    private static int after(String text, String wanted, int at) {
        if (!text.startsWith(wanted, at)) {
            throw Trouble.of(400);
        }
        return at + wanted.length();
    }

    private static Part part(String text) {
        int end = text.indexOf(LINE + LINE);
        if (end < 0) {
            throw Trouble.of(400);
        }
        // Header lines are UTF-8: a name may have any letters.
        String head = new String(text.substring(0, end).getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8);
        String[] lines = head.split(LINE, -1);
        Matcher disposition = DISPOSITION.matcher(lines[0]);
        boolean plain = lines.length == 1 || lines.length == 2 && CONTENT_TYPE.matcher(lines[1]).matches();
        if (!disposition.matches() || !plain) {
            throw Trouble.of(400);
        }
        byte[] bytes = text.substring(end + 2 * LINE.length()).getBytes(StandardCharsets.ISO_8859_1);
        return new Part(disposition.group(1), disposition.group(2) != null, bytes);
    }
}
