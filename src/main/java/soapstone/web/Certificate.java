package soapstone.web;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;

/**
 * The certificate of the site with its key.
 *
 * @param keys     out of a PKCS #12 file
 * @param password that opens them
 */
public record Certificate(KeyStore keys, String password) {

    /**
     * Reads a file.
     *
     * @throws IOException if there is none, it is of another kind, or the password is not its own
     */
    public static Certificate read(Path file, String password) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            KeyStore keys = KeyStore.getInstance("PKCS12");
            keys.load(in, password.toCharArray());
            return new Certificate(keys, password);
        } catch (GeneralSecurityException e) {
            throw new IOException(e);
        }
    }
}
