package soapstone.source;

import java.util.List;

/**
 * A sentence for people, as a key into the words of a language and what to put into it. The engine never writes
 * sentences for students itself, so that another language can stand beside English.
 *
 * @param key  name in the words file, such as {@code reading.two-ways}
 * @param with what goes into the places {0}, {1} … of the sentence, already printed in shop notation; one that begins with
 *             an at-sign, such as {@code @dimension.area}, is itself a key and stands for that entry's words
 */
public record Message(String key, List<String> with) {

    public Message {
        with = List.copyOf(with);
    }

    public static Message of(String key, String... with) {
        return new Message(key, List.of(with));
    }
}
