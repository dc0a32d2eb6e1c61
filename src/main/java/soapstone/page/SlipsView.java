package soapstone.page;

import java.util.List;

/**
 * Slips to sign in with, shown once.
 *
 * @param address of this site
 */
public record SlipsView(long inClass, String className, String address, List<Slip> slips) {

    /** One slip. */
    public record Slip(String seat, String shown, String login, String passphrase) {}

    public SlipsView {
        slips = List.copyOf(slips);
    }
}
