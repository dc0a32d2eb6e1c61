package soapstone.bank;

import soapstone.exercise.Exercise;
import soapstone.source.Yaml;

/** An exercise that was read without a fault, with the text it was read from, for the rules to look at. */
record Draft(Exercise exercise, Yaml.Entries root, Book book) {}
