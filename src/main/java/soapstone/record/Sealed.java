package soapstone.record;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Arrays;
import javax.crypto.Cipher;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.PBEKeySpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * A file that only a passphrase opens: AES-256 in blocks that are each authenticated (GCM), with a key out of PBKDF2
 * with SHA-256 and 600,000 rounds (the count that OWASP's cheat sheet on storing passwords names; from memory). Each
 * block tells its number and whether it is the last, so that none can be left out or moved.
 */
final class Sealed {

    private static final byte[] MARK = "SOAPSEAL1".getBytes(StandardCharsets.US_ASCII);
    private static final int ROUNDS = 600_000;
    private static final int SALT = 16;
    private static final int NONCE = 12;
    private static final int TAG_BITS = 128;
    private static final int KEY_BITS = 256;
    private static final int BLOCK = 64 * 1024;

    private Sealed() {}

    private static SecretKeySpec key(String passphrase, byte[] salt) {
        try {
            SecretKeyFactory factory = SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256");
            return new SecretKeySpec(factory.generateSecret(new PBEKeySpec(passphrase.toCharArray(), salt, ROUNDS, KEY_BITS)).getEncoded(), "AES");
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has PBKDF2 and AES", e);
        }
    }

    private static Cipher cipher(int mode, SecretKeySpec key, byte[] start, long number, boolean last) throws GeneralSecurityException {
        byte[] nonce = start.clone();
        for (int i = 0; i < Long.BYTES; i++) {
            nonce[NONCE - 1 - i] ^= (byte) (number >>> (8 * i));
        }
        Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
        cipher.init(mode, key, new GCMParameterSpec(TAG_BITS, nonce));
        cipher.updateAAD(new byte[] {(byte) (last ? 1 : 0)});
        return cipher;
    }

    /** Seals what is written; closing it writes the last block, and closes what is behind it. */
    static OutputStream seal(OutputStream out, String passphrase) throws IOException {
        SecureRandom random = new SecureRandom();
        byte[] salt = new byte[SALT];
        byte[] start = new byte[NONCE];
        random.nextBytes(salt);
        random.nextBytes(start);
        out.write(MARK);
        out.write(salt);
        out.write(start);
        return new Sealing(out, key(passphrase, salt), start);
    }

    private static final class Sealing extends OutputStream {
        private final OutputStream out;
        private final SecretKeySpec key;
        private final byte[] start;
        private final byte[] block = new byte[BLOCK];
        private int filled;
        private long number;

        Sealing(OutputStream out, SecretKeySpec key, byte[] start) {
            this.out = out;
            this.key = key;
            this.start = start;
        }

        @Override
        public void write(int b) throws IOException {
            write(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int count) throws IOException {
            int at = from;
            while (at < from + count) {
                if (filled == BLOCK) {
                    send(false);
                }
                int some = Math.min(BLOCK - filled, from + count - at);
                System.arraycopy(bytes, at, block, filled, some);
                filled += some;
                at += some;
            }
        }

        private void send(boolean last) throws IOException {
            try {
                out.write(cipher(Cipher.ENCRYPT_MODE, key, start, number++, last).doFinal(block, 0, filled));
                filled = 0;
            } catch (GeneralSecurityException e) {
                throw new IOException(e);
            }
        }

        @Override
        public void close() throws IOException {
            send(true);
            out.close();
        }
    }

    /** Whether a file begins like a sealed one. */
    static boolean isSealed(byte[] begin) {
        return begin.length >= MARK.length && Arrays.equals(begin, 0, MARK.length, MARK, 0, MARK.length);
    }

    /**
     * Opens what was sealed.
     *
     * @throws Backup.Unreadable when the passphrase is another one, or when something was changed or is missing
     */
    static InputStream open(InputStream in, String passphrase) throws IOException {
        byte[] mark = in.readNBytes(MARK.length);
        byte[] salt = in.readNBytes(SALT);
        byte[] start = in.readNBytes(NONCE);
        if (!isSealed(mark) || start.length < NONCE) {
            throw new Backup.Unreadable("This file is not sealed with a passphrase.");
        }
        return new Opening(in, key(passphrase, salt), start);
    }

    private static final class Opening extends InputStream {
        private static final int SEALED_BLOCK = BLOCK + TAG_BITS / 8;

        private final InputStream in;
        private final SecretKeySpec key;
        private final byte[] start;
        private byte[] next;
        private byte[] block = {};
        private int at;
        private long number;
        private boolean over;

        Opening(InputStream in, SecretKeySpec key, byte[] start) throws IOException {
            this.in = in;
            this.key = key;
            this.start = start;
            this.next = in.readNBytes(SEALED_BLOCK);
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] into, int from, int count) throws IOException {
            while (at == block.length && !over) {
                advance();
            }
            if (at == block.length) {
                return -1;
            }
            int some = Math.min(count, block.length - at);
            System.arraycopy(block, at, into, from, some);
            at += some;
            return some;
        }

        private void advance() throws IOException {
            byte[] after = in.readNBytes(SEALED_BLOCK);
            over = after.length == 0;
            if (next.length < TAG_BITS / 8) {
                throw new Backup.Unreadable("The backup was cut short.");
            }
            try {
                block = cipher(Cipher.DECRYPT_MODE, key, start, number++, over).doFinal(next);
            } catch (GeneralSecurityException e) {
                throw new Backup.Unreadable("The passphrase does not open this backup, or the file was changed or cut short.");
            }
            at = 0;
            next = after;
        }

        @Override
        public void close() throws IOException {
            in.close();
        }
    }
}
