package soapstone.command;

/** Why a command does not do what was asked: one sentence for people, and what the process ends with. */
final class Refusal extends RuntimeException {

    /** Something was found wrong. */
    static final int FAILED = 1;
    /** Wrong usage, or a name that is not known. */
    static final int USAGE = 2;

    private static final long serialVersionUID = 1L;

    private final int code;

    private Refusal(int code, String sentence) {
        super(sentence, null, false, false);
        this.code = code;
    }

    static Refusal usage(String sentence) {
        return new Refusal(USAGE, sentence);
    }

    static Refusal failed(String sentence) {
        return new Refusal(FAILED, sentence);
    }

    int code() {
        return code;
    }
}
