package soapstone.web;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.io.ByteArrayOutputStream;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The fields of a query or a form, read strictly: UTF-8 only, no field twice, no control characters but line ends, and
 * no more and no longer than a page of ours could send.
 */
final class Fields {

    static final int MOST = 200;
    static final int LONGEST = 2000;

    /** How many fields a page of ours sends at most, and how long the longest of them is. */
    record Limit(int most, int longest, boolean files) {
        static final Limit USUAL = new Limit(MOST, LONGEST, false);
        /** For a form with a whole roster in one field, or in files. */
        static final Limit ROSTER = new Limit(MOST, 24_000, true);
        /** For a form on which each exercise of the bank has fields. */
        static final Limit CHOICE = new Limit(1500, LONGEST, false);
    }

    private static final Pattern CONTROLS = Pattern.compile("[\\p{Cc}&&[^\\t\\r\\n]]|\\p{Cn}");

    private final Map<String, String> fields;
    private final Map<String, byte[]> files;

    private Fields(Map<String, String> fields, Map<String, byte[]> files) {
        this.fields = Collections.unmodifiableMap(fields);
        this.files = files;
    }

    /** Fields that were read before. */
    static Fields of(Map<String, String> fields) {
        return new Fields(fields, Map.of());
    }

    /** Reads {@code name=value&name=value} of a usual form. */
    static Fields parse(String encoded) {
        return parse(encoded, Limit.USUAL);
    }

    /**
     * Reads {@code name=value&name=value}.
     *
     * @param encoded the query or the form's body; null for none
     * @throws Trouble 400 when it is not well formed, 413 when it is too much
     */
    static Fields parse(String encoded, Limit limit) {
        Map<String, String> found = new LinkedHashMap<>();
        if (encoded != null && !encoded.isEmpty()) {
            String[] pairs = encoded.split("&", limit.most() + 2);
            if (pairs.length > limit.most()) {
                throw Trouble.of(413);
            }
            for (String pair : pairs) {
                put(found, pair, limit.longest());
            }
        }
        return new Fields(found, Map.of());
    }

    /**
     * Fields that came with files.
     *
     * @throws Trouble as {@link #parse(String, Limit)}
     */
    static Fields of(List<Multipart.Part> parts, Limit limit) {
        Map<String, String> found = new LinkedHashMap<>();
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (Multipart.Part part : parts) {
            if (!part.isFile()) {
                put(found, part.name(), utf8(part.bytes()), limit.longest());
            } else if (part.bytes().length > 0 && files.put(part.name(), part.bytes()) != null) {
                throw Trouble.of(400);
            }
        }
        return new Fields(found, files);
    }

    private static void put(Map<String, String> found, String pair, int longest) {
        if (pair.isEmpty()) {
            return;
        }
        int equals = pair.indexOf('=');
        String name = decode(equals < 0 ? pair : pair.substring(0, equals));
        put(found, name, equals < 0 ? "" : decode(pair.substring(equals + 1)), longest);
    }

    private static void put(Map<String, String> found, String name, String value, int longest) {
        if (value.length() > longest) {
            throw Trouble.of(413);
        }
        if (found.put(name, value) != null || CONTROLS.matcher(name + value).find()) {
            throw Trouble.of(400);
        }
    }

    private static String decode(String encoded) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(encoded.length());
        for (int at = 0; at < encoded.length(); at++) {
            char c = encoded.charAt(at);
            if (c == '%') {
                bytes.write(hex(encoded, at + 1));
                at += 2;
            } else if (c < 0x80) {
                bytes.write(c == '+' ? ' ' : c);
            } else {
                throw Trouble.of(400);
            }
        }
        return utf8(bytes.toByteArray());
    }

    private static int hex(String encoded, int at) {
        int high = at + 1 < encoded.length() ? Character.digit(encoded.charAt(at), 16) : -1;
        int low = at + 1 < encoded.length() ? Character.digit(encoded.charAt(at + 1), 16) : -1;
        if (high < 0 || low < 0) {
            throw Trouble.of(400);
        }
        return high << 4 | low;
    }

    private static String utf8(byte[] bytes) {
        return text(bytes).orElseThrow(() -> Trouble.of(400));
    }

    /** Bytes as text; empty when they are no UTF-8. */
    static Optional<String> text(byte[] bytes) {
        try {
            return Optional.of(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    Optional<String> get(String name) {
        return Optional.ofNullable(fields.get(name));
    }

    /** The bytes of a file that was sent; empty when none was chosen. */
    Optional<byte[]> file(String name) {
        return Optional.ofNullable(files.get(name));
    }

    /** The value, or an empty text. */
    String text(String name) {
        return fields.getOrDefault(name, "");
    }

    /** All fields. */
    Map<String, String> all() {
        return fields;
    }

    /** The fields whose names begin so, by the rest of their names. */
    Map<String, String> startingWith(String prefix) {
        Map<String, String> some = new LinkedHashMap<>();
        fields.forEach((name, value) -> {
            if (name.startsWith(prefix)) {
                some.put(name.substring(prefix.length()), value);
            }
        });
        return some;
    }
}
