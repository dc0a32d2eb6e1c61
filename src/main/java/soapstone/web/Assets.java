package soapstone.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The site's own files. Their address holds a hash of all of them, so that a browser may keep each for good and still
 * gets new ones with the next version.
 */
final class Assets {

    static final String DRAWING = "drawing.css";
    private static final String FOLDER = "/soapstone/site/";
    private static final int HASH_LENGTH = 12;

    private static final Map<String, String> TYPES = new LinkedHashMap<>();

    static {
        TYPES.put("site.css", "text/css;charset=utf-8");
        TYPES.put(DRAWING, "text/css;charset=utf-8");
        TYPES.put("reading.js", "text/javascript;charset=utf-8");
        TYPES.put("live.js", "text/javascript;charset=utf-8");
        TYPES.put("stay.js", "text/javascript;charset=utf-8");
        TYPES.put("draft.js", "text/javascript;charset=utf-8");
        TYPES.put("icon.svg", "image/svg+xml");
        TYPES.put("b612-regular.woff2", "font/woff2");
        TYPES.put("b612-bold.woff2", "font/woff2");
        TYPES.put("b612-italic.woff2", "font/woff2");
        TYPES.put("b612-OFL.txt", "text/plain;charset=utf-8");
    }

    private final Map<String, byte[]> files = new LinkedHashMap<>();
    private final String hash;

    Assets() {
        for (String name : TYPES.keySet()) {
            byte[] content = read(name);
            if (content != null) {
                files.put(name, content);
            }
        }
        hash = hashOf(files);
    }

    private static byte[] read(String name) {
        try (InputStream in = Assets.class.getResourceAsStream(FOLDER + name)) {
            return in == null ? null : in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }

    private static String hashOf(Map<String, byte[]> files) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            files.values().forEach(digest::update);
            return HexFormat.of().formatHex(digest.digest()).substring(0, HASH_LENGTH);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    boolean has(String name) {
        return files.containsKey(name);
    }

    /** Where the files are, ending in a slash. */
    String path() {
        return "/site/" + hash + "/";
    }

    /** @throws Trouble 404 for another version's hash or an unknown name */
    Reply file(Visit visit) {
        byte[] content = files.get(visit.part("name"));
        if (content == null || !hash.equals(visit.part("hash"))) {
            throw Trouble.of(404);
        }
        return Reply.asset(TYPES.get(visit.part("name")), content);
    }
}
