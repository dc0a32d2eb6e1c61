package soapstone.command;

import java.security.SecureRandom;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import soapstone.record.Database;
import soapstone.record.SqlSchool;
import soapstone.school.Codes;
import soapstone.school.Logins;
import soapstone.school.PasswordCodes;
import soapstone.school.Person;
import soapstone.school.School;
import soapstone.school.SecretCodes;
import soapstone.source.Near;

/** Lets a keeper or an instructor in again whose password is lost, and whom nobody on the site can help. */
@Command(name = "code", mixinStandardHelpOptions = true, description = {"Make a code with which a keeper or an instructor sets a new password.",
    "It works once and for half an hour, on the page /new-password of the site. The old password, the second factor and all sessions of that account end at once. A data "
            + "folder that a running site has open cannot be changed by a second program: stop the site first. With --database the site may run."})
final class CodeCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private SchoolOptions school;

    @Option(names = "--login", paramLabel = "LOGIN", required = true, description = "The login of the account.")
    private String login;

    @Override
    public Integer call() {
        try (Database database = school.open(false)) {
            Instant now = Instant.now();
            School kept = SqlSchool.of(database);
            Person person = person(kept);
            String code = PasswordCodes.anew(kept, person, Optional.empty(), "At the console", now, new SecureRandom());
            school.log().ifPresent(log -> log.note(now, "account.code", "about", String.valueOf(person.id())));
            spec.commandLine().getOut().println(told(person, code, SecretCodes.ends(Codes.Purpose.NEW_PASSWORD, now)));
            return 0;
        }
    }

    private static String told(Person person, String code, Instant ends) {
        return "Code for " + person.login() + ": " + code + System.lineSeparator() + "It works once, until " + ends.truncatedTo(ChronoUnit.SECONDS)
                + ". Open /new-password on the site, and type the login, the code and a new password. The old one, the second factor and all sessions are gone.";
    }

    private Person person(School kept) {
        String plain = Logins.plain(login);
        Person person = kept.people().byLogin(plain).orElseThrow(() -> Refusal.usage(("Nobody has the login '" + login + "'. " + Near.suggest(plain, inCharge(kept))).strip()));
        if (person.isStudent()) {
            throw Refusal.usage("'" + person.login() + "' is a student: the instructor of the class makes a new slip to sign in.");
        }
        if (person.disabled()) {
            throw Refusal.failed("The account '" + person.login() + "' is disabled; a keeper enables it on the site, and can make the code there.");
        }
        return person;
    }

    private static List<String> inCharge(School kept) {
        return Stream.of(Person.Kind.KEEPER, Person.Kind.INSTRUCTOR).flatMap(kind -> kept.people().all(kind).stream()).map(Person::login).toList();
    }
}
