package chock.assess.facts;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/** The moment of judgement and the day it falls on in the workshop's time zone. */
public record AsOf(Instant instant, LocalDate date, ZoneId zone) { }
