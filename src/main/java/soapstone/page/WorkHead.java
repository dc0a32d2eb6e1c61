package soapstone.page;

import java.util.Optional;
import soapstone.source.Message;

/**
 * What stands on every page about a student's sheet.
 *
 * @param title       of the assignment
 * @param number      of the sheet; empty while it is not dealt
 * @param due         in plain words
 * @param late        what becomes of an answer after that; empty where there is no end
 * @param tries       how often each problem may be handed in
 * @param conventions of the shop, in the instructor's words
 * @param formulas    whether the formula book may be used beside it
 * @param path        of the sheet
 */
public record WorkHead(String className, String title, String number, Message due, Optional<Message> late, Message tries, String conventions,
        boolean formulas, String path) {}
